import { deleteDB } from 'idb';
import { v7 } from 'uuid';
import { recordStores } from './admit.ts';
import type { BackupOptions } from './backup.ts';
import type { Marks } from './compare.ts';
import { Connection } from './connection.ts';
import { type DatabaseName, failureOf } from './database.ts';
import { type FirstReadOptions, firstRead } from './first-read.ts';
import { Ids } from './ids.ts';
import { Lines } from './lines.ts';
import { photoFolder, slotOf } from './lines-protocol.ts';
import { Reader } from './reader.ts';
import { comparing, isOwed, Refill } from './refill.ts';
import type { SlotMark } from './schema.ts';
import type { OpenResult, Refilled, Store, Summarize } from './store.ts';
import { Summaries } from './summaries.ts';
import { Tabs } from './tabs.ts';
import { Writer } from './writer.ts';

const nothing: Refilled = { database: 0, lines: 0 };

export interface OpenStoreOptions {
  name: DatabaseName;
  summarize: () => Promise<Summarize>;
  /** A connection whose opening was begun already. */
  connecting?: ReturnType<typeof Connection.open>;
  first?: FirstReadOptions;
  /** When the first screen has been drawn: what it does without waits for that. */
  drawn?: Promise<unknown>;
}

export async function openStore(options: OpenStoreOptions): Promise<OpenResult> {
  const { name } = options;
  const opened = await (options.connecting ?? Connection.open({ name }));
  if (!opened.ok) return opened;
  const { connection } = opened;
  const reader = new Reader(connection);
  const summaries = new Summaries(connection, options.summarize);
  const read = () => firstRead(connection, { reader, summaries }, options.first ?? { phoneKey: 'settings' });
  // Side by side: neither needs the other, unless the database turns out to be empty.
  const begun = await Promise.all([begin(connection), read()]).catch(failureOf);
  if ('reason' in begun) {
    await connection.close();
    return { ok: false, ...begun };
  }
  const [{ device, marks, empty }, asFound] = begun;
  const lines = new Lines(name);
  const ids = new Ids();
  for (const mark of marks.values()) ids.raise(mark.greatestId);
  const tabs = new Tabs(name, (id) => ids.raise(id));
  const writer = new Writer(connection, lines, ids, tabs);
  const copies = { connection, lines, writer };
  let refilled = nothing;
  let first = asFound;
  if (empty) {
    // The first screen would show an empty shop: a lost database is refilled before anybody looks.
    await lines.ready;
    refilled = await comparing()
      .then(({ compareAll, newestIds }) => {
        for (const id of newestIds(lines)) ids.raise(id);
        return compareAll(copies, marks);
      })
      .catch(() => nothing);
    if (refilled.database > 0) first = await read();
  }
  const records = empty
    ? Promise.resolve(refilled)
    : Promise.resolve(options.drawn)
        .then(idle)
        .then(() => lines.ready)
        .then(comparing)
        .then(({ compareTails }) => compareTails(copies, marks))
        // What could not be compared now is compared at the next opening; both copies are as they were.
        .catch(() => nothing);
  const compared = records.then((counts) => withPhotos(counts, copies));
  const phone = new Map([[options.first?.phoneKey ?? 'settings', first.phoneValue]]);
  const refill = new Refill({ ...copies, ids, device, phone });
  connection.onEaten((database) => refill.begin(database));
  const store = assemble({ name, device, ids, tabs, compared, reader, summaries, refill, ...copies });
  return { ok: true, store, refilled, first };
}

/** Photos come after the first screen in any case: there may be hundreds of megabytes of them. */
async function withPhotos(counts: Refilled, copies: Copies): Promise<Refilled> {
  await idle();
  const photos = await import('./compare-photos.ts').then((m) => m.comparePhotos(copies)).catch(() => 0);
  return photos > 0 ? { ...counts, photos } : counts;
}

/** This phone's name in the record, what was last written, and whether there is any record at all. */
async function begin(connection: Connection): Promise<{ device: string; marks: Marks; empty: boolean }> {
  const { known, marks, empty } = await connection.transact(
    [...recordStores, 'meta'],
    'readonly',
    async (transaction) => {
      const meta = transaction.objectStore('meta');
      const slots = IDBKeyRange.bound(['slot'], ['slot', []]);
      const [device, keys, values, ...firsts] = await Promise.all([
        meta.get('device'),
        meta.getAllKeys(slots),
        meta.getAll(slots),
        ...recordStores.map((store) => transaction.objectStore(store).getAllKeys(null, 1)),
      ]);
      const marks = new Map(keys.map((key, i): [number, SlotMark] => [slotIn(key), values[i] as SlotMark]));
      const empty = firsts.every((first) => first.length === 0) || isOwed(marks);
      return { known: device, marks, empty };
    },
  );
  const device = typeof known === 'string' ? known : await nameDevice(connection);
  return { device, marks, empty };
}

