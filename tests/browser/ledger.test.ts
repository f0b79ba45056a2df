import { expect, type Page, test } from '@playwright/test';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { type Event, entriesOf, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { seed } from './support/seed.ts';

const main = (page: Page) => page.getByRole('main');
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().tap();
const day = 86_400_000;
const stagesBefore = (stage: string): Event[] => {
  const at = buildHeader.route.findIndex((s) => s.stage === stage);
  return buildHeader.route.slice(0, at).flatMap((s, i) => ticksOf(s.stage, i));
};
const resin = 'starter-resin-laminating-slow';
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
  await page.getByRole('button', { name: 'Write a new structure' }).tap();
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

test('a can turned to during the mix, and a second roll, give what they gave', async ({ page }) => {
  const lot = (doc: string, name: string, of: string, item: string, received: number) => ({
    ...roll(received, { name, of, item }),
    id: `${doc}-1`,
    doc,
  });
  const from = (of: 'cloth' | 'resin', doc: string, label: string, item: string) =>
    ({ minute: 0, kind: 'lotDrawn', of, lot: doc, label, item }) as const;
  const takes = { cloths: [{ item: cloth, area: 0.67 }], resin };
  const events = [
    from('cloth', 'roll-2', 'Roll 2', cloth),
    from('resin', 'can-1', 'Can 1', resin),
    ...stagesBefore('mix'),
  ];
  await openSeeded(
    page,
    [
      lot('roll-2', 'Roll 2', 'cloth', cloth, 0.5),
      lot('roll-3', 'Roll 3', 'cloth', cloth, 5),
      lot('can-1', 'Can 1', 'resin', resin, 1),
      lot('can-2', 'Can 2', 'resin', resin, 1),
      { ...buildHeader, takes },
      ...entriesOf('build-1', events),
    ],
    '/build/build-1',
  );
  await page.getByRole('link', { name: 'From Can 1: took another?' }).tap();
  await page.getByLabel('Resin from').selectOption('can-2');
  await page.getByLabel('Cloth from').selectOption('roll-3');
  const asked = page.getByRole('dialog', { name: 'How much of it is from Roll 3?' });
  await expect(asked).toContainText(/from Roll 2, which is short by 0\.17\sm²/);
  await page.waitForTimeout(400);
  await asked.getByRole('button', { name: 'Only this much' }).tap();
  await expect(main(page)).toContainText(/From Roll 2, and 0\.17\sm² of Roll 3/);
  await press(page, 'Back to the route');
  await expect(page.getByRole('link', { name: 'From Can 2: took another?' })).toBeVisible();
  await page.goto('./#/lots');
  await expect(page.getByRole('link', { name: /Roll 3/ })).toContainText(/4\.83\sm²/);
});

test('a good tube is put into the part it is for, counts there, and comes out again', async ({ page }) => {
  await page.goto('./');
  await press(page, 'Load the demo shop');
  await expect(page.getByText('Demo shop, not your record')).toBeVisible({ timeout: 20_000 });
  await page.goto('./#/ledger/demo-structure-spars');
  const sprit = page.getByRole('link', { name: /^Sprit/ });
  await expect(sprit).toContainText('by plan');
  await sprit.tap();
  await press(page, /^Put in Sprit no\. 2/);
  await expect(page.getByRole('row', { name: /By plan when they were started \d+\sg/ })).toBeVisible();
  await page.getByRole('link', { name: 'Canoe spar set' }).tap();
  await expect(sprit).toContainText('weighed');
  await sprit.tap();
  await expect(page.getByRole('button', { name: /^Put in/ })).toHaveCount(0);
  await press(page, /^Take out Sprit no\. 2/);
  await expect(page.getByRole('button', { name: /^Put in Sprit no\. 2/ })).toBeVisible();

  await page.goto('./#/plan/demo-plan-lower-mast/wall');
  await expect(page.getByRole('row', { name: /Of Canoe spar set, 1900\sg, with 1 of it \d/ })).toBeVisible();
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
