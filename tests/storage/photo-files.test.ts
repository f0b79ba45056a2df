import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { deleteStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';
import { cleanUp, name, note, open, photo } from './samples.ts';

afterEach(cleanUp);

const folder = async () =>
  (await navigator.storage.getDirectory()).getDirectoryHandle(`${name}-photos`, { create: true });

async function filesKept(): Promise<string[]> {
  const names: string[] = [];
  for await (const file of ((await folder()) as unknown as { keys(): AsyncIterable<string> }).keys()) {
    names.push(file);
  }
  return names.sort();
}

async function overwrite(file: string, text: string): Promise<void> {
  const writable = await (await (await folder()).getFileHandle(file, { create: true })).createWritable();
  await writable.write(text);
  await writable.close();
}

async function withTwoPhotos(): Promise<{ store: Store; hashes: string[] }> {
  const store = await open();
  const photos = [await photo('gelled cup'), await photo('dry spot')];
  await store.write({ photos, entries: [note('e1', 'o1')] });
  return { store, hashes: photos.map((p) => p.record.hash) };
}

const textOf = async (store: Store, hash = '') => (await store.photo(hash))?.text();

describe('the second copy of photos', () => {
  it('is one file a photo once the write is acknowledged', async () => {
    const { hashes } = await withTwoPhotos();
    expect(await filesKept()).toEqual([...hashes].sort());
  });

  it('gives all of them back when the database is gone', async () => {
    const { store, hashes } = await withTwoPhotos();
    await store.close();
    await deleteDB(name);
    const again = await open();
    expect(await again.compared).toEqual({ database: 1, lines: 0, photos: 2 });
    expect(await textOf(again, hashes[0])).toBe('gelled cup');
    expect(await textOf(again, hashes[1])).toBe('dry spot');
    expect((await again.photo(hashes[0] ?? ''))?.type).toBe('image/jpeg');
    expect(await again.counts()).toMatchObject({ photos: 2, photoBytes: 18 });
  });

  it('is made for photos that were kept before there was one, and nothing is said of it', async () => {
    const { store, hashes } = await withTwoPhotos();
    await store.close();
    await (await navigator.storage.getDirectory()).removeEntry(`${name}-photos`, { recursive: true });
    expect(await (await open()).compared).toEqual({ database: 0, lines: 0 });
    expect(await filesKept()).toEqual([...hashes].sort());
  });

  it('gives the others back when one has a name in the folder and nothing behind it', async () => {
    const { store, hashes } = await withTwoPhotos();
    const [first = '', second = ''] = [...hashes].sort();
    await store.close();
    const kept = await folder();
    await kept.removeEntry(first);
    await kept.getDirectoryHandle(first, { create: true });
    await deleteDB(name);
    const again = await open();
    expect(await again.compared).toEqual({ database: 1, lines: 0, photos: 1 });
    expect(await again.photo(second)).toBeDefined();
    expect(await filesKept()).toEqual([second]);
  });

  it('never brings back bytes that are not what their name says, nor half a file', async () => {
    const { store, hashes } = await withTwoPhotos();
    const [first = '', second = ''] = hashes;
    await store.close();
    await overwrite(first, `${JSON.stringify({ hash: first, type: 'image/jpeg' })}\ngelled cuq`);
    await overwrite(`${second}.part`, 'dr');
    await deleteDB(name);
    const again = await open();
    expect(await again.compared).toEqual({ database: 1, lines: 0, photos: 1 });
    expect(await textOf(again, first)).toBeUndefined();
    expect(await textOf(again, second)).toBe('dry spot');
  });

  it('stands for a photo that a kill left out of the database alone', async () => {
    const { store, hashes } = await withTwoPhotos();
    await store.close();
    const database = await openDB(name);
    await database.delete('photos', hashes[1] ?? '');
    database.close();
    const again = await open();
    expect(await again.compared).toEqual({ database: 0, lines: 0, photos: 1 });
    expect(await textOf(again, hashes[1])).toBe('dry spot');
  });

  it('goes when the store is deleted', async () => {
    const { store } = await withTwoPhotos();
    await store.close();
    await deleteStore(name);
    expect(await filesKept()).toEqual([]);
  });
});
