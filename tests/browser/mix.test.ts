import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { cupOf, type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import {
  button,
  expectBigFigure,
  heading,
  holdDown,
  loosely,
  type Phone,
  phoneOnRealTime,
  press,
  sheet,
  typeOnKeys,
} from './support/hands.ts';
import { seed } from './support/seed.ts';

const before = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));

/** 314.1 g in three cups at 100:30, off by 3 % at most, 150 g to a cup. */
const header = {
  ...buildHeader,
  clothMass: 0.2,
  resin: { ...buildHeader.resin, lot: '7', largestCup: 0.15 },
};

/** The mixing screen of a tube to which this happened, half an hour after its start. */
async function atCups(page: Page, events: readonly Event[] = before): Promise<Phone> {
  await page.clock.install({ time: minutes(30) });
  await page.goto('./#/mix/build-1');
  await page.locator('h1').waitFor();
  await seed(page, [header, ...entriesOf('build-1', events)]);
  await expect(page.locator('h1')).not.toHaveText('No such tube');
  return phoneOnRealTime(page);
}

const alert = ({ page }: Phone) => page.getByRole('main').getByRole('alert');
const strip = ({ page }: Phone) => page.getByRole('complementary', { name: 'Running clocks' });

async function erase(phone: Phone, times: number): Promise<void> {
  for (let i = 0; i < times; i++) await button(phone, 'Erase last figure').tap();
}

/** Pours the first resin of a cup, so much by the scale. */
async function resinIn(phone: Phone, grams: string): Promise<void> {
  await expect(heading(phone)).toHaveText('Pour resin to');
  await typeOnKeys(phone, grams);
  await press(phone, /^Resin is in/);
}

test('what to mix, in how many cups, at what ratio, is answered before anything is poured', async ({
  page,
}) => {
  const phone = await atCups(page);
  await expect(heading(phone)).toHaveText('Resin to mix');
  await expectBigFigure(phone, '314.1 g');
  const main = page.getByRole('main');
  await expect(main).toContainText(loosely('244.9 g'));
  await expect(main).toContainText(loosely('30 g of SLOW to 100 g of resin'));
  await expect(main).toContainText('SLOW hardener, lot 7');
  await expect(main).toContainText('Amine hardener burns eyes');
  await press(phone, /More,\s+smaller cups/);
  await expectBigFigure(phone, '328.1 g');
  await press(phone, /Fewer,\s+bigger cups/);
  await expectBigFigure(phone, '314.1 g');
  await expect(button(phone, /Fewer,\s+bigger cups/)).toBeHidden();
});

test('a first target is one tap from here, and the hardener follows what was really poured', async ({
  page,
}) => {
  const phone = await atCups(page);
  await press(phone, 'Tare cup 1 and start');
  await expectBigFigure(phone, '80.5 g');
  await resinIn(phone, '89.3');
  await expect(heading(phone)).toHaveText('SLOW hardener, lot 7');
  await expect(strip(phone)).toBeHidden();
  await press(phone, 'Hardener going in');
  await expect(strip(phone)).toContainText('Cup 1');
  await expectBigFigure(phone, '116.1 g');
  await typeOnKeys(phone, '104.6');
  await expect(button(phone, loosely('11.5 g short'))).toHaveAttribute('aria-disabled', 'true');
  await page.reload();
  await expect(button(phone, loosely('11.5 g short'))).toBeVisible();
  await erase(phone, 5);
  await typeOnKeys(phone, '116.1');
  await press(phone, loosely('Hardener is in: 116.1 g'));
  await expect(heading(phone)).toHaveText('Stir 2 to 3 minutes');
  await expect(page.getByRole('main')).toContainText('Keep a sample of it, labeled cup 1');
  await page.clock.fastForward(181_000);
  await expect(heading(phone)).toHaveText('Pour it out flat');
  await press(phone, /Cup 1 is empty:/);
  await expect(heading(phone)).toHaveText('Still to mix');
  await expectBigFigure(phone, '198.0 g');
});

test('hardener poured over is put right with resin, and two cups can be in their pot life at once', async ({
  page,
}) => {
  const phone = await atCups(page);
  await press(phone, 'Tare cup 1 and start');
  await resinIn(phone, '80.5');
  await press(phone, 'Hardener going in');
  await typeOnKeys(phone, '106.3');
  await expect(alert(phone)).toContainText(loosely('rich by 6.8 %'));
  await expect(alert(phone)).toContainText(loosely('5.5 g of resin puts it right, and the cup holds that'));
  await press(phone, loosely('Pour resin to 111.8 g'));
  await expectBigFigure(phone, '111.8 g');
  await page.reload();
  await expectBigFigure(phone, '111.8 g');
  await typeOnKeys(phone, '112');
  await press(phone, loosely('Resin is in: 112.0 g'));
  await expect(heading(phone)).toHaveText('Stir 2 to 3 minutes');
  await press(phone, /^Mix next cup/);
  await resinIn(phone, '80');
  await press(phone, 'Hardener going in');
  await typeOnKeys(phone, '104');
  await press(phone, /^Hardener is in/);
  await expect(strip(phone)).toContainText('Cup 1');
  await expect(strip(phone)).toContainText('Cup 2');
  await press(phone, 'Cup 1 is empty');
  await expect(strip(phone)).not.toContainText('Cup 1');
  await expect(button(phone, /Cup 2 is empty:/)).toBeVisible();
});

