import fc from 'fast-check';
import { afterEach, expect, it } from 'vitest';
import type { AnyEntry } from '#shared/record/entry.ts';
import type { Revision } from '#shared/record/revision.ts';
import { deleteStore, openStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';
import { buildHeader, entries } from '../record/arbitraries.ts';
import { backupText, check, cloth, state, summarize } from './samples.ts';

const phones = ['tubewright', 'tubewright-demo'] as const;
type PhoneName = (typeof phones)[number];
const opened: Store[] = [];

async function phone(name: PhoneName): Promise<Store> {
  const result = await openStore({ name, summarize: async () => summarize });
  if (!result.ok) throw new Error(result.detail);
  opened.push(result.store);
  return result.store;
}

async function switchedOff(): Promise<void> {
  for (const store of opened.splice(0)) {
    await store.compared;
    await store.close();
  }
  await Promise.all(phones.map((name) => deleteStore(name)));
}
afterEach(switchedOff);

interface Shop {
  entries: AnyEntry[];
  revisions: Revision[];
}

// A document that two phones changed apart, and that one of them settled.
const revisions = [
  cloth('d1', 'r1'),
  cloth('d1', 'r2', ['r1']),
  cloth('d1', 'r3', ['r1'], { device: 'phone-b' }),
  cloth('d1', 'r4', ['r2', 'r3']),
  cloth('d2', 'r5'),
];

/** What three phones hold of one history, each its own part of it. */
const threeShops = fc
  .tuple(entries(), fc.infiniteStream(fc.tuple(fc.boolean(), fc.boolean(), fc.boolean())))
  .map(([all, chosen]) => {
    const shops: Shop[] = [0, 1, 2].map(() => ({ entries: [], revisions: [] }));
    const deal = <R>(records: readonly R[], into: (shop: Shop) => R[]) => {
      for (const record of records) {
        const has = chosen.next().value as boolean[];
        shops.forEach((shop, i) => {
          if (has[i]) into(shop).push(record);
        });
      }
    };
    // No app writes a correction of a correction, and a restore refuses one.
    const corrections = new Set(all.filter((e) => e.corrects !== undefined).map((e) => e.id));
    deal(
      all.filter((e) => e.corrects === undefined || !corrections.has(e.corrects)),
      (shop) => shop.entries,
    );
    deal(revisions, (shop) => shop.revisions);
    return shops as [Shop, Shop, Shop];
  });

async function textOf(shop: Shop): Promise<string> {
  const store = await phone('tubewright-demo');
  await store.write({ headers: [buildHeader], ...shop });
  const text = await backupText(store);
  await switchedOff();
  return text;
}

async function take(store: Store, text: string): Promise<number> {
  const checked = await check(text);
  if (!checked.ok) throw new Error(`${checked.line}: ${checked.detail}`);
  const outcome = await store.restore(checked);
  if (!outcome.ok) throw new Error(outcome.detail);
  return Object.values(outcome.added).reduce((a, b) => a + b, 0);
}

/** What a phone holds that took these in, one after the other, and the backup it would make of it. */
async function after(texts: readonly string[]): Promise<{ holds: string[]; text: string; again: number }> {
  const store = await phone('tubewright');
  for (const text of texts) await take(store, text);
  const holds = await state(store);
  let again = 0;
  for (const text of texts) again += await take(store, text);
  expect(await state(store)).toEqual(holds);
  const text = await backupText(store);
  await switchedOff();
  return { holds, text, again };
}

it('merging is the same in any order and in any grouping, and a second time changes nothing', async () => {
  await fc.assert(
    fc.asyncProperty(threeShops, async (shops) => {
      const [a, b, c] = [await textOf(shops[0]), await textOf(shops[1]), await textOf(shops[2])];
      const ab = await after([a, b]);
      const ba = await after([b, a]);
      expect(ab.holds).toEqual(ba.holds);
      expect(ab.again + ba.again).toBe(0);
      const bc = await after([b, c]);
      const left = await after([ab.text, c]);
      const right = await after([a, bc.text]);
      expect(left.holds).toEqual(right.holds);
    }),
    { numRuns: 6, seed: 20_261_125 },
  );
}, 60_000);
