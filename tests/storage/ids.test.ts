import { deleteDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Ids, idFloor, idTime } from '#storage/ids.ts';
import { cleanUp, name, note, open } from './samples.ts';

afterEach(async () => {
  vi.restoreAllMocks();
  await cleanUp();
});

const sorted = (ids: string[]) => ids.every((id, i) => i === 0 || (ids[i - 1] ?? '') < id);

describe('ids', () => {
  it('sort in the order they were made, inside one millisecond and when the clock is set back', () => {
    const times = [
      1_700_000_000_000, 1_700_000_000_000, 1_700_000_000_001, 1_600_000_000_000, 5, 1_700_000_000_002,
    ];
    let i = 0;
    const ids = new Ids(() => times[i++] ?? 1_700_000_000_002);
    expect(sorted(Array.from({ length: 5000 }, () => ids.next()))).toBe(true);
  });

  it('carry the time they were made, and every id of a time is at or above its floor', () => {
    const ids = new Ids(() => 1_700_000_000_000);
    const id = ids.next();
    expect(idTime(id)).toBe(1_700_000_000_000);
    expect(idFloor(1_700_000_000_000) < id).toBe(true);
    expect(idFloor(1_700_000_000_001) > id).toBe(true);
    expect(idTime('not an id')).toBe(0);
    expect(idFloor(-1)).toBe(idFloor(0));
  });

  it('stay above the last one written after a restart with the clock set back a year', async () => {
    const store = await open();
    const before = store.newId();
    await store.write({ entries: [note(before, 'o1')] });
    await store.close();
    const yearAgo = Date.now() - 365 * 24 * 3600 * 1000;
    vi.spyOn(Date, 'now').mockReturnValue(yearAgo);
    const again = await open();
    expect(again.device).toBe(store.device);
    expect(sorted([before, again.newId(), again.newId()])).toBe(true);
  });

  it('stay above the last one written when the database is gone too', async () => {
    const store = await open();
    const before = store.newId();
    await store.write({ entries: [note(before, 'o1')] });
    await store.close();
    await deleteDB(name);
    vi.spyOn(Date, 'now').mockReturnValue(Date.now() - 365 * 24 * 3600 * 1000);
    expect((await open()).newId() > before).toBe(true);
  });

  it('stay above what another tab wrote', async () => {
    const [one, two] = [await open(), await open()];
    const heard = new Promise((resolve) => two.onOthersWrote(resolve));
    const far = Date.now() + 1000;
    vi.spyOn(Date, 'now').mockReturnValueOnce(far);
    const id = one.newId();
    await one.write({ entries: [note(id, 'o1')] });
    expect(await heard).toEqual(['o1']);
    expect(two.newId() > id).toBe(true);
  });
});
