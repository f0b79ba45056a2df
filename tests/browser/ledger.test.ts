import { expect, type Page, test } from '@playwright/test';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { seed } from './support/seed.ts';

const main = (page: Page) => page.getByRole('main');
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().tap();
const day = 86_400_000;
const cloth = 'starter-cloth-carbon-plain-193';

const revision = (type: string, doc: string, body: object) => ({
  record: 'revision',
  v: 1,
  type,
  doc,
  id: `${doc}-1`,
  parents: [],
  at: Date.now() - day,
  device: 'phone-1',
  body,
});

const roll = (received: number, more: object = {}) =>
  revision('lot', 'roll-2', {
    name: 'Roll 2',
    of: 'cloth',
    item: cloth,
    received,
    receivedAt: Date.now() - 9 * day,
    ...more,
  });

async function openSeeded(page: Page, records: readonly object[], to: string): Promise<void> {
  await page.goto('./#/settings');
  await expect(page.getByRole('heading', { name: 'This phone' })).toBeVisible();
  await seed(page, records);
  await page.goto(`./#${to}`);
}

test('a structure grows from nothing to grams left, by touch', async ({ page }) => {
  await page.goto('./#/plans');
  await page.getByRole('link', { name: /^Structures/ }).tap();
  await page.getByRole('link', { name: 'New structure' }).tap();
  await press(page, 'Begin the structure');
  await expect(main(page)).toContainText('Give it a name, like Mast set.');
  await page.getByLabel('Name').fill('Mast set');
  await page.getByLabel('Budget for all of it').fill('1 kg');
  await page.waitForTimeout(400);
  await press(page, 'Begin the structure');
  await press(page, 'Add a part');
  await page.getByLabel('Name').fill('Ferrule');
  await page.getByLabel('How many').fill('2');
  await page.getByLabel('Budget of one').fill('80');
  await page.getByLabel('One, weighed').fill('90');
  await page.getByLabel('Its center along').fill('2 m');
  await page.waitForTimeout(400);
  await press(page, 'Add the part');
  await expect(page.locator('.big-figure')).toContainText(/820\sg/);
  await press(page, 'Add a part');
  await page.getByLabel('Name').fill('Halyard');
  await page.getByLabel('One, planned').fill('120');
  await page.waitForTimeout(400);
  await press(page, 'Add the part');
  await expect(page.locator('.big-figure')).toContainText(/left of 1000\sg\s*700\sg/);
  await expect(main(page)).toContainText(/Ferrule by 20\sg/);
  await expect(main(page)).toContainText(/2000\smm/);
  await expect(main(page)).toContainText('not in the balance: Halyard');
  await page.reload();
  await expect(page.locator('.big-figure')).toContainText(/700\sg/);
  await press(page, /^Units/);
  await expect(page.locator('.big-figure')).toContainText(/24.7\soz/);
});

test('a build that starts with a short roll says so, takes from it, and a count puts it right', async ({
  page,
}) => {
  await openSeeded(page, [roll(0.8)], '/start');
  await page.getByLabel('Name').fill('Boom');
  await page.getByLabel('Cloth', { exact: true }).selectOption(cloth);
  const grams = Math.round(1.1 * 1000 * starterCloths[cloth].arealWeight);
  await page.getByLabel('Cloth on the scale').fill(String(grams));
  await expect(main(page)).toContainText(/Roll 2 is short by 0\.30\sm²/);
  await expect(main(page)).toContainText(/It has 0\.80\sm², this takes 1\.10\sm²/);
  await press(page, /^Start Boom no\. 1/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mandrel prep');

  await page.goto('./#/lots');
  await page.getByRole('link', { name: /Roll 2/ }).tap();
  await expect(main(page)).toContainText(/0\.30\sm² more was taken than it held/);
  await expect(page.getByRole('list', { name: 'Taken by' })).toContainText(/Boom no\. 1/);
  await press(page, 'Count what is left');
  for (const key of ['1', '.', '5']) {
    await page.locator('.keypad').getByRole('button', { name: key, exact: true }).tap();
  }
  await press(page, /The roll holds 1\.50/);
  await expect(page.locator('.big-figure')).toContainText(/1\.50\sm²/);
  await page.reload();
  await expect(page.locator('.big-figure')).toContainText(/1\.50\sm²/);
});

test('a roll is put on the shelf, opened and used up', async ({ page }) => {
  await page.goto(`./#/shelf/cloth/${cloth}`);
  await page.getByRole('link', { name: 'Add a roll' }).tap();
  await press(page, 'Put it on the shelf');
  await expect(main(page)).toContainText('Write what its label says, like Roll 2.');
  await page.getByLabel('On its label').fill('Roll 7');
  await page.getByLabel('How much came').fill('6');
  await page.getByLabel('Good until').fill('2020-01-31');
  await page.waitForTimeout(400);
  await press(page, 'Put it on the shelf');
  await expect(main(page)).toContainText('Past the date on its label, Jan 31, 2020.');
  await press(page, 'Opened now');
  await expect(main(page)).toContainText('Today');
  await press(page, 'Used up');
  await page.goto('./#/lots');
  await expect(main(page)).toContainText('Used up (1)');
});
