import { isLoggerFile } from '#shared/record/photo.ts';
import { admit } from './admit.ts';
import { backupFormat, backupVersion, countLines, type LineCounts } from './backup-format.ts';
import { hashesIn, type Only, recordsFor } from './backup-source.ts';
import { toBase64 } from './base64.ts';
import type { Connection } from './connection.ts';
import { crc32, hex32 } from './crc32.ts';
import { Turns } from './turns.ts';

const encoder = new TextEncoder();

export interface BackupOptions {
  /** Pictures too; files of loggers go along in any case. */
  photos: boolean;
  app: string;
  at: number;
  only?: Only | undefined;
  /** Called with the number of records and photos that are through. */
  onProgress?: (done: number) => void;
  stop?: AbortSignal | undefined;
}

/**
 * The text of a backup, piece by piece: JSON lines, see backup-format.ts. Nothing of the phone itself is in it. Never
 * more than a piece is held, whatever the size of the shop.
 */
export async function* backup(connection: Connection, options: BackupOptions): AsyncGenerator<string> {
  const counts = countLines();
  const turns = new Turns(options.stop);
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
    const lines: unknown[] = [];
    for (const record of records) {
      // A backup with a line that its own check refuses could never be restored.
      const readable = admit(record).ok;
      counts[readable ? store : 'setAside'] += 1;
      lines.push(readable ? record : { setAside: record });
      if (turns.due()) await turns.give();
    }
    yield piece(lines);
    options.onProgress?.(total(counts));
  }
  for (const hash of options.only ? spokenOf : await blobHashes(connection)) {
    const photo = await connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').get(hash));
    if (!photo || !(options.photos || isLoggerFile(photo.record))) continue;
    counts.photos += 1;
    yield piece([{ ...photo.record, data: await toBase64(photo.blob) }]);
    options.onProgress?.(total(counts));
    if (turns.due()) await turns.give();
  }
  yield `${JSON.stringify({ end: backupFormat, counts, crc32: hex32(crc) })}\n`;
}

const total = (counts: LineCounts): number => Object.values(counts).reduce((a, b) => a + b, 0);

function blobHashes(connection: Connection): Promise<string[]> {
  return connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').getAllKeys());
}
