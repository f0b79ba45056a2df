import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { decodeLines, encodeLines } from '#storage/lines-text.ts';
import { openStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';
import { cleanUp, cloth, name, note, open, outcome, ovenLoad, photo, state, summarize } from './samples.ts';

afterEach(cleanUp);

const firstFile = `${name}-0.lines`;

async function linesFile(file = firstFile): Promise<FileSystemFileHandle> {
  return (await navigator.storage.getDirectory()).getFileHandle(file, { create: true });
}

async function linesBytes(file = firstFile): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await (await (await linesFile(file)).getFile()).arrayBuffer());
}

async function setLines(bytes: Uint8Array<ArrayBuffer>, file = firstFile): Promise<void> {
  const writable = await (await linesFile(file)).createWritable();
  await writable.write(bytes);
  await writable.close();
}

async function removeLines(): Promise<void> {
  await (await navigator.storage.getDirectory()).removeEntry(firstFile);
}

/** Takes a record out of the database behind the store's back, as a crash would. */
async function loseEntries(...ids: string[]): Promise<void> {
  const database = await openDB(name);
  const transaction = database.transaction('entries', 'readwrite');
  for (const id of ids) await transaction.store.delete(id);
  await transaction.done;
  database.close();
}

const record = (i: number) => note(`e${String(i).padStart(5, '0')}`, 'o1', `entry ${i}`);
const many = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => record(from + i));

/** While `work` runs, every write is lost at its commit. */
async function whileCommitsFail<T>(work: () => Promise<T>): Promise<T> {
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args) {
    const { transaction } = this;
    const request = put.apply(this, args);
    // Its last request of all.
    if (String(args[1]).startsWith('dropped')) request.addEventListener('success', () => transaction.abort());
    return request;
  };
  return work().finally(() => {
    IDBObjectStore.prototype.put = put;
  });
}

async function filled(): Promise<{ store: Store; kept: string[] }> {
  const store = await open();
  await store.write({ headers: [ovenLoad('o1', 5)], revisions: [cloth('d1', 'r1')], entries: many(0, 3) });
  for (const entry of many(3, 8)) await store.write({ entries: [entry] });
  expect(store.linesKept()).toBe(true);
  return { store, kept: await state(store) };
}

