import { expect, type Page, test } from '@playwright/test';
import { fired, room, tube38 } from '../app/cure-loads.ts';
import { celsius, minutes } from '../app/oven-loads.ts';
import { button, loosely, type Phone, phoneWithOwnClock, press, sheet } from './support/hands.ts';
import { seed } from './support/seed.ts';

async function open(page: Page, records: readonly object[], minute: number): Promise<Phone> {
  await page.clock.install({ time: minutes(minute) });
  await page.goto('./#/oven/oven');
  await page.locator('h1').waitFor();
  await seed(page, records);
  await page.getByText(/^Oven load/).waitFor();
  return phoneWithOwnClock(page);
}

/** ms of the day that a line of the screen says, and how long that is from now, in minutes */
async function saysIn(page: Page, line: RegExp): Promise<number> {
  const text = (await page.getByRole('row', { name: line }).textContent()) ?? '';
  const [, hours = '0', mins = '0'] =
    /in (?:(\d+) h ?)?(\d+)?(?: min)?/.exec(text.replaceAll('\u00a0', ' ')) ?? [];
  return Number(hours) * 60 + Number(mins);
}

// Independent of the app: the rate straight in 1/T through the two points of SLOW (48 h at 25, 3 h at 66 C),
// summed over steps of a tenth of a minute.
const energyOverR = Math.log(48 / 3) / (1 / celsius(25) - 1 / celsius(66));
const perMinute = (degrees: number) =>
  1 / (180 * Math.exp(energyOverR * (1 / celsius(degrees) - 1 / celsius(66))));
function shareOf(read: readonly (readonly [number, number])[]): number {
  let share = 0;
  read.slice(1).forEach(([to, hot], k) => {
    const [from, cold] = read[k] ?? [to, hot];
    const steps = Math.round((to - from) * 10);
    for (let s = 0; s < steps; s += 1) {
      share += (perMinute(cold + ((s + 0.5) / steps) * (hot - cold)) * (to - from)) / steps;
    }
  });
  return share;
}

const held = [
  [0, 23],
  [22, 66],
  [52, 66],
  [82, 66],
] as const;
const warmEnough = { serviceTemperature: celsius(55) };

test('the predicted finish is near what is reckoned by hand, and comes nearer with a hotter reading', async ({
  page,
}) => {
  const phone = await open(page, fired({ read: held, build: warmEnough }), 83);
  const left = (1 - shareOf(held)) / perMinute(66);
  const before = await saysIn(page, /staying at 66/);
  expect(Math.abs(before - (left - 1))).toBeLessThanOrEqual(0.02 * left + 1);
  const onSchedule = await saysIn(page, /on the schedule/);
  expect(Math.abs(onSchedule - before)).toBeLessThanOrEqual(0.03 * left);
  await button(phone, loosely('68 °C')).tap();
  await press(phone, loosely('Log 68 °C'));
  await expect(page.getByRole('row', { name: /staying at 68/ })).toBeVisible();
  const after = await saysIn(page, /staying at 68/);
  const hotter = (1 - shareOf([...held, [83, 68]])) / perMinute(68);
  expect(Math.abs(after - hotter)).toBeLessThanOrEqual(0.02 * hotter + 1);
  expect(after).toBeLessThan(before - 3);
});

test('done is said when the cure time is used up, as reckoned by hand, and not before', async ({ page }) => {
  const up = [
    [0, 23],
    [22, 66],
  ] as const;
  const through = (minute: number) => [
    ...up,
    ...Array.from({ length: Math.ceil((minute - 22) / 30) }, (_, k) => [22 + 30 * k, 66] as const).slice(1),
    [minute, 66] as const,
  ];
  const doneAt = 22 + (1 - shareOf(up)) / perMinute(66);
  await open(page, fired({ read: through(Math.round(doneAt * 0.98)), build: warmEnough }), doneAt * 0.98);
  await expect(page.getByText(/Cure time used up.*: 9[789] %/)).toBeVisible();
  await expect(page.getByText('Done needs three, 2 still missing')).toBeVisible();
  await seed(page, fired({ read: through(Math.round(doneAt * 1.02)), build: warmEnough }));
  await expect(page.getByText(/Cure time used up.*: 10\d %/)).toBeVisible();
  await expect(page.getByText('Done needs three, 1 still missing')).toBeVisible();
  await expect(page.getByText(loosely('66 °C of 55 °C needed'))).toBeVisible();
});

