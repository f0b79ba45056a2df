import { deleteDB, openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Opened, openDatabase } from '#storage/database.ts';
import { type Migration, numbered } from '#storage/migrate.ts';
import { first } from '#storage/migrations/001-first.ts';
import { migrations } from '#storage/migrations/list.ts';
import { openStore } from '#storage/open-store.ts';
import { cleanUp, name, note, ovenLoad, summarize } from './samples.ts';

const test = 'migrations-test';

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
});
afterEach(async () => {
  vi.restoreAllMocks();
  await deleteDB(test);
  await cleanUp();
});

const quiet = { onBlocking: () => {}, onTerminated: () => {} };

async function openWith(list: readonly Migration[], options: { patience?: number } = {}): Promise<Opened> {
  return openDatabase({ name: test, migrations: list, ...quiet, ...options });
}

function database(opened: Opened) {
  if (!opened.ok) throw new Error(opened.detail);
  return opened.database;
}

/** Names, keys and indexes of every store. */
async function shape(list: readonly Migration[]): Promise<unknown> {
  const opened = database(await openWith(list));
  const transaction = opened.transaction([...opened.objectStoreNames], 'readonly');
  const stores = [...opened.objectStoreNames].map((store) => {
    const { keyPath, indexNames, index } = transaction.objectStore(store);
    const paths = [...(indexNames as Iterable<string>)].map((i) => {
      const { keyPath: path, unique, multiEntry } = index.call(transaction.objectStore(store), i as never);
      return { i, path, unique, multiEntry };
    });
    return { store, keyPath, paths };
  });
  opened.close();
  return { version: opened.version, stores };
}

/** A second step as a later version could have it. */
const second: Migration = {
  number: 2,
  name: 'ledger',
  async apply(db, transaction) {
    db.createObjectStore('ledger', { keyPath: 'id' });
    const entries = transaction.objectStore('entries');
    const all = await entries.getAll();
    for (const entry of all)
      await transaction.objectStore('ledger').put({ id: entry.id, from: entry.subject });
  },
};

const late: Migration = {
  number: 2,
  name: 'late failure',
  async apply(db, transaction) {
    db.createObjectStore('half', { keyPath: 'id' });
    await transaction.objectStore('entries').getAll();
    throw new Error('in the middle');
  },
};

describe('migrations', () => {
  it('have numbers without a gap and in order', () => {
    expect(migrations.map((m) => m.number)).toEqual(migrations.map((_, i) => i + 1));
    expect(() => numbered([first, { ...second, number: 3 }])).toThrow(
      "'ledger' has number 3, it should be 2",
    );
    expect(() => numbered([second])).toThrow();
    expect(() => numbered([first, { ...second, number: 1 }])).toThrow();
  });

  it('001 makes the stores of the first version', async () => {
    expect(await shape([first])).toEqual({
      version: 1,
      stores: [
        { store: 'entries', keyPath: 'id', paths: [plain('bySubject', ['subject', 'id'])] },
        { store: 'headers', keyPath: 'id', paths: [plain('byStart', ['record', 'startedAt', 'id'])] },
        { store: 'meta', keyPath: null, paths: [] },
        { store: 'phone', keyPath: null, paths: [] },
        { store: 'photos', keyPath: 'hash', paths: [plain('byBytes', 'record.bytes')] },
        { store: 'revisions', keyPath: 'id', paths: [plain('byDoc', 'doc'), plain('byType', 'type')] },
        { store: 'summaries', keyPath: 'subject', paths: [plain('byOpen', 'open')] },
      ],
    });
  });

  it('bring an older database to what a fresh one is, with its records', async () => {
    const old = database(await openWith([first]));
    await old.put('entries', { ...note('e1', 'o1') });
    old.close();
    const upgraded = await shape([first, second]);
    const after = await openDB(test);
    expect(await after.getAll('ledger')).toEqual([{ id: 'e1', from: 'o1' }]);
    expect(await after.getAll('entries')).toEqual([note('e1', 'o1')]);
    after.close();
    await deleteDB(test);
    expect(upgraded).toEqual(await shape([first, second]));
  });

  it('that fail late leave version and records as they were', async () => {
    const old = database(await openWith([first]));
    await old.put('entries', { ...note('e1', 'o1') });
    const before = await shape([first]);
    old.close();
    expect(await openWith([first, late])).toMatchObject({ ok: false, reason: 'unavailable' });
    expect(await shape([first])).toEqual(before);
    const again = database(await openWith([first]));
    expect(await again.getAll('entries')).toEqual([note('e1', 'o1')]);
    again.close();
  });
});

function plain(i: string, path: string | string[]) {
  return { i, path, unique: false, multiEntry: false };
}

describe('a database of a newer version', () => {
  it('is refused and left untouched', async () => {
    const newer = await openDB(name, migrations.length + 1, {
      upgrade(db) {
        db.createObjectStore('headers', { keyPath: 'id' });
        db.createObjectStore('future', { keyPath: 'id' });
      },
    });
    await newer.put('headers', ovenLoad('o1', 5));
    newer.close();
    const result = await openStore({ name, summarize: async () => summarize });
    expect(result).toMatchObject({ ok: false, reason: 'newerVersion' });
    const after = await openDB(name);
    expect([after.version, [...after.objectStoreNames]]).toEqual([
      migrations.length + 1,
      ['future', 'headers'],
    ]);
    expect(await after.getAll('headers')).toEqual([ovenLoad('o1', 5)]);
    after.close();
  });
});

describe('two connections', () => {
  it('one that will not close keeps a newer version out, which says so and goes on when it may', async () => {
    const stubborn = database(await openWith([first]));
    expect(await openWith([first, second], { patience: 50 })).toMatchObject({ ok: false, reason: 'blocked' });
    stubborn.close();
    await expect
      .poll(async () => (await indexedDB.databases()).find((d) => d.name === test)?.version, {
        timeout: 8000,
      })
      .toBe(2);
    // The late connection closed itself: nothing is in the way of deleting.
    await deleteDB(test);
  });
});