function slotIn(key: IDBValidKey): number {
  return Array.isArray(key) ? Number(key[1]) : Number.NaN;
}

/** Two tabs may open a new database at once: the first name stays. */
function nameDevice(connection: Connection): Promise<string> {
  return connection.transact(['meta'], 'readwrite', async (transaction) => {
    const meta = transaction.objectStore('meta');
    const known = await meta.get('device');
    if (typeof known === 'string') return known;
    const device = v7();
    await meta.put(device, 'device');
    return device;
  });
}

interface Copies {
  connection: Connection;
  lines: Lines;
  writer: Writer;
}

interface Parts {
  name: string;
  device: string;
  connection: Connection;
  lines: Lines;
  ids: Ids;
  tabs: Tabs;
  writer: Writer;
  compared: Promise<Refilled>;
  reader: Reader;
  summaries: Summaries;
  refill: Refill;
}

function assemble(parts: Parts): Store {
  const { connection, lines, ids, tabs, writer, reader, summaries, refill } = parts;
  const release = () => {
    tabs.close();
    return lines.close();
  };
  // Whoever deletes the database deletes the lines files too, and cannot while they are held.
  connection.onLost(() => void release());
  return {
    database: parts.name,
    device: parts.device,
    compared: parts.compared,
    newId: () => ids.next(),
    async write(batch) {
      await writer.write(batch);
      refill.goOn();
    },
    entries: (subject, since) => reader.entries(subject, since),
    header: (id) => reader.header(id),
    heads: (type) => reader.heads(type),
    revisions: (doc) => reader.revisions(doc),
    summaries: (options) => summaries.page(options),
    summary: (subject) => summaries.one(subject),
    eachSummary: (take) => summaries.each(take),
    openSubjects: () => summaries.openSubjects(),
    photo: (hash) => reader.photo(hash),
    phoneValue: (key) => connection.transact(['phone'], 'readonly', (t) => t.objectStore('phone').get(key)),
    async setPhoneValue(key, value) {
      await writer.setPhoneValue(key, value);
      refill.keep(key, value);
    },
    onOthersWrote: (listener) => tabs.listen(listener),
    onLost: (listener) => connection.onLost(listener),
    counts: () => reader.counts(),
    linesKept: () => lines.kept(),
    linesStopped: () => lines.stopped(),
    backup: (options) => backupOf(connection, options),
    async restore(checked, watched) {
      const { restore } = await import('./restore.ts');
      return restore({ connection, reader, writer, summaries }, checked, watched);
    },
    async close() {
      await writer.settled();
      await release();
      await connection.close();
    },
  };
}

/** After the first screen is drawn. */
function idle(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof requestIdleCallback === 'function') requestIdleCallback(() => resolve(), { timeout: 2000 });
    else setTimeout(resolve, 500);
  });
}

const tries = 20;
const betweenTries = 100;

/** Deletes a database and its second copy. Other tabs that have it open give it up. */
export async function deleteStore(name: DatabaseName): Promise<void> {
  await deleteDB(name);
  const folder = await linesFolder();
  if (!folder) return;
  const names: string[] = [];
  for await (const file of (folder as unknown as { keys(): AsyncIterable<string> }).keys()) {
    if (slotOf(name, file) !== undefined || file === photoFolder(name)) names.push(file);
  }
  for (const file of names) await remove(folder, file);
}

/** Undefined where a browser has no private file system, or gives none to a private window: nothing was put there. */
async function linesFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    return await navigator.storage.getDirectory();
  } catch {
    return undefined;
  }
}

/** Another tab may need a moment to let go of its file. A file left behind would bring everything back. */
async function remove(folder: FileSystemDirectoryHandle, file: string): Promise<void> {
  for (let left = tries; ; left--) {
    try {
      return await folder.removeEntry(file, { recursive: true });
    } catch (error) {
      if (error instanceof DOMException && error.name === 'NotFoundError') return;
      if (left === 0) throw error;
      await new Promise((resolve) => setTimeout(resolve, betweenTries));
    }
  }
}

/** Rarely wanted, so not in the first script. */
async function* backupOf(connection: Connection, options: BackupOptions): AsyncGenerator<string> {
  const { backup } = await import('./backup.ts');
  yield* backup(connection, options);
}
