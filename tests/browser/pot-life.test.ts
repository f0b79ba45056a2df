import { expect, type Page, test } from '@playwright/test';
import { cupOf, type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { heading, loosely, type Phone, phoneOnRealTime, press, sheet, typeOnKeys } from './support/hands.ts';
import { seed } from './support/seed.ts';

const before = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));
const read: Event = { minute: 1, kind: 'surroundings', air: 295.15, resin: 295.15 };

/** Three cups of SLOW, lot 7. */
const header = {
  ...buildHeader,
  clothMass: 0.2,
  resin: { ...buildHeader.resin, lot: '7', largestCup: 0.15 },
};

async function at(page: Page, where: string, events: readonly Event[], own = header): Promise<Phone> {
  await page.clock.install({ time: minutes(30) });
  await page.goto(`./#/mix/build-1${where}`);
  await page.locator('h1').waitFor();
  await seed(page, [own, ...entriesOf('build-1', events)]);
  await expect(page.locator('h1')).not.toHaveText('No such tube');
  return phoneOnRealTime(page);
}

const strip = ({ page }: Phone) => page.getByRole('complementary', { name: 'Running clocks' });

/** Hours and minutes of a clock that reads '1:11:53 left' or '48:45 left', in s */
async function leftOn(phone: Phone): Promise<number> {
  const figure = (await strip(phone).locator('.clock-strip-figure b').first().textContent()) ?? '';
  return figure.split(':').reduce((sum, part) => 60 * sum + Number(part), 0);
}

test('a warmer shop shortens the clock of a cup, and the clock says why', async ({ page }) => {
  const phone = await at(page, '', [
    ...before,
    read,
    {
      minute: 28,
      kind: 'cupStarted',
      cup: 'a',
      number: 1,
      of: 3,
      round: 1,
      resin: 0.1,
      hardener: 0.03,
      holds: 0.15,
    },
    { minute: 29, kind: 'pour', cup: 'a', part: 'resin', mass: 0.1 },
  ]);
  await expect(heading(phone)).toHaveText('SLOW hardener, lot 7');
  await press(phone, 'Hardener going in');
  await expect(strip(phone)).toBeVisible();
  const cool = await leftOn(phone);
  await typeOnKeys(phone, '130');
  await press(phone, /^Hardener is in/);
  await expect(strip(phone)).toContainText(loosely('22 °C, 130 g'));
  await press(phone, 'Read resin and air again');
  await expect(sheet(phone, 'Surroundings now')).toBeVisible();
  await typeOnKeys(phone, '31');
  await press(phone, 'Only these');
  await expect(strip(phone)).toContainText(loosely('31 °C, 130 g'));
  await expect(strip(phone)).toContainText('of the data sheet’s cup');
  // Nine degrees at 55 kJ/mol are a factor of 1.9.
  const warm = await leftOn(phone);
  expect(warm).toBeLessThan(0.6 * cool);
  expect(warm).toBeGreaterThan(0.45 * cool);
});

test('a cup of 3 kg is told that it will run away, and how many cups to mix instead', async ({ page }) => {
  const resin = { ...header.resin, largestCup: 3 };
  const phone = await at(page, '', [...before, read], { ...header, clothMass: 2, resin });
  const main = phone.page.getByRole('main');
  await expect(main).toContainText(/will run away/);
  await expect(main).toContainText(/Mix \d+ cups of/);
  await main.getByRole('button', { name: /Pot life now: how reckoned/ }).tap();
  await expect(sheet(phone, 'Pot life now')).toContainText(loosely('55 kJ/mol, assumed'));
});

test('the planner says when to mix each cup, and plans anew when one took longer', async ({ page }) => {
  const emptied = (minute: number): Event[] => [
    ...before,
    read,
    ...cupOf('a', 1, 2),
    { minute, kind: 'cupEmpty', cup: 'a' },
  ];
  const phone = await at(page, '/times', [...before, read]);
  const main = phone.page.getByRole('main');
  await expect(main).toContainText('Say how fast you work');
  await main.getByLabel('Resin worked in').fill('10');
  await expect(main).toContainText('Mix the next cup at');
  await expect(main).toContainText('cups to come');
  await expect(main.locator('.cup-time')).toHaveCount(3);
  await seed(phone.page, entriesOf('build-1', emptied(29)));
  await phone.page.reload();
  await expect(main).toContainText('At the pace of this tube so far');
  // 130 g in 27 min less 3 of stirring
  await expect(main).toContainText(loosely('5.4 g/min'));
  await expect(main.locator('.cup-time-toCome')).toHaveCount(2);
});
