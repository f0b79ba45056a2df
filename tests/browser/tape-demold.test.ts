import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { buildHeader, celsius, entries, lit, loadHeader, minutes } from '../app/oven-loads.ts';
import { pieceOf, shape, wallOf } from '../app/wall-of.ts';
import {
  button,
  follow,
  heading,
  loosely,
  type Phone,
  phoneWithOwnClock,
  press,
  typeOnKeys,
} from './support/hands.ts';
import { seed } from './support/seed.ts';

/** A lower mast on a taper, 50.8 to 30 mm, of carbon on an aluminum mandrel. */
const body = {
  ...wallOf(
    [
      pieceOf(
        shape([
          [0, 3],
          [2.4, 3],
        ]),
      ),
    ],
    { tape: 'starter-tape-polyester-25', mandrel: 'starter-mandrel-aluminum-50' },
  ),
};
body.wall.mandrel = shape([
  [0, 0.0508],
  [2.5, 0.03],
]);
const plan = {
  record: 'revision',
  v: 1,
  id: 'plan-1',
  doc: 'mast',
  type: 'plan',
  parents: [],
  at: minutes(-500),
  device: 'phone',
  body,
} as const;
const build = buildHeader({ id: 'boom', plan: plan as never, schedule: loadHeader.schedule });

const join = {
  kind: 'joinedOvenLoad',
  build: 'boom',
  ovenLoad: 'oven',
  round: 1,
  channel: 'boom',
  happenedAt: lit,
};
const oven = (readings: readonly (readonly [number, number])[], stages: readonly object[] = []) => [
  build,
  ...entries('boom', [
    join,
    { kind: 'check', what: 'gel', outcome: 'gelled', happenedAt: minutes(25) },
  ] as never),
  { ...loadHeader, channels: loadHeader.channels.slice(0, 2) },
  ...entries('oven', [
    { kind: 'ovenStage', stage: 'lit', happenedAt: lit },
    join,
    ...readings.map(([at, degrees]) => ({
      kind: 'reading',
      channel: 'boom',
      temperature: celsius(degrees),
      happenedAt: minutes(at),
    })),
    ...stages,
  ] as never),
];
const hot = [
  [0, 23],
  [22, 66],
  [210, 66],
] as const;

async function open(page: Page, hash: string, records: readonly object[], minute: number): Promise<Phone> {
  await page.clock.install({ time: minutes(minute) });
  await page.goto('./');
  await page.locator('h1').waitFor();
  await seed(page, [plan, ...records]);
  await page.goto(`./#${hash}`);
  await page.locator('h1').waitFor();
  return phoneWithOwnClock(page);
}
const noViolations = async (page: Page) =>
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

test('a plan leads to its tape: meters and rolls, more for more overlap, and how it was reckoned', async ({
  page,
}) => {
  const phone = await open(page, '/plan/mast', [], 0);
  await page.getByRole('link', { name: /^Tape/ }).tap();
  await expect(heading(phone)).toHaveText('Shrink tape');
  const big = page.locator('.big-figure-number');
  // Mean diameter outside about 42.7 mm, 2 passes of 192 turns, a tenth more: 56 to 58 m.
  const half = Number(await big.textContent());
  expect(half).toBeGreaterThanOrEqual(56);
  expect(half).toBeLessThanOrEqual(58);
  await expect(page.getByText(loosely('2 rolls of 50 m'))).toBeVisible();
  await expect(page.getByText('Wound in the same rotation as the cloth was rolled')).toBeVisible();
  await expect(page.getByText(/at the thin end/)).toBeVisible();
  await press(phone, 'Two thirds');
  expect(Number(await big.textContent()) / half).toBeCloseTo(1.5, 1);
  await press(phone, 'One');
  expect(Number(await big.textContent()) / half).toBeCloseTo(0.75, 1);
  await noViolations(page);
  await press(phone, /^Tape to have ready: how reckoned/);
  await expect(page.getByRole('dialog')).toContainText('On the tube');
  await press(phone, 'Close');
  await press(phone, 'Back to the plan');
  await expect(heading(phone)).toHaveText('Lower mast');
});

test('a hot tube says below what to wait for, a cold one that it is loose, and keys take a thermometer', async ({
  page,
}) => {
  const off = { kind: 'ovenStage', stage: 'off', happenedAt: minutes(212) };
  const phone = await open(page, '/oven/oven', oven(hot, [off]), 215);
  await follow(phone, /^Is Boom no. 2 loose yet\?$/);
  // Set at 66 C; 3e-4 over (23.6 - 4.1)e-6 is 15.4 C of cooling.
  await expect(heading(phone)).toHaveText(loosely('Wait until it is below 51 °C'));
  await expect(page.getByText(/Gel was seen at .* the part read/)).toBeVisible();
  await noViolations(page);
  await press(phone, 'The mandrel reads something else');
  await typeOnKeys(phone, '666');
  await expect(page.getByRole('alert')).toContainText(loosely('300 °C'));
  await expect(page.locator('.keyed .big-figure-number')).toHaveText('666');
  for (let i = 0; i < 3; i += 1) await button(phone, 'Erase last figure').tap();
  await typeOnKeys(phone, '22');
  await press(phone, loosely('It reads 22 °C'));
  await expect(heading(phone)).toHaveText('It is loose: twist, then pull');
  await expect(page.getByText(/Room on the diameter at 22/)).toBeVisible();
});

test('a tube that was read cold is loose without a word typed, reached from its demold step', async ({
  page,
}) => {
  const phone = await open(page, '/build/boom/demold-1', oven([...hot, [300, 24]]), 301);
  await follow(phone, 'Is it loose yet?');
  await expect(heading(phone)).toHaveText('It is loose: twist, then pull');
  await press(phone, 'Back to the tube');
  await expect(page.getByText(/Boom no. 2 · stage/)).toBeVisible();
});

test('a tube whose plan names no mandrel asks what it is made of', async ({ page }) => {
  const bare = buildHeader({ id: 'boom', mandrelDiameter: 0.0381 });
  const phone = await open(page, '/demold/boom', [bare], 0);
  await expect(heading(phone)).toHaveText('Is it loose yet?');
  await page.getByLabel('The mandrel is made of').selectOption('foam');
  await expect(heading(phone)).toHaveText('How this mandrel grows is not known');
  await page.getByLabel('The mandrel is made of').selectOption('steel');
  await expect(heading(phone)).toHaveText(/loose|below/);
});
