import { zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import type { Counts } from '#storage/reader.ts';
import { version } from '../../../package.json';
import { fileStamp } from './file-words.ts';

export interface Backup {
  file: File;
  /** When it was begun: what is written later is not in it, ms */
  at: number;
  counts: Counts;
}

/** The whole record as one text file. */
export async function makeBackup(photos: boolean): Promise<Backup> {
  const store = theStore();
  const at = Date.now();
  const counts = await store.counts();
  const pieces: string[] = [];
  for await (const piece of store.backup({ photos, app: version, at })) pieces.push(piece);
  // Text, since share sheets refuse JSON.
  const file = new File(pieces, `tubewright-backup-${fileStamp(at, zoneAt(at))}.txt`, { type: 'text/plain' });
  return { file, at, counts };
}
