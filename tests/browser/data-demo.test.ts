import { expect, type Page, test } from '@playwright/test';
import { buildHeader } from '../record/arbitraries.ts';
import { holdDown, phoneOnRealTime } from './support/hands.ts';
import { seed } from './support/seed.ts';

// A thousand lines are written to disk before the page starts anew.
const loading = { timeout: 20_000 };

/** Everything in the builder's own database, and the names of all there are. */
async function ownRecord(page: Page): Promise<{ names: string[]; all: string }> {
  return page.evaluate(async () => {
    const names = (await indexedDB.databases()).map((d) => d.name ?? '').sort();
    const opened = indexedDB.open('tubewright');
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      opened.onsuccess = () => resolve(opened.result);
      opened.onerror = () => reject(opened.error);
    });
    const stores = ['headers', 'entries', 'revisions', 'photos'];
    const reading = database.transaction(stores, 'readonly');
    const lists = stores.map(
      (store) =>
        new Promise((resolve) => {
          const asked = reading.objectStore(store).getAll();
          asked.onsuccess = () => resolve(asked.result);
        }),
    );
    const all = JSON.stringify(await Promise.all(lists));
    database.close();
    return { names, all };
  });
}

test('the demo shop opens from the first screen, with a cure going on now', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByText('Demo shop, not your record')).toBeVisible(loading);
  await expect(page.getByRole('heading', { name: 'On the bench' })).toBeVisible();
  const bench = page.getByRole('list', { name: 'On the bench now' });
  await expect(bench).toContainText('Boom no. 2');
  await expect(bench).toContainText('Glue on the boom end plugs');
  await expect(bench).not.toContainText('days ago');
});

test('the demo shop comes and goes without a byte of the own record changed', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [{ ...buildHeader, name: 'Own tube' }]);
  await expect(page.getByText('Own tube no. 1').first()).toBeVisible();
  // The starter shelf comes after the first screen.
  await expect.poll(async () => (await ownRecord(page)).all).toContain('starter-tape');
  const before = await ownRecord(page);
  expect(before.names).toEqual(['tubewright']);

  await page.goto('./#/data');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByRole('main').getByText('Boom no. 2').first()).toBeVisible(loading);
  await expect(page.getByText('Own tube')).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('main').getByText('Boom no. 2').first()).toBeVisible();
  expect((await ownRecord(page)).all).toBe(before.all);

  await page.getByRole('link', { name: 'Leave' }).tap();
  await page.getByRole('button', { name: /leave the demo shop/ }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Demo shop');
  await holdDown(phoneOnRealTime(page), /leave the demo shop/);
  await expect(page.getByText('Own tube no. 1').first()).toBeVisible();
  const after = await ownRecord(page);
  expect(after).toEqual(before);
});
