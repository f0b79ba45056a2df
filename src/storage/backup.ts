import { isLoggerFile } from '#shared/record/photo.ts';
import { admit } from './admit.ts';
import { backupFormat, backupVersion, countLines } from './backup-format.ts';
import { hashesIn, type Only, recordsFor } from './backup-source.ts';
import { toBase64 } from './base64.ts';
import type { Connection } from './connection.ts';
import { crc32, hex32 } from './crc32.ts';

const encoder = new TextEncoder();

export interface BackupOptions {
  /** Pictures too; files of loggers go along in any case. */
  photos: boolean;
  app: string;
  at: number;
  only?: Only | undefined;
}

/** The text of a backup, piece by piece: JSON lines, see backup-format.ts. Nothing of the phone itself is in it. */
export async function* backup(connection: Connection, options: BackupOptions): AsyncGenerator<string> {
  const counts = countLines();
  let crc = 0;
  const piece = (lines: readonly unknown[]): string => {
    const text = lines.map((line) => `${JSON.stringify(line)}\n`).join('');
    crc = crc32(encoder.encode(text), crc);
    return text;
  };
  const { app, at } = options;
  yield piece([{ format: backupFormat, version: backupVersion, app, at }]);
  const spokenOf = new Set<string>();
  for await (const { store, records } of recordsFor(connection, options.only)) {
    if (records.length === 0) continue;
    if (options.only) for (const hash of hashesIn(records)) spokenOf.add(hash);
    const lines = records.map((record) => {
      // A backup with a line that its own check refuses could never be restored.
      const readable = admit(record).ok;
      counts[readable ? store : 'setAside'] += 1;
      return readable ? record : { setAside: record };
    });
    yield piece(lines);
  }
  for (const hash of options.only ? spokenOf : await blobHashes(connection)) {
    const photo = await connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').get(hash));
    if (!photo || !(options.photos || isLoggerFile(photo.record))) continue;
    counts.photos += 1;
    yield piece([{ ...photo.record, data: await toBase64(photo.blob) }]);
  }
  yield `${JSON.stringify({ end: backupFormat, counts, crc32: hex32(crc) })}\n`;
}

function blobHashes(connection: Connection): Promise<string[]> {
  return connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').getAllKeys());
}
