import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { entriesOf, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { drawnCode, phoneThatSees } from './support/camera.ts';
import { heading, phoneOnRealTime, press } from './support/hands.ts';
import { seed } from './support/seed.ts';

test.use({ actionTimeout: 8000 });

const events = [
  ...ticksOf('mandrelPrep', 3),
  { minute: 5, kind: 'weight', what: 'cutCloth', mass: 0.131 } as const,
  { minute: 9, kind: 'note', text: 'Seam on the aft side' } as const,
];
const made = entriesOf(buildHeader.id, events);

test('a tube goes to another phone through its camera alone, and a second time changes nothing', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(120_000);
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [buildHeader, ...made]);
  const giver = phoneOnRealTime(page);
  await page.goto(`./#/hand/build/${buildHeader.id}`);
  await press(giver, 'Show it as codes for a camera');
  await press(giver, 'Hold still');
  const count = Number(/of (\d+)/.exec((await page.locator('.codes-count').textContent()) ?? '')?.[1]);
  expect(count).toBeGreaterThan(3);
  const codes: Awaited<ReturnType<typeof drawnCode>>[] = [];
  for (let i = 0; i < count; i++) {
    codes.push(await drawnCode(page));
    await press(giver, 'The one before');
  }
  expect(new Set(codes.map((c) => c.path)).size).toBe(count);

  const { page: other, context } = await phoneThatSees(codes, baseURL ?? '');
  const taker = phoneOnRealTime(other);
  const take = async () => {
    await other.goto('./#/data/take');
    await expect(heading(taker)).toHaveText('Restore a backup', { timeout: 60_000 });
    await press(taker, 'Merge it in');
  };
  await take();
  await expect(other.getByText(`${made.length + 1} records added`)).toBeVisible();
  await other.goto(`./#/record/build/${buildHeader.id}`);
  await expect(other.getByRole('region', { name: 'Time line' })).toContainText('Seam on the aft side');
  await take();
  await expect(other.getByText('Nothing was missing')).toBeVisible();
  await context.close();
});

test('a plan goes as a file with all that it is made with, and nothing else', async ({ page }, info) => {
  await page.goto('./#/data');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByText('Demo shop, not your record')).toBeVisible({ timeout: 20_000 });
  await page.goto('./#/plans');
  await page.getByRole('link', { name: /^Lower mast/ }).tap();
  await page.getByRole('link', { name: /To another phone/ }).tap();
  const download = page.waitForEvent('download');
  await press(phoneOnRealTime(page), 'Save the file');
  const path = info.outputPath('plan.txt');
  await (await download).saveAs(path);
  const lines = (await readFile(path, 'utf8')).trimEnd().split('\n').slice(1, -1);
  const records = lines.map((line) => JSON.parse(line) as { record: string; type?: string });
  expect(new Set(records.map((r) => r.record))).toEqual(new Set(['revision']));
  expect(new Set(records.map((r) => r.type))).toEqual(
    new Set(['plan', 'cloth', 'resin', 'release', 'tape', 'mandrel', 'checklist']),
  );
});

test('without a camera it says what to do instead', async ({ page }) => {
  await page.goto('./#/data/take');
  await expect(page.getByRole('alert')).toContainText('Have the other phone send the file');
});
