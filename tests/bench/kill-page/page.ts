import { type AnyEntry, entryVersion } from '#shared/record/entry.ts';
import { openStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';

const name = 'tubewright';
const filler = 'even wet-out, no dry spots. ';

/** Batch n of a run holds 1 to 4 entries; each says its batch, its place and how many there are. */
function entriesOf(store: Store, run: string, batch: number): AnyEntry[] {
  const size = 1 + (batch % 4);
  return Array.from({ length: size }, (_, place) => ({
    record: 'entry',
    v: entryVersion,
    kind: 'note',
    id: store.newId(),
    subject: run,
    happenedAt: Date.now(),
    recordedAt: Date.now(),
    zone: 0,
    device: store.device,
    text: `${batch}/${place}/${size} ${filler.repeat(batch % 7)}`,
  }));
}

async function open() {
  const started = performance.now();
  const result = await openStore({
    name,
    summarize: () => {
      throw new Error('there is nothing to summarize');
    },
  });
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return { store: result.store, refilled: result.refilled, took: performance.now() - started };
}

/** Writes one batch after the other, and calls out each id once its write is acknowledged. */
async function writeOn(run: string, acknowledged: (ids: string[]) => void, most = Number.POSITIVE_INFINITY) {
  const { store } = await open();
  const times: number[] = [];
  for (let batch = 0; batch < most; batch++) {
    const entries = entriesOf(store, run, batch);
    const started = performance.now();
    await store.write({ entries });
    times.push(performance.now() - started);
    acknowledged(entries.map((entry) => entry.id));
  }
  return { times, linesKept: store.linesKept() };
}

/** The least that puts an entry on the disk for sure: one strict transaction, nothing read before. */
function bareWrite(database: IDBDatabase, entry: AnyEntry): Promise<void> {
  const transaction = database.transaction('entries', 'readwrite', { durability: 'strict' });
  transaction.objectStore('entries').put(entry);
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
  });
}

/** One acknowledged write of the app, then one bare strict write, over and over: what both took, ms */
async function besideBare(most: number) {
  const { store } = await open();
  const request = indexedDB.open('bare', 1);
  request.onupgradeneeded = () => request.result.createObjectStore('entries', { keyPath: 'id' });
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const took = async (write: Promise<void>): Promise<number> => {
    const started = performance.now();
    await write;
    return performance.now() - started;
  };
  const times: { app: number; bare: number }[] = [];
  for (let i = 0; i < most; i++) {
    const entries = entriesOf(store, 'beside', 4 * i);
    const [first] = entries;
    if (!first) break;
    const app = await took(store.write({ entries }));
    times.push({ app, bare: await took(bareWrite(database, first)) });
  }
  database.close();
  return { times, linesKept: store.linesKept() };
}

/** A history of many builds' entries, as restoring a backup would write it. */
async function fill(entries: number) {
  const { store } = await open();
  for (let written = 0; written < entries; written += 5000) {
    const subject = `filled-${written / 5000}`;
    const chunk = Array.from({ length: 1250 }, (_, i) => entriesOf(store, subject, 4 * i + 3)).flat();
    await store.write({ entries: chunk });
  }
  await store.close();
}

/** How long opening takes, and the comparison after it. */
async function start() {
  const { store, refilled, took } = await open();
  const started = performance.now();
  const compared = await store.compared;
  return { took, compare: performance.now() - started, refilled, compared, counts: await store.counts() };
}

Object.assign(window, { bench: { writeOn, besideBare, fill, start } });
