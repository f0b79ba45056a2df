import { afterEach, describe, expect, it } from 'vitest';
import { deleteStore } from '#storage/open-store.ts';
import { backupText, cleanUp, cloth, name, note, open, outcome, ovenLoad, photo, state } from './samples.ts';

afterEach(cleanUp);

describe('write', () => {
  it('reads back what it acknowledged, also from a store opened later', async () => {
    const store = await open();
    await store.write({
      headers: [ovenLoad('o1', 5)],
      entries: [note('e1', 'o1'), note('e2', 'o1', 'second'), note('e3', 'elsewhere')],
      revisions: [cloth('d1', 'r1')],
    });
    await store.close();
    const again = await open();
    expect((await again.entries('o1')).map((e) => e.ok && e.value.id)).toEqual(['e1', 'e2']);
    expect((await again.header('o1'))?.ok).toBe(true);
    expect((await again.revisions('d1')).map((r) => r.id)).toEqual(['r1']);
    expect(await again.header('nobody')).toBeUndefined();
  });

  it('changes nothing when the same record comes again, whatever the order of its keys', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    const before = await state(store);
    const turned = Object.fromEntries(Object.entries(note('e1', 'o1')).reverse());
    await store.write({ entries: [turned as ReturnType<typeof note>] });
    expect(await state(store)).toEqual(before);
  });

  it('refuses other content under an id that is taken, and the whole batch with it', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    const before = await state(store);
    const changed = store.write({ entries: [note('e2', 'o1'), note('e1', 'o1', 'changed')] });
    expect(await outcome(changed)).toBe('refused');
    expect(await outcome(store.write({ entries: [note('e4', 'o1'), note('e4', 'o1', 'twice')] }))).toBe(
      'refused',
    );
    expect(await state(store)).toEqual(before);
    expect(await outcome(store.write({ entries: [note('e2', 'o1')] }))).toBe('written');
  });

  it('refuses a record that the gate turns away', async () => {
    const store = await open();
    expect(await outcome(store.write({ entries: [note('e1', 'o1', 'x', { happenedAt: 'noon' })] }))).toBe(
      'refused',
    );
    expect(await outcome(store.write({ entries: [note('', 'o1')] }))).toBe('refused');
    expect((await store.counts()).entries).toBe(0);
  });

  it('keeps kinds and fields of newer versions as they are', async () => {
    const store = await open();
    const newer = note('e1', 'o1', 'x', { kind: 'spectrum', bands: [1, { deep: true }], v: 7 });
    await store.write({ entries: [newer, note('e2', 'o1', 'y', { mood: 'calm' })] });
    const [first, second] = await store.entries('o1');
    expect(first?.ok && first.value).toEqual(newer);
    expect(second?.ok && second.value).toMatchObject({ mood: 'calm' });
  });

  it('refuses a correction of a correction, stored or in the same batch, and of itself', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1'), note('e2', 'o1', 'better', { corrects: 'e1' })] });
    const corrects = (id: string, first: string) => note(id, 'o1', 'best', { corrects: first });
    expect(await outcome(store.write({ entries: [corrects('e3', 'e2')] }))).toBe('refused');
    expect(await outcome(store.write({ entries: [corrects('e4', 'e1'), corrects('e5', 'e4')] }))).toBe(
      'refused',
    );
    expect(await outcome(store.write({ entries: [corrects('e6', 'e6')] }))).toBe('refused');
    expect(await outcome(store.write({ entries: [corrects('e7', 'e1')] }))).toBe('written');
    expect(await outcome(store.write({ entries: [corrects('e8', 'not here yet')] }))).toBe('written');
  });

  it('skips entries older than asked for by the time in their ids', async () => {
    const store = await open();
    const old = store.newId();
    const later = Date.now() + 60_000;
    await store.write({ entries: [note(old, 'bench')] });
    expect(await store.entries('bench', later)).toEqual([]);
    expect(await store.entries('bench', Date.now() - 60_000)).toHaveLength(1);
    expect(await store.entries('ben')).toEqual([]);
  });

  it('gives the heads of documents, two when two phones changed one, retired ones too', async () => {
    const store = await open();
    const fork = [cloth('d1', 'r2', ['r1']), cloth('d1', 'r3', ['r1'])];
    const retired = cloth('d2', 'r4', [], { retired: true });
    const newer = [cloth('d3', 'r5'), cloth('d3', 'r6', ['r5'], { v: 9, body: { unheard: 'of' } })];
    await store.write({ revisions: [cloth('d1', 'r1'), ...fork, retired, ...newer] });
    expect((await store.heads('cloth')).map((r) => r.id)).toEqual(['r2', 'r3', 'r4']);
    expect(await store.heads('plan')).toEqual([]);
    expect((await store.revisions('d3')).map((r) => r.id)).toEqual(['r5', 'r6']);
  });

  it('names photos by the hash of their bytes and refuses a wrong name', async () => {
    const store = await open();
    const gelled = await photo('gelled cup');
    await store.write({ photos: [gelled, gelled], entries: [note('e1', 'o1')] });
    expect(await (await store.photo(gelled.record.hash))?.text()).toBe('gelled cup');
    expect(await store.photo('nothing')).toBeUndefined();
    const forged = { ...gelled, blob: new Blob(['gelled cuq']) };
    expect(await outcome(store.write({ photos: [forged], entries: [note('e2', 'o1')] }))).toBe('refused');
    expect(await store.counts()).toMatchObject({ photos: 1, photoBytes: 10, entries: 1 });
  });

  it('says full when the disk is full, also when that hides in an aborted transaction', async () => {
    const store = await open();
    const quota = new DOMException('no space', 'QuotaExceededError');
    const { add } = IDBObjectStore.prototype;
    try {
      IDBObjectStore.prototype.add = () => {
        throw quota;
      };
      expect(await outcome(store.write({ entries: [note('e1', 'o1')] }))).toBe('full');
      IDBObjectStore.prototype.add = () => {
        throw Object.assign(new Error('aborted'), { name: 'AbortError', inner: quota });
      };
      expect(await outcome(store.write({ entries: [note('e1', 'o1')] }))).toBe('full');
    } finally {
      IDBObjectStore.prototype.add = add;
    }
    expect((await store.counts()).entries).toBe(0);
    expect(await outcome(store.write({ entries: [note('e1', 'o1')] }))).toBe('written');
  });

  it('refuses after it was closed', async () => {
    const store = await open();
    await store.close();
    expect(await outcome(store.write({ entries: [note('e1', 'o1')] }))).toBe('closed');
  });

  it('keeps the phone’s own values out of backups', async () => {
    const store = await open();
    await store.setPhoneValue('units', { mass: 'secret ounces' });
    await store.write({ entries: [note('e1', 'o1')] });
    expect(await store.phoneValue('units')).toEqual({ mass: 'secret ounces' });
    expect(await store.phoneValue('never set')).toBeUndefined();
    const text = await backupText(store);
    expect(text).not.toContain('secret');
    expect(text).not.toContain(store.device);
  });

  it('deletes everything when asked to, and a new start is empty', async () => {
    const store = await open();
    await store.write({ entries: [note('e1', 'o1')] });
    await store.close();
    await deleteStore(name);
    const again = await open();
    expect((await again.counts()).entries).toBe(0);
    expect(again.device).not.toBe(store.device);
  });
});
