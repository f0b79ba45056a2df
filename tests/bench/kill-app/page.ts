import { shelfIsThere } from '#app/state/documents.ts';
import { shop, theStore } from '#app/state/shop.ts';
import { readRecord } from '#shared/record/read.ts';
import { checkedLine } from '#storage/backup-line.ts';
import type { Batch, Store } from '#storage/store.ts';
import { begin, something } from './acts.ts';
import { inDatabase, inLines, type OnDisk } from './both-copies.ts';

const name = 'tubewright';

/** What one transaction was to write: ids of records, and hashes of photos. */
interface Write {
  number: number;
  keys: string[];
  hashes: string[];
}

/** What the other side of the debugging protocol notes. */
declare global {
  interface Window {
    tries: (write: Write) => void;
    acknowledged: (write: Write) => void;
    /** The screen says that something is written. */
    said: () => void;
  }
}

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

async function until(is: () => boolean, what: string): Promise<void> {
  for (let left = 1500; !is(); left--) {
    if (left === 0) throw new Error(`never came: ${what}`);
    await pause(10);
  }
}

let before: OnDisk | undefined;
let linesBefore: Awaited<ReturnType<typeof inLines>> | undefined;

/** Starts the app, and reads first what lies on disk if it is to be looked at. */
async function start(reads: boolean): Promise<void> {
  // A database that cannot be read yet is the app's to wait for.
  if (reads)
    [before, linesBefore] = await Promise.all([inDatabase(name).catch(() => undefined), inLines(name)]);
  await import('#app/main.tsx');
}

/** What was noted of all lives of a profile, and what was tried since it was last looked at. */
interface Known {
  kept: readonly string[];
  hashes: readonly string[];
  tried: readonly (readonly string[])[];
}

/** How the app stands after its opening, and what is left of what was acknowledged. */
async function look(known: Known) {
  const started = performance.now();
  await until(
    () => shop.value.phase !== 'opening' && (shop.value.phase !== 'open' || shelfIsThere.value),
    'a screen',
  );
  if (shop.value.phase !== 'open') throw new Error(`the app did not open: ${JSON.stringify(shop.value)}`);
  const took = performance.now() - started;
  const store = theStore();
  const compared = await store.compared;
  const [database, lines] = await Promise.all([inDatabase(name), inLines(name)]);
  const unlike = [...database.records].filter(([key, json]) => lines.records.get(key) !== json);
  const values = [...database.records.values()].map((json) => JSON.parse(json));
  const spokenOf = values.flatMap((v) => ('hash' in v ? [v.hash as string] : []));
  return {
    took,
    compared,
    linesKept: store.linesKept(),
    /** The database came back with nothing in it, although there had been something. */
    wasEmpty: before?.records.size === 0 && known.kept.length > 0,
    lost: known.kept.filter((key) => !database.records.has(key)),
    lostBytes: known.hashes.filter((hash) => !database.whole.has(hash)),
    lackedInDatabase: before ? known.kept.filter((key) => !before?.records.has(key)).length : 0,
    lackedInLines: known.kept.filter((key) => !linesBefore?.records.has(key)).length,
    unreadable: values.filter((value) => !readRecord(value).ok).length,
    /** Entries that speak of a photo or a file whose bytes are not there. */
    bytesMissing: spokenOf.filter((hash) => !database.whole.has(hash)).length,
    spoiled: database.spoiled.length,
    /** Both copies say the same, word for word. */
    disagree: unlike.length + [...lines.records.keys()].filter((key) => !database.records.has(key)).length,
    filesLackingSecondCopy: [...database.whole].filter((hash) => !lines.photos.includes(hash)).length,
    filesInSecondCopyOnly: lines.photos.filter((hash) => !database.whole.has(hash)).length,
    torn: known.tried.filter((keys) => {
      const found = keys.filter((key) => database.records.has(key)).length;
      return found > 0 && found < keys.length;
    }).length,
    records: database.records.size,
  };
}

function writeOf(number: number, { entries = [], headers = [], revisions = [], photos = [] }: Batch): Write {
  return {
    number,
    keys: [
      ...entries.map((e) => `entries:${e.id}`),
      ...headers.map((h) => `headers:${h.id}`),
      ...revisions.map((r) => `revisions:${r.id}`),
    ],
    hashes: photos.map((p) => p.record.hash),
  };
}

/** Tells of every write before it is tried and after it is acknowledged, whoever in the app does it. */
function listenTo(store: Store): void {
  let number = 0;
  const { write, restore } = store;
  store.write = async (batch) => {
    const one = writeOf(number++, batch);
    window.tries(one);
    await write(batch);
    window.acknowledged(one);
  };
  store.restore = async (checked, watched) => {
    const outcome = await restore(checked, watched);
    const lines = (await checked.file.text()).trimEnd().split('\n').slice(1, -1);
    const keys = lines.flatMap((line, i) => {
      const held = checkedLine(line, i + 2);
      return held.is === 'record' ? [held.key] : [];
    });
    if (outcome.ok) window.acknowledged({ number: number++, keys, hashes: [] });
    return outcome;
  };
}

/** Works on and on. */
async function work(): Promise<void> {
  await until(() => shop.value.phase === 'open' && shelfIsThere.value, 'the bench');
  listenTo(theStore());
  new MutationObserver(() => {
    if (document.querySelector('.undo-said')?.textContent?.startsWith('Ticked')) window.said();
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
  await begin();
  for (;;) await something();
}

Object.assign(window, { bench: { start, look, work } });
