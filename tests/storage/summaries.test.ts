import { openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import type { Summarize } from '#storage/store.ts';
import { cleanUp, name, note, open, ovenLoad, summarize } from './samples.ts';

afterEach(cleanUp);

/** Tells which subjects were folded. */
function counting(): { fold: Summarize; folded: string[] } {
  const folded: string[] = [];
  return {
    folded,
    fold: (header, entries) => {
      folded.push(header.id);
      return summarize(header, entries);
    },
  };
}

const loads = Array.from({ length: 23 }, (_, i) => ovenLoad(`o${i}`, 1000 + Math.floor(i / 2)));

describe('summaries', () => {
  it('come newest first, a page at a time, each once', async () => {
    const store = await open();
    await store.write({ headers: loads });
    const seen: string[] = [];
    let after: string | undefined;
    let pages = 0;
    do {
      const page = await store.summaries({ of: 'ovenLoad', limit: 5, ...(after && { after }) });
      seen.push(...page.summaries.map((s) => s.subject));
      after = page.next;
      pages += 1;
    } while (after);
    expect(pages).toBe(5);
    const expected = [...loads].sort((a, b) => b.startedAt - a.startedAt || (a.id < b.id ? 1 : -1));
    expect(seen).toEqual(expected.map((h) => h.id));
    expect(await store.summaries({ of: 'build', limit: 5 })).toEqual({ summaries: [] });
  });

  it('are folded for the page only, and once', async () => {
    const { fold, folded } = counting();
    const store = await open(fold);
    await store.write({ headers: loads });
    await store.summaries({ of: 'ovenLoad', limit: 5 });
    await store.summaries({ of: 'ovenLoad', limit: 5 });
    expect(folded).toHaveLength(5);
  });

  it('come all at once too, each once, and only what is missing is folded', async () => {
    const { fold, folded } = counting();
    const store = await open(fold);
    await store.write({ headers: loads });
    await store.summaries({ of: 'ovenLoad', limit: 5 });
    await store.summary('o3');
    folded.length = 0;
    const seen: string[] = [];
    await store.eachSummary((slice) => seen.push(...slice.map((s) => s.subject)));
    expect([...seen].sort()).toEqual(loads.map((h) => h.id).sort());
    expect(folded).toHaveLength(loads.length - 6);
    expect(folded).not.toContain('o3');
  });

  it('are made again after an entry, and only the one it belongs to', async () => {
    const { fold, folded } = counting();
    const store = await open(fold);
    await store.write({ headers: loads });
    await store.summaries({ of: 'ovenLoad', limit: 50 });
    folded.length = 0;
    await store.write({ entries: [note('e1', 'o3'), note('e2', 'bench')] });
    expect(await store.summary('o3')).toMatchObject({ readings: 1 });
    await store.summaries({ of: 'ovenLoad', limit: 50 });
    expect(folded).toEqual(['o3']);
  });

  it('made by another fold are made anew', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5)], entries: [note('e1', 'o1')] });
    const made = await store.summary('o1');
    const database = await openDB(name);
    await database.put('summaries', { ...made, foldVersion: 0, readings: 77 });
    database.close();
    expect(await store.summary('o1')).toEqual(made);
  });

  it('never miss an entry that was written while they were folded', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5)] });
    for (let i = 0; i < 20; i++) {
      const [read] = await Promise.all([
        store.summary('o1'),
        store.write({ entries: [note(`e${i}`, 'o1')] }),
      ]);
      expect(read).toBeDefined();
      expect(await store.summary('o1')).toMatchObject({ readings: i + 1 });
    }
  });

  it('tell what is open, after a write too', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5), ovenLoad('o2', 6)], entries: [note('e0', 'lost')] });
    expect(await store.openSubjects()).toEqual(['o1', 'o2']);
    await store.write({ entries: [note('e1', 'o1', 'done', { kind: 'closed' })] });
    expect(await store.openSubjects()).toEqual(['o2']);
    expect(await store.summary('lost')).toBeUndefined();
  });

  it('are made once and for all at the opening when very many were dropped', async () => {
    const { fold, folded } = counting();
    const store = await open(fold);
    const many = Array.from({ length: 30 }, (_, i) => ovenLoad(`m${i}`, 1000 + i));
    await store.write({ headers: many, entries: [note('c1', 'm3', 'done', { kind: 'closed' })] });
    expect(await store.openSubjects()).toHaveLength(29);
    expect(folded).toHaveLength(30);
    await store.openSubjects();
    expect(folded).toHaveLength(30);
  });

  it('of the few on a bench are not made for its first screen', async () => {
    const { fold, folded } = counting();
    const store = await open(fold);
    await store.write({ headers: [ovenLoad('o1', 5)] });
    expect(await store.openSubjects()).toEqual(['o1']);
    expect(folded).toEqual([]);
  });

  it('leave out a header of a newer version, which is kept', async () => {
    const store = await open();
    await store.write({ headers: [ovenLoad('o1', 5), ovenLoad('o2', 6, { v: 99, schedule: 'new' })] });
    const { summaries } = await store.summaries({ of: 'ovenLoad', limit: 5 });
    expect(summaries.map((s) => s.subject)).toEqual(['o1']);
    expect((await store.header('o2'))?.ok).toBe(false);
    expect(await store.counts()).toMatchObject({ ovenLoads: 2, unreadable: 1 });
  });
});
