import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { faultWords } from '#app/phone/data/restore-words.ts';
import type { Store } from '#storage/store.ts';
import { demoShop } from '../../demo/make-shop.ts';
import { anchor } from '../../demo/shop-time.ts';
import { hostile, smallShop } from './hostile-backups.ts';
import { check, checkBytes, cleanUp, open, state } from './samples.ts';

const good = smallShop(demoShop(anchor), anchor);
let store: Store;

beforeAll(async () => {
  store = await open();
  const checked = await check(good);
  if (!checked.ok) throw new Error(checked.detail);
  await store.restore(checked);
});
afterAll(cleanUp);

it('hundreds of hostile backups are refused with a reason a person can read, or merged; what is here stays', async () => {
  const before = await state(store);
  await fc.assert(
    fc.asyncProperty(hostile(good), async ({ bytes }) => {
      const checked = await checkBytes(bytes);
      const outcome = checked.ok ? await store.restore(checked) : checked;
      if (outcome.ok) return;
      expect(faultWords[outcome.reason]).toMatch(/^[A-Z].*\.$/);
      expect(outcome.line).toBeGreaterThan(0);
      expect(outcome.detail).not.toBe('');
    }),
    { numRuns: 400 },
  );
  const after = new Set(await state(store));
  expect(before.filter((line) => !after.has(line))).toEqual([]);
  expect({}).not.toHaveProperty('taken');
});
