import { afterEach, describe, expect, it } from 'vitest';
import { openStore } from '#storage/open-store.ts';
import { cleanUp, name, note, open, ovenLoad, summarize } from './samples.ts';

afterEach(cleanUp);

/** Opens it anew and tells what came with the opening. */
async function atOpening(benchSince?: number) {
  const opened = await openStore({
    name,
    summarize: async () => summarize,
    first: { benchSince, phoneKey: 'settings' },
  });
  if (!opened.ok) throw new Error(opened.detail);
  await opened.store.close();
  const { journals, ...rest } = opened.first;
  const held = journals.map(({ subject, header, entries }) => [
    subject,
    header?.ok,
    entries.map((e) => e.ok && e.value.id),
  ]);
  return { ...rest, journals: held };
}

describe('what the first screen shows comes with the opening', () => {
  it('the bench and what is not closed, whole, and nothing that is closed', async () => {
    const store = await open();
    await store.write({
      headers: [ovenLoad('o1', 5), ovenLoad('o2', 6), ovenLoad('o3', 7)],
      entries: [note('e1', 'o1'), note('e2', 'o1'), note('e3', 'bench'), note('e4', 'o3')],
    });
    await store.write({ entries: [note('e5', 'o2', 'done', { kind: 'closed' })] });
    // One of the three has its summary, the others do not.
    await store.summary('o3');
    await store.setPhoneValue('settings', { units: 'metric' });
    await store.close();
    expect(await atOpening()).toEqual({
      journals: [
        ['bench', undefined, ['e3']],
        ['o3', true, ['e4']],
        ['o1', true, ['e1', 'e2']],
      ],
      everBuilt: false,
      phoneValue: { units: 'metric' },
    });
  });

  it('the same when very many were dropped, which are made first', async () => {
    const store = await open();
    const many = Array.from({ length: 30 }, (_, i) => ovenLoad(`m${String(i).padStart(2, '0')}`, 1000 + i));
    await store.write({ headers: many, entries: [note('c1', 'm03', 'done', { kind: 'closed' })] });
    await store.close();
    const { journals } = await atOpening();
    const ids = many.map((load) => load.id).filter((id) => id !== 'm03');
    expect(journals.map(([subject]) => subject)).toEqual(['bench', ...ids]);
  });
});