test('a short pour does nothing by a tap, and is recorded lean when held', async ({ page }) => {
  const phone = await atCups(page);
  await press(phone, 'Tare cup 1 and start');
  await resinIn(phone, '80');
  await press(phone, 'Hardener going in');
  await typeOnKeys(phone, '95');
  await button(phone, /short$/).tap({ force: true });
  await press(phone, /^Record it as it is/);
  await expect(heading(phone)).toHaveText('Pour hardener to');
  await holdDown(phone, /^Record it as it is/);
  await expect(page.getByRole('main')).toContainText(loosely('lean by 37.5 %; 3 % is allowed'));
  await holdDown(phone, /^Throw cup 1 out/);
  await expect(heading(phone)).toHaveText('Still to mix');
  await expectBigFigure(phone, '314.1 g');
  await expect(button(phone, 'Tare cup 2 and start')).toBeVisible();
});

test('guards stop once and say why; a reason lets the builder go on, and then nothing stops', async ({
  page,
}) => {
  const phone = await atCups(page, []);
  await press(phone, 'Tare cup 1 and start');
  await sheet(phone, 'No dry run yet').getByRole('button', { name: 'Going on without it' }).tap();
  await resinIn(phone, '80.5');
  await press(phone, 'Hardener going in');
  await sheet(phone, /^Release is not through/)
    .getByRole('button', { name: 'Done another way' })
    .tap();
  await sheet(phone, 'The stand is not turning yet')
    .getByRole('button', { name: 'Not needed this time' })
    .tap();
  await expect(strip(phone)).toBeHidden();
  await press(phone, 'Hardener going in');
  await expect(strip(phone)).toContainText('Cup 1');
});

test('bad figures get one sentence each and nothing is recorded', async ({ page }) => {
  const phone = await atCups(page);
  await press(phone, 'Tare cup 1 and start');
  await expect(button(phone, 'Type what the scale shows')).toHaveAttribute('aria-disabled', 'true');
  await typeOnKeys(phone, '0');
  await expect(alert(phone)).toContainText('Zero will not do here');
  await typeOnKeys(phone, '.');
  await erase(phone, 2);
  await typeOnKeys(phone, '10000');
  await expect(alert(phone)).toContainText('check the figure');
  await button(phone, 'Check the figure').tap({ force: true });
  await erase(phone, 5);
  await typeOnKeys(phone, '120');
  await expect(alert(phone)).toContainText(loosely('comes to 156.0 g, and this cup may hold 150.0 g'));
  await erase(phone, 3);
  await resinIn(phone, '80.5');
  await press(phone, 'Hardener going in');
  await typeOnKeys(phone, '24');
  await expect(alert(phone)).toContainText(loosely('80.5 g was in the cup already'));
  await press(phone, 'The scale');
  await press(phone, 'Each part alone: zeroed between');
  await press(phone, 'Use it like this');
  await expectBigFigure(phone, '24.2 g');
  await typeOnKeys(phone, '24');
  await expect(button(phone, loosely('Hardener is in: 24.0 g'))).toBeVisible();
});

test('a scale too coarse for the cup is told before the first pour, with the smallest cup it can do', async ({
  page,
}) => {
  const phone = await atCups(page);
  await press(phone, /^Scale: steps of/);
  await press(phone, loosely('2 g'));
  await press(phone, 'Use it like this');
  await expect(page.getByRole('main')).toContainText(loosely('too coarse for a cup of 104.7 g'));
  await expect(page.getByRole('main')).toContainText(loosely('from 187.8 g a cup'));
});

test('a wrong press is taken back by a new entry', async ({ page }) => {
  const phone = await atCups(page);
  await press(phone, 'Tare cup 1 and start');
  await resinIn(phone, '80.5');
  await press(phone, 'Weigh the resin again');
  await resinIn(phone, '85.5');
  await press(phone, 'Hardener going in');
  await press(phone, 'Hardener is not in yet');
  await expect(strip(phone)).toBeHidden();
  await press(phone, 'Hardener going in');
  await expectBigFigure(phone, '111.2 g');
});

test('when the last cup is on the cloth its step is ticked with the press that says so', async ({ page }) => {
  const cups = [1, 2, 3].flatMap((n) => [
    ...cupOf(`${n}`, n, 10 + n),
    { minute: 20, kind: 'cupEmpty', cup: `${n}` } as const,
  ]);
  const phone = await atCups(page, [...before, ...cups]);
  await expect(heading(phone)).toHaveText('All of it is mixed');
  await press(phone, 'All cups are mixed');
  await expect(page).toHaveURL(/#\/build\/build-1/);
  await page.goto('./#/build/build-1/mix-1');
  await expect(page.getByRole('checkbox', { name: /Cups mixed by weight/ })).toBeChecked();
});

test('a cup that stands still is called empty from the route, and its clock goes with it', async ({
  page,
}) => {
  const cups = [1, 2, 3].flatMap((n) => cupOf(`${n}`, n, 10 + n));
  const empty = (cup: string) => ({ minute: 20, kind: 'cupEmpty', cup }) as const;
  const phone = await atCups(page, [...before, ...cups, empty('1'), empty('2'), ...ticksOf('mix', 21)]);
  await page.goto('./#/build/build-1/wetOut-1');
  await expect(strip(phone)).toContainText('Cup 3');
  await press(phone, 'Cup 3 is empty');
  await expect(strip(phone)).not.toContainText('Cup 3');
  await expect(button(phone, 'Cup 3 is empty')).toHaveCount(0);
  await press(phone, 'Undo');
  await expect(strip(phone)).toContainText('Cup 3');
});

test('every view of mixing passes the accessibility checks', async ({ page }) => {
  const phone = await atCups(page);
  const clean = async () => expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await clean();
  await press(phone, 'Tare cup 1 and start');
  await typeOnKeys(phone, '50');
  await clean();
  await erase(phone, 2);
  await resinIn(phone, '80.5');
  await clean();
  await press(phone, 'Hardener going in');
  await typeOnKeys(phone, '104.6');
  await clean();
  await press(phone, /^Hardener is in/);
  await clean();
});
