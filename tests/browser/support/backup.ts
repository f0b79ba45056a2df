import { backupFormat, backupVersion, countLines } from '#storage/backup-format.ts';
import { crc32, hex32 } from '#storage/crc32.ts';

const stores = { revision: 'revisions', build: 'headers', ovenLoad: 'headers', entry: 'entries' } as const;

/** A backup file of these records, as another phone would have saved it. */
export function backupOf(records: readonly { record: keyof typeof stores }[], at: number): string {
  const counts = countLines();
  for (const { record } of records) counts[stores[record]] += 1;
  const first = { format: backupFormat, version: backupVersion, app: 'another phone', at };
  const body = [first, ...records].map((line) => `${JSON.stringify(line)}\n`).join('');
  const crc = hex32(crc32(new TextEncoder().encode(body), 0));
  return `${body}${JSON.stringify({ end: backupFormat, counts, crc32: crc })}\n`;
}