test('a cure at room temperature says that it has stalled, at what heat, and what it needs', async ({
  page,
}) => {
  const days = Array.from({ length: 29 }, (_, k) => [k * 360, 22] as const);
  const build = { serviceTemperature: celsius(45), schedule: room };
  const phone = await open(page, fired({ read: days, build, load: { schedule: room } }), 28 * 360);
  await expect(page.getByText(loosely('Stalled at 71 %'))).toBeVisible();
  await expect(
    page.getByText(loosely('It will go no further at 22 °C; it needs 45 °C for the Tg you want.')),
  ).toBeVisible();
  await expect(page.getByRole('row', { name: /staying at 22/ })).toContainText('never');
  await expect(page.getByText('Done needs three, 3 still missing')).toBeVisible();
  await page.getByText('How is it reckoned?').tap();
  await press(phone, 'Cure time used');
  await expect(sheet(phone, 'Cure time used')).toContainText('ASTM C1074');
  await expect(sheet(phone, 'Cure time used')).toContainText(loosely('48 h at 25 °C'));
});

test('a shop at 5 below freezing is said to get nowhere, and nothing breaks', async ({ page }) => {
  const cold = Array.from({ length: 9 }, (_, k) => [k * 360, -5] as const);
  const build = { serviceTemperature: celsius(50), schedule: room };
  await open(page, fired({ read: cold, build, load: { schedule: room } }), 8 * 360);
  await expect(page.getByText(loosely('it needs 50 °C for the Tg you want'))).toBeVisible();
  await expect(page.getByText(/NaN|Infinity/)).toHaveCount(0);
});

test('with the air read only, the hold waits for three time constants of the mandrel', async ({ page }) => {
  const build = { ...warmEnough, mandrel: tube38 };
  const phone = await open(page, fired({ read: held, by: 'air', build }), 83);
  // 3 x 2700 x 900 x 1.65 mm (1 - 1.65/38.1) / 30 = 384 s
  await expect(page.getByText('the hold counts from 6 min 24 s after the air')).toBeVisible();
  await page.getByText('How is it reckoned?').tap();
  await press(phone, 'Hold counted');
  await expect(sheet(phone, 'Hold counted')).toContainText('2 min 8 s');
});

test('tape that pulls after the film is used up is warned about, and in time it is not', async ({ page }) => {
  await open(page, fired({ read: held, build: warmEnough, cup: 10 }), 83);
  await expect(page.getByText(/The tape began to pull at .* of the resin’s working time used/)).toBeVisible();
  await seed(page, fired({ read: held, build: warmEnough, cup: 75 }));
  await expect(
    page.getByText(/The tape pulled late: \d+ % of the resin’s working time is used/),
  ).toBeVisible();
  await seed(page, fired({ read: held, build: warmEnough, cup: 10, gel: 5 }));
  await expect(page.getByText('The tape pulled late: gel was seen before')).toBeVisible();
});

test('a postcure says how fast and how hot, from what the first cure came to', async ({ page }) => {
  const days = Array.from({ length: 29 }, (_, k) => [k * 360, 22] as const);
  const read = [
    [0, 22],
    [30, 30],
    [60, 37],
  ] as const;
  const records = fired({
    read,
    build: { serviceTemperature: celsius(45) },
    before: { earlier: 15_000, read: days },
  });
  const phone = await open(page, records, 61);
  // Softens at 37 + 15, and no more than 10 above that.
  await expect(page.getByText(loosely('Postcure: no hotter than 62 °C now'))).toBeVisible();
  await expect(page.getByText(loosely('10 °C to 20 °C an hour'))).toBeVisible();
  await expect(page.getByText('Cure time used: 7')).toBeVisible();
  await button(phone, 'Other').tap();
  await page.getByRole('button', { name: '7', exact: true }).tap();
  await page.getByRole('button', { name: '0', exact: true }).tap();
  await press(phone, loosely('Log 70 °C'));
  await expect(page.getByText(loosely('70 °C is more than 10 °C above its Tg'))).toBeVisible();
});
