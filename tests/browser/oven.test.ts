import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { buildHeader, celsius, entries, lit, loadHeader, minutes } from '../app/oven-loads.ts';
import {
  button,
  follow,
  heading,
  holdDown,
  loosely,
  type Phone,
  phoneWithOwnClock,
  press,
  sheet,
  typeOnKeys,
} from './support/hands.ts';
import { seed } from './support/seed.ts';

const route = buildHeader().route;
const boom = buildHeader({ schedule: loadHeader.schedule });
/** The boom up to its tape, ready for the oven. */
const tapedDrafts = route
  .slice(
    0,
    route.findIndex((s) => s.stage === 'cure'),
  )
  .flatMap((s) =>
    s.steps.map((step) => ({ kind: 'tick', step: step.id, round: 1, happenedAt: minutes(-60) })),
  );
const taped = [boom, ...entries('boom', tapedDrafts as never)];

const join = {
  kind: 'joinedOvenLoad',
  build: 'boom',
  ovenLoad: 'oven',
  round: 1,
  channel: 'boom',
  happenedAt: lit,
};
const burning = (readings: readonly (readonly [number, number])[]) => [
  ...taped,
  ...entries('boom', [join] as never),
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
  ] as never),
];
const held = [
  [0, 23],
  [22, 66],
  [52, 66],
  [82, 66],
  [112, 66],
  [142, 66],
  [172, 66],
  [202, 66],
] as const;

async function open(page: Page, hash: string, records: readonly object[], minute: number): Promise<Phone> {
  await page.clock.install({ time: minutes(minute) });
  await page.goto(`./#${hash}`);
  await page.locator('h1').waitFor();
  await seed(page, records);
  await page.locator('h1').waitFor();
  return phoneWithOwnClock(page);
}

const chip = (phone: Phone, degrees: number) => button(phone, loosely(`${degrees} °C`));
const readings = ({ page }: Phone) =>
  page.getByRole('list', { name: 'Readings, newest first' }).getByRole('link');
const noViolations = async (page: Page) =>
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

test('an oven load with no tube is refused in a sentence', async ({ page }) => {
  const phone = await open(page, '/oven/new', [], 0);
  await expect(page.getByText('An oven load needs a tube: start one')).toBeVisible();
  await expect(button(phone, 'An oven load needs a tube')).toBeDisabled();
});

test('a tube that is ready goes in, the oven is lit, and both journals know it after a reload', async ({
  page,
}) => {
  const phone = await open(page, '/oven/new', taped, 0);
  await expect(page.getByRole('checkbox', { name: /Boom no. 2.*Cure/ })).toBeChecked();
  await expect(page.getByText('release film, felt by the part')).toBeVisible();
  await page.getByRole('checkbox', { name: /Boom no. 2.*Cure/ }).tap();
  await expect(page.getByText('An oven load needs a tube: tick the one')).toBeVisible();
  await page.getByRole('checkbox', { name: /Boom no. 2.*Cure/ }).tap();
  await noViolations(page);
  await press(phone, 'Oven is lit');
  await expect(heading(phone)).toHaveText(loosely('Warming to 66 °C'));
  await page.reload();
  await expect(page.getByText(/Oven load 1 · 1 tube/)).toBeVisible();
  await page.goto('./#/oven/new');
  await expect(page.getByRole('checkbox', { name: /in oven load 1 already/ })).not.toBeChecked();
  await page.goto('./#/build/boom');
  await expect(page.getByRole('checkbox', { name: /In the oven.*[AP]M/ })).toBeChecked();
});

test('a schedule over a limit is warned about before it is lit, with by how much', async ({ page }) => {
  await open(page, '/oven/new', taped, 0);
  await button(phoneWithOwnClock(page), /^1 Ramp to/).tap();
  await page.getByLabel('Ramps to', { exact: true }).fill('88');
  await expect(page.getByText(loosely('6 °C over what the release film bears')).first()).toBeVisible();
  await button(phoneWithOwnClock(page), /^2 Hold/).tap();
  await page.getByLabel('Lasts', { exact: true }).fill('12 apples');
  await button(phoneWithOwnClock(page), /^2 Hold/).tap();
  await button(phoneWithOwnClock(page), 'Oven is lit').tap();
  await expect(page.getByRole('alert')).toContainText('12 apples');
  await expect(page.getByLabel('Lasts', { exact: true })).toHaveValue('12 apples');
});

test('chips stand still under a thumb until what is expected has left them', async ({ page }) => {
  // Up at 2 °C a minute: 30 °C at 4 min, so 28 to 32; what is expected leaves them at 5 min.
  const phone = await open(page, '/oven/oven', burning([[4, 30]]), 4);
  await expect(chip(phone, 30)).toBeVisible();
  await page.clock.runFor(50_000);
  await expect(chip(phone, 28)).toBeVisible();
  await expect(chip(phone, 32)).toBeVisible();
  await page.clock.runFor(120_000);
  await expect(chip(phone, 28)).toHaveCount(0);
  await expect(chip(phone, 34)).toBeVisible();
});

