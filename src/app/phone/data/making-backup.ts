import { signal } from '@preact/signals';
import { type FileSink, gathering, openSink } from '#app/platform/file-sink.ts';
import { canSave, saveFile } from '#app/platform/save-file.ts';
import { canShare } from '#app/platform/share.ts';
import { zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import type { Counts } from '#storage/reader.ts';
import { version } from '../../../../package.json';
import { backedUp, stored } from './backup-state.ts';
import { fileStamp } from './file-words.ts';
import { noWayOut, savedWords } from './hand-file.tsx';

interface Taken {
  /** When it was begun: what is written later is not in it, ms */
  at: number;
  counts: Counts;
}

export type Making =
  | { step: 'idle'; says: string }
  | { step: 'making'; done: number; of: number }
  | { step: 'made'; file: File; taken: Taken; says: string };

/** Where a backup stands. It goes on while another screen is looked at. */
export const making = signal<Making>({ step: 'idle', says: '' });

let running = new AbortController();

export const stopMaking = (): void => running.abort();

/** A browser may take a download for unasked when it comes this long after the tap, ms */
const tapCountsFor = 4000;
/** A record as a line, bytes; bytes of pictures grow by a third when they are written as text. */
const perRecord = 300;
const perByte = 4 / 3;

const recordsIn = (c: Counts) => c.builds + c.ovenLoads + c.entries + c.revisions;

const bytesOf = (c: Counts, photos: boolean) =>
  recordsIn(c) * perRecord + (c.fileBytes + (photos ? c.photoBytes : 0)) * perByte;

const wordsFor = (error: unknown): string => {
  if (!(error instanceof DOMException)) return 'The backup could not be written. Try once more.';
  if (error.name === 'AbortError') return 'Stopped: nothing of it is left behind.';
  if (error.name === 'QuotaExceededError')
    return 'There is no room here for the whole backup. Free some space, or save it without photos.';
  return 'The backup could not be written there. Try once more, or another place.';
};

/** The whole record as one text file, written piece by piece: a shop of any size goes through. */
export async function makeBackup(photos: boolean): Promise<void> {
  const begun = performance.now();
  const mine = new AbortController();
  running = mine;
  const store = theStore();
  let sink: FileSink | undefined;
  try {
    // The screen has counted already: whoever asks where to save has to do so right after the tap.
    const expected = bytesOf(stored.peek() ?? (await store.counts()), photos);
    const at = Date.now();
    sink = await openSink(`tubewright-backup-${fileStamp(at, zoneAt(at))}.txt`, expected);
    const counts = await store.counts();
    const of = recordsIn(counts) + counts.files + (photos ? counts.photos : 0);
    making.value = { step: 'making', done: 0, of };
    const { put, end } = gathering(sink);
    const pieces = store.backup({
      photos,
      app: version,
      at,
      onProgress: (done) => {
        making.value = { step: 'making', done, of: Math.max(done, of) };
      },
      stop: mine.signal,
    });
    for await (const piece of pieces) await put(piece);
    await end();
    const file = await sink.close();
    const taken = { at, counts };
    const late = performance.now() - begun > tapCountsFor;
    if (!file) await handed(taken, 'The backup is where you put it.');
    else if (late || canShare(file)) making.value = { step: 'made', file, taken, says: '' };
    else if (canSave) {
      saveFile(file);
      await handed(taken, savedWords(file));
    } else making.value = { step: 'idle', says: noWayOut };
  } catch (error) {
    await sink?.discard().catch(() => {});
    making.value = { step: 'idle', says: wordsFor(error) };
  }
}

/** The file is out of the app. */
export async function handed({ at, counts }: Taken, says: string): Promise<void> {
  making.value = { step: 'idle', says };
  await backedUp(at, counts);
}
