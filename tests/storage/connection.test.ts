import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { migrations } from '#storage/migrations/list.ts';
import { deleteStore, openStore } from '#storage/open-store.ts';
import { cleanUp, name, note, open, outcome, ovenLoad, summarize } from './samples.ts';

afterEach(async () => {
  vi.restoreAllMocks();
  await cleanUp();
});

/** Makes the next transaction fail as iOS does after it cut the connection of a page in the background. */
function cutOnce(error: DOMException): { times: () => number } {
  const { transaction } = IDBDatabase.prototype;
  let times = 0;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...args) {
    times += 1;
    if (times === 1) throw error;
    return transaction.apply(this, args);
  });
  return { times: () => times };
}

describe('a store whose database a newer version wants', () => {
  it('closes at once, tells it, and takes no more writes', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    const lost = vi.fn();
    store.onLost(lost);
    const newer = await openDB(name, migrations.length + 1);
    expect(lost).toHaveBeenCalledOnce();
    expect(await outcome(store.write({ entries: [note('e2', 'o1')] }))).toBe('closed');
    const count = await newer.count('entries');
    newer.close();
    expect(count).toBe(1);
    // Its worker lets go of the file in its own time.
    await expect.poll(() => store.linesKept()).toBe(false);
  });

  it('finishes the write that is under way first', async () => {
    const store = await open();
    const write = store.write({ entries: Array.from({ length: 300 }, (_, i) => note(`e${i}`, 'o1')) });
    await expect.poll(() => store.linesKept(), { timeout: 8000 }).toBe(true);
    const [result, newer] = await Promise.all([outcome(write), openDB(name, migrations.length + 1)]);
    const count = await newer.count('entries');
    newer.close();
    expect([result, count]).toEqual(['written', 300]);
  });

  it('lets a tab delete it, with the lines', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    const lost = vi.fn();
    store.onLost(lost);
    await deleteStore(name);
    expect(lost).toHaveBeenCalledOnce();
    expect((await (await open()).counts()).entries).toBe(0);
  });
});

describe('a database that the disk will not open', () => {
  const refusal = () => {
    throw new DOMException('Internal error opening backing store for indexedDB.open.', 'UnknownError');
  };

  it('is asked again, since a dying browser holds it for a moment', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    await store.close();
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementationOnce(refusal).mockImplementationOnce(refusal);
    expect(await (await open()).entries('o1')).toHaveLength(1);
  });

  it('is told apart from storage that is switched off', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(refusal);
    const result = await openStore({ name, summarize: async () => summarize });
    expect(result).toMatchObject({ ok: false, reason: 'unreadable' });
  });
});

describe('a connection that the system cut', () => {
  it('is opened again once, and the write goes through', async () => {
    const store = await open();
    await store.compared;
    const cut = cutOnce(new DOMException('The database connection is closing.', 'InvalidStateError'));
    expect(await outcome(store.write({ entries: [note('e1', 'o1')] }))).toBe('written');
    expect(cut.times()).toBe(2);
    expect(await store.entries('o1')).toHaveLength(1);
  });

  it('is opened again for reading too', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5)] });
    await store.compared;
    cutOnce(new DOMException('Connection to Indexed Database server lost.', 'UnknownError'));
    expect((await store.header('o1'))?.ok).toBe(true);
  });

  it('never goes on with an empty database when the old one is gone', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    await store.compared;
    const lost = vi.fn();
    store.onLost(lost);
    // Deleting without asking, as 'clear site data' does.
    const cut = new DOMException('The database connection is closing.', 'InvalidStateError');
    const { transaction } = IDBDatabase.prototype;
    let first = true;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...args) {
      if (!first) return transaction.apply(this, args);
      first = false;
      this.onversionchange = null;
      this.close();
      indexedDB.deleteDatabase(name);
      throw cut;
    });
    expect(await outcome(store.write({ entries: [note('e2', 'o1')] }))).toBe('closed');
    expect(lost).toHaveBeenCalledOnce();
    vi.restoreAllMocks();
    expect((await indexedDB.databases()).map((d) => d.name)).not.toContain(name);
    const again = await open();
    expect((await again.counts()).entries).toBe(1);
  });
});

describe('a connection that a full disk cut', () => {
  const cut = () => new DOMException('The database connection is closing.', 'InvalidStateError');
  const noRoom = () => {
    throw new DOMException('Encountered full disk while opening backing store.', 'QuotaExceededError');
  };

  it('refuses the write as long as there is no room, and takes it at the next try', async () => {
    const store = await open();
    await store.compared;
    const lost = vi.fn();
    store.onLost(lost);
    cutOnce(cut());
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementationOnce(noRoom).mockImplementationOnce(noRoom);
    const write = () => store.write({ entries: [note('e1', 'o1')] });
    expect([await outcome(write()), await outcome(write()), await outcome(write())]).toEqual([
      'full',
      'full',
      'written',
    ]);
    expect(lost).not.toHaveBeenCalled();
    expect(await store.entries('o1')).toHaveLength(1);
  });

  it('fills the database anew from the second copy when the disk destroyed it', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5)], entries: [note('e1', 'o1')] });
    await store.setPhoneValue('settings', { units: 'inchPound' });
    await store.compared;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementationOnce(noRoom);
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(function (this: IDBDatabase) {
      this.onversionchange = null;
      this.close();
      indexedDB.deleteDatabase(name);
      throw cut();
    });
    expect(await outcome(store.write({ entries: [note('e2', 'o1')] }))).toBe('full');
    expect(await outcome(store.write({ entries: [note('e2', 'o1')] }))).toBe('written');
    await expect.poll(async () => (await store.entries('o1')).length, { timeout: 8000 }).toBe(2);
    expect((await store.header('o1'))?.ok).toBe(true);
    expect(await store.phoneValue('settings')).toEqual({ units: 'inchPound' });
    const { device } = store;
    await store.close();
    expect((await open()).device).toBe(device);
  });
});

describe('two tabs', () => {
  it('hear of each other’s writes and not of their own', async () => {
    const [one, two] = [await open(), await open()];
    const [own, others] = [vi.fn(), vi.fn()];
    one.onOthersWrote(own);
    const stop = two.onOthersWrote(others);
    await one.write({ headers: [ovenLoad('o1', 5)], entries: [note('e1', 'o1'), note('e2', 'bench')] });
    await expect.poll(() => others.mock.calls, { timeout: 8000 }).toEqual([[['o1', 'bench']]]);
    expect(own).not.toHaveBeenCalled();
    stop();
    await one.write({ entries: [note('e3', 'o1')] });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(others).toHaveBeenCalledOnce();
    expect(await two.entries('o1')).toHaveLength(2);
  });

  it('write at the same time without losing anything', async () => {
    const [one, two] = [await open(), await open()];
    await Promise.all(
      Array.from({ length: 40 }, (_, i) =>
        (i % 2 ? one : two).write({ entries: [note(`e${i}`, 'o1'), note('shared', 'o1')] }),
      ),
    );
    expect(await one.entries('o1')).toHaveLength(41);
    await Promise.all([one.close(), two.close()]);
    await deleteDB(name);
    expect(await (await open()).entries('o1')).toHaveLength(41);
  });
});