describe('the lines file', () => {
  it('holds one checksummed line a record once the write is acknowledged', async () => {
    const { store } = await filled();
    await store.write({ photos: [await photo('not in the lines')] });
    const { records, damaged } = decodeLines(await linesBytes());
    expect(damaged).toBe(false);
    expect(records).toHaveLength(10);
    expect(JSON.parse(records[9] ?? '')).toEqual(record(7));
  });

  it('gives everything back when the database is gone, before the first screen', async () => {
    const { store, kept } = await filled();
    await store.close();
    await deleteDB(name);
    const result = await openStore({ name, summarize: async () => summarize });
    if (!result.ok) throw new Error(result.detail);
    expect(result.refilled).toEqual({ database: 10, lines: 0 });
    expect(await state(result.store)).toEqual(kept);
    await result.store.close();
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
  });

  it('is filled again from the database when it is gone', async () => {
    const { store } = await filled();
    await store.close();
    await removeLines();
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 10 });
    await again.close();
    expect(decodeLines(await linesBytes()).records).toHaveLength(10);
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
  });

  it('agrees with a healthy database and leaves both alone', async () => {
    const { store } = await filled();
    await store.close();
    const before = await linesBytes();
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
    expect(await linesBytes()).toEqual(before);
  });

  it('cuts a torn last line off and goes on after the last whole one', async () => {
    const { store, kept } = await filled();
    await store.close();
    const whole = await linesBytes();
    await setLines(new Uint8Array([...whole, ...encodeLines([JSON.stringify(record(99))]).slice(0, -20)]));
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 0 });
    expect(await state(again)).toEqual(kept);
    await again.write({ entries: [record(8)] });
    const { records, damaged } = decodeLines(await linesBytes());
    expect([records.length, damaged]).toEqual([11, false]);
  });

  it('gets the last line that a kill between the two copies left out', async () => {
    const { store } = await filled();
    await store.close();
    const whole = await linesBytes();
    const shorter = whole.slice(0, whole.lastIndexOf(10, whole.length - 2) + 1);
    await setLines(shorter);
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 1 });
    await again.close();
    expect(await linesBytes()).toEqual(whole);
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
  });

  it('keeps a press that the database lost at its commit: a second go writes it once, or the next opening has it', async () => {
    const { store } = await filled();
    const refused = await whileCommitsFail(() =>
      Promise.all([
        outcome(store.write({ entries: [record(8)] })),
        outcome(store.write({ entries: [record(9)] })),
      ]),
    );
    expect(refused).toEqual(['failed', 'failed']);
    expect((await store.entries('o1')).length).toBe(8);
    expect(await outcome(store.write({ entries: [record(8)] }))).toBe('written');
    expect((await store.entries('o1')).length).toBe(9);
    await store.close();
    const again = await open();
    expect(await again.compared).toEqual({ database: 1, lines: 0 });
    expect((await again.entries('o1')).map((e) => e.ok && e.value.id)).toEqual(
      many(0, 10).map(({ id }) => id),
    );
  });

  it('has no line of several records that the database lost at their commit: a part of them could come back', async () => {
    const { store } = await filled();
    const before = await linesBytes();
    const refused = await whileCommitsFail(() => outcome(store.write({ entries: many(8, 10) })));
    expect(refused).toBe('failed');
    await store.close();
    expect(await linesBytes()).toEqual(before);
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
  });

  it('gives the database its lost end back', async () => {
    const { store, kept } = await filled();
    await store.close();
    await loseEntries('e00006', 'e00007');
    const again = await open();
    expect(await again.compared).toEqual({ database: 2, lines: 0 });
    expect(await state(again)).toEqual(kept);
  });

  it('gives the database back more than the end of the file holds', async () => {
    const store = await open();
    await store.write({ entries: many(0, 500) });
    const kept = await state(store);
    await store.close();
    await loseEntries(...many(10, 500).map((e) => e.id));
    const again = await open();
    expect(await again.compared).toEqual({ database: 490, lines: 0 });
    expect(await state(again)).toEqual(kept);
  });

  it('puts a record whose line was damaged back into the file', async () => {
    const { store, kept } = await filled();
    await store.close();
    const bytes = await linesBytes();
    bytes[20] = (bytes[20] ?? 0) ^ 1;
    await setLines(bytes);
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 1 });
    await again.close();
    await deleteDB(name);
    expect(await state(await open())).toEqual(kept);
  });

  it('lets nothing in that the gate turns away', async () => {
    const { store, kept } = await filled();
    await store.close();
    const hostile = ['{"record":"entry"}', '[]', '7', '{"__proto__":{"record":"entry"}}'];
    await setLines(new Uint8Array([...(await linesBytes()), ...encodeLines(hostile)]));
    await deleteDB(name);
    expect(await state(await open())).toEqual(kept);
  });

  it('is one file a tab, and all of them count when the database is gone', async () => {
    const { store } = await filled();
    const second = await open();
    await second.write({ entries: [record(20)] });
    await store.write({ entries: [record(21)] });
    expect(second.linesKept() && store.linesKept()).toBe(true);
    const kept = await state(store);
    await store.close();
    await second.close();
    expect(decodeLines(await linesBytes(`${name}-1.lines`)).records).toHaveLength(1);
    await deleteDB(name);
    expect(await state(await open())).toEqual(kept);
  });

  it('does not stop the work when there is none: the database goes on alone, and it catches up later', async () => {
    const RealWorker = window.Worker;
    window.Worker = class {
      constructor() {
        throw new Error('no workers here');
      }
    } as never;
    const store = await open();
    await store.write({ entries: many(0, 4) });
    expect(store.linesKept()).toBe(false);
    const kept = await state(store);
    await store.close();
    window.Worker = RealWorker;
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 4 });
    await again.close();
    await deleteDB(name);
    expect(await state(await open())).toEqual(kept);
  });
});
