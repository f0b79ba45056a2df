import { expect, type Page, test } from '@playwright/test';
import { entriesOf, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import {
  expectBigFigure,
  expectSaid,
  follow,
  heading,
  loosely,
  phoneOnRealTime,
  press,
} from './support/hands.ts';
import { pour, stepsOf, tickLine } from './support/job.ts';
import { seed } from './support/seed.ts';

test.use({ actionTimeout: 8000 });

const dry = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));
const route = `./#/build/${buildHeader.id}`;
const step = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });

async function twoTabs(page: Page, events: Parameters<typeof entriesOf>[1] = []) {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [buildHeader, ...entriesOf(buildHeader.id, events)]);
  const second = await page.context().newPage();
  const tabs = [phoneOnRealTime(page), phoneOnRealTime(second)] as const;
  for (const { page: tab } of tabs) {
    await tab.goto(route);
    await expect(tab.getByRole('heading', { level: 1 })).toBeVisible();
  }
  return tabs;
}

test('two tabs write to one build, each shows what the other wrote, and a reload has all of it once', async ({
  page,
}) => {
  const [one, two] = await twoTabs(page);
  await tickLine(one, 'Mandrel picked');
  await expect(step(two.page, /^Mandrel picked/)).toBeChecked();
  await tickLine(two, 'Rolled on the bench');
  await expect(step(one.page, /^Rolled on the bench/)).toBeChecked();
  // Both at once, as far as two thumbs can.
  await Promise.all([tickLine(one, 'Edges deburred'), tickLine(two, 'Scratches filled')]);
  for (const { page: tab } of [one, two]) {
    await expect(tab.getByRole('checkbox', { checked: true })).toHaveCount(4);
    await tab.goto(`./#/record/build/${buildHeader.id}`);
    await expect(tab.getByRole('region', { name: 'Time line' }).getByRole('listitem')).toHaveCount(4);
  }
  await page.reload();
  await expect(page.getByRole('region', { name: 'Time line' }).getByRole('listitem')).toHaveCount(4);
});

test('a cup weighed out in one tab goes on in the other, with its clock', async ({ page }) => {
  const [one, two] = await twoTabs(page, dry);
  for (const { page: tab } of [one, two]) await tab.goto(`./#/mix/${buildHeader.id}`);
  await press(one, 'Tare cup 1 and start');
  await expect(heading(two)).toHaveText('Pour resin to');
  await pour(one, '80', loosely('Resin is in: 80.0 g'));
  await press(two, 'Hardener going in');
  await expectBigFigure(one, '104.0 g');
  await expect(one.page.getByRole('complementary', { name: 'Running clocks' })).toContainText(/left/);
});

test('a tube started in one tab stands on the bench of the other', async ({ page }) => {
  const [one, two] = await twoTabs(page);
  await follow(two, 'Bench');
  await follow(one, 'Bench');
  await follow(one, 'Start a tube');
  await one.page.getByLabel('Name').fill('Sprit');
  await one.page.getByLabel('Cloth on the scale').fill('80');
  await press(one, 'Start Sprit no. 1');
  await expect(two.page.getByRole('list', { name: 'On the bench now' })).toContainText('Sprit no. 1');
});

test('what was undone in one tab is undone in the other', async ({ page }) => {
  const [one, two] = await twoTabs(page);
  await tickLine(one, 'Mandrel picked');
  await expect(step(two.page, /^Mandrel picked/)).toBeChecked();
  await press(one, 'Undo');
  await expect(step(two.page, /^Mandrel picked/)).not.toBeChecked();
  await press(two, 'Mandrel picked, diameter measured');
  await expectSaid(two, 'Ticked: Mandrel picked, diameter measured');
  await expect(step(one.page, /^Mandrel picked/)).toBeChecked();
});

test('five tabs tick at once, each line is written once, and every tab comes to show all of them', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const [one, two] = await twoTabs(page);
  const more = await Promise.all([1, 2, 3].map(() => page.context().newPage()));
  for (const tab of more) {
    await tab.goto(route);
    await expect(tab.getByRole('heading', { level: 1 })).toBeVisible();
  }
  const tabs = [one, two, ...more.map(phoneOnRealTime)];
  const steps = stepsOf('mandrelPrep').slice(0, tabs.length);
  await Promise.all(tabs.map((tab, i) => tickLine(tab, steps[i] ?? '')));
  for (const { page: tab } of tabs) {
    await expect(tab.getByRole('checkbox', { checked: true })).toHaveCount(steps.length);
    await expect(tab.getByRole('region', { name: 'Notices' })).not.toContainText('Not saved');
  }
  await page.goto(`./#/record/build/${buildHeader.id}`);
  await page.reload();
  await expect(page.getByRole('region', { name: 'Time line' }).getByRole('listitem')).toHaveCount(
    steps.length,
  );
});
