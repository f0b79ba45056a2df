import type { StoredRecord } from '#shared/record/read.ts';
import { backupFormat, backupVersion, countLines } from '#storage/backup-format.ts';
import { crc32, hex32 } from '#storage/crc32.ts';
import { demoShop } from './make-shop.ts';
import { anchor } from './shop-time.ts';

const kinds = { revision: 'revisions', build: 'headers', ovenLoad: 'headers', entry: 'entries' } as const;

function asBackup(records: readonly StoredRecord[], at: number): string {
  const counts = countLines();
  for (const { record } of records) counts[kinds[record]] += 1;
  // `madeAt` is the moment the shop stands at: whoever loads it moves all times by now less that.
  const first = { format: backupFormat, version: backupVersion, app: 'demo shop', at, madeAt: at };
  const body = [first, ...records].map((line) => `${JSON.stringify(line)}\n`).join('');
  const crc = hex32(crc32(new TextEncoder().encode(body), 0));
  return `${body}${JSON.stringify({ end: backupFormat, counts, crc32: crc })}\n`;
}

/** The demo shop as the backup file that is committed beside this. */
export function demoBackup(): string {
  return asBackup(demoShop(anchor), anchor);
}