test('a due reading calls, is logged in two taps, and stands after a reload', async ({ page }) => {
  const phone = await open(page, '/oven/oven', burning(held.slice(0, 4)), 115);
  const clocks = page.getByRole('complementary', { name: 'Running clocks' });
  await expect(clocks).toContainText('READ THE OVEN');
  await chip(phone, 67).tap();
  await press(phone, loosely('Log 67 °C'));
  await expect(readings(phone).first()).toContainText(loosely('67 °C'));
  await expect(button(phone, /^Logged 67/)).toBeVisible();
  await expect(clocks).toBeHidden();
  await press(phone, /^Gel seen/);
  await expect(page.getByText(/Gel seen .*turning may stop/)).toBeVisible();
  await page.reload();
  await expect(readings(phone).first()).toContainText(loosely('67 °C'));
  await expect(readings(phone)).toHaveCount(5);
  await noViolations(page);
});

test('any other figure goes in on the keys, and one of the other unit is asked about', async ({ page }) => {
  const phone = await open(page, '/oven/oven', burning(held.slice(0, 4)), 100);
  await press(phone, 'Other');
  await typeOnKeys(phone, '666');
  await expect(page.getByRole('alert')).toContainText(loosely('more than 300 °C'));
  for (let i = 0; i < 3; i += 1) await button(phone, 'Erase last figure').tap();
  await typeOnKeys(phone, '150');
  await press(phone, loosely('Log 150 °C'));
  await expect(page.getByRole('alert')).toContainText(loosely('Do you mean 150 °F = 65.6 °C?'));
  await press(phone, loosely('Log 150 °F'));
  await expect(readings(phone).first()).toContainText(loosely('65.6 °C'));
});

test('a reading before the last one is taken after one question, and none from a time to come', async ({
  page,
}) => {
  const phone = await open(page, '/oven/oven', burning(held.slice(0, 4)), 90);
  const late = new Date(minutes(95)).toTimeString().slice(0, 5);
  await press(phone, 'Time: now');
  await page.getByLabel('Time of day').fill('soon');
  await press(phone, 'Read at this time');
  await expect(page.getByRole('alert')).toContainText('Write the time of day like 10:40');
  await page.getByLabel('Time of day').fill(late.padStart(5, '0'));
  await expect(page.getByLabel('Time of day')).toHaveValue(late);
  await press(phone, '10 min ago');
  await chip(phone, 65).tap();
  await press(phone, loosely('Log 65 °C'));
  await expect(sheet(phone, /The last reading was .* is this one earlier\?/)).toBeVisible();
  await press(phone, 'Log it as earlier');
  await expect(readings(phone)).toHaveCount(5);
  await expect(readings(phone).nth(1)).toContainText(loosely('65 °C'));
  await expect(button(phone, 'Time: now')).toBeVisible();
});

test('what went over a limit is said: what, by how much, for how long and since when', async ({ page }) => {
  const phone = await open(
    page,
    '/oven/oven',
    burning([
      [0, 23],
      [22, 66],
      [40, 66],
      [50, 90],
    ]),
    51,
  );
  await expect(heading(phone)).toHaveText(loosely('Too hot: 90 °C read'));
  const warning = page.getByRole('alert').filter({ hasText: 'Over what the release film bears' });
  await expect(warning).toContainText(loosely('8 °C over for 3 min 20 s'));
  await expect(warning).toContainText('Turn the oven down now');
});

test('nobody’s reading is not a hold: unread time is said and not counted', async ({ page }) => {
  const phone = await open(page, '/oven/oven', burning(held.slice(0, 3)), 180);
  await expect(heading(phone)).toHaveText(/^Unread since/);
  await expect(page.getByText('it does not count as hold')).toBeVisible();
});

test('held, off, out: the load closes, and the tube’s route goes on', async ({ page }) => {
  const phone = await open(page, '/oven/oven', burning(held), 203);
  await expect(heading(phone)).toHaveText(loosely('Hold done at 66 °C'));
  await expect(page.getByText('Done needs three, 1 still missing')).toBeVisible();
  // Resin that was held through has gelled: it is asked no more.
  await expect(button(phone, /^Gel seen/)).toBeHidden();
  await press(phone, 'Oven is off');
  await expect(heading(phone)).toHaveText(loosely('Cooling to 35 °C'));
  await press(phone, 'Still on: take ‘off’ back');
  await expect(heading(phone)).toHaveText(loosely('Hold done at 66 °C'));
  await press(phone, 'Oven is off');
  await holdDown(phone, /^Out of the oven, last read 66/);
  await expect(heading(phone)).toHaveText('Out of the oven');
  await page.reload();
  await expect(heading(phone)).toHaveText('Out of the oven');
  await press(phone, 'Go on with Boom no. 2');
  await expect(heading(phone)).not.toHaveText('Out of the oven');
});

test('a reading leads to where it is put right', async ({ page }) => {
  const phone = await open(page, '/oven/oven', burning(held.slice(0, 2)), 30);
  await expect(readings(phone).first()).toHaveAttribute('href', /#\/record\/fix\/oven\/e\d+/);
});

test('an oven load that is not on this phone says so', async ({ page }) => {
  const phone = await open(page, '/oven/nothing', [], 0);
  await expect(heading(phone)).toHaveText('No such oven load');
  await follow(phone, '‹ Bench');
  await expect(heading(phone)).not.toHaveText('No such oven load');
});
