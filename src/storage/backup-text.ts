import { backupFormat, backupVersion, countLines } from './backup-format.ts';
import { crc32, hex32 } from './crc32.ts';

const stores = {
  revision: 'revisions',
  build: 'headers',
  ovenLoad: 'headers',
  entry: 'entries',
  photo: 'photos',
} as const;

/** A backup of a few records as one text; what a whole shop needs is in backup.ts. */
export function backupOf(
  records: readonly { record: string }[],
  first: { app: string; at: number; madeAt?: number },
): string {
  const counts = countLines();
  for (const { record } of records) {
    if (!(record in stores)) throw new Error(`a backup has no place for ${record}`);
    counts[stores[record as keyof typeof stores]] += 1;
  }
  const begun = { format: backupFormat, version: backupVersion, ...first };
  const body = [begun, ...records].map((line) => `${JSON.stringify(line)}\n`).join('');
  const crc = hex32(crc32(new TextEncoder().encode(body)));
  return `${body}${JSON.stringify({ end: backupFormat, counts, crc32: crc })}\n`;
}
