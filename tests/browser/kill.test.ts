import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import {
  button,
  expectBigFigure,
  expectSaid,
  follow,
  heading,
  holdDown,
  loosely,
  type Phone,
  press,
  typeOnKeys,
} from './support/hands.ts';
import {
  clocks,
  countFilms,
  cupIsEmpty,
  expectClock,
  feelSamples,
  goToStage,
  hardenerGoesIn,
  judge,
  lightOven,
  logByChip,
  logByKeypad,
  pour,
  readSurroundings,
  startTube,
  stepsOf,
  tick,
  tickLine,
  tube,
  weigh,
  weighIn,
  weighOnTheWay,
} from './support/job.ts';
import { appIsKept } from './support/offline.ts';
import { type Host, startHost } from './support/own-host.ts';
import { expectLeft, leftNow, PowerCuts, type Started, timed } from './support/power-cuts.ts';

test.use({ serviceWorkers: 'allow' });

let host: Host;
let profile: string;
let power: PowerCuts;

test.beforeEach(async () => {
  host = await startHost();
  profile = await mkdtemp(join(tmpdir(), 'tubewright-kill-'));
  power = new PowerCuts(host.address, profile);
});

test.afterEach(async () => {
  await power.end();
  await host.stop();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});

const addressOf = (phone: Phone) => new URL(phone.page.url()).hash;
const goOn = (phone: Phone) => press(phone, `Go on with ${tube.name} no. 1`);

test('killed at ten moments of the job, the phone has all that it said it had, and the job goes on', async () => {
  test.setTimeout(300_000);
  let phone = await power.on();
  await expect(heading(phone)).toHaveText('Your bench is clear');
  await appIsKept(phone.page);
  await host.stop();

  await test.step('1: the tube has just been started', async () => {
    await startTube(phone);
    await power.cut();
    phone = await power.on();
    await goOn(phone);
    await expect(heading(phone)).toHaveText('Mandrel prep');
  });
  const build = addressOf(phone).replace(/.*\//, '');
  const record = `/record/build/${build}`;

  await test.step('2: a step that waits has been ticked, and its clock goes on', async () => {
    await tick(phone, stepsOf('mandrelPrep').slice(0, 2));
    await goToStage(phone, 'Release');
    await weighOnTheWay(phone, { opens: 'Weigh the film', reads: '12', action: 'Film put in weighs 12.0 g' });
    let started: Started;
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        started = await timed(() => tickLine(p, 'Sprayed thin and even'), 15 * 60);
      },
      leaves: /Sprayed thin and even.*\n.*Clock: Sprayed thin and even 15 min/,
      shows: async (p) => {
        await goOn(p);
        await expect(p.page.getByRole('checkbox', { name: /^Sprayed thin and even/ })).toBeChecked();
        await expectLeft(p, started);
      },
    });
  });

  await test.step('3: the surroundings have been read', async () => {
    await goToStage(phone, 'Set up');
    phone = await power.cutAfter(phone, record, {
      act: readSurroundings,
      leaves: /Surroundings air 21 °C, resin 20.5 °C, mandrel 21 °C, humidity 45 %/,
      shows: async (p) => {
        await goOn(p);
        await expect(p.page.getByText(loosely('dew point 8.6 °C'))).toBeVisible();
      },
    });
    await goToStage(phone, 'Mix');
    await press(phone, 'All done to here');
    await expectSaid(phone, /^Ticked, times not seen/);
  });

  await test.step('4: the films have been counted in', async () => {
    phone = await power.cutAfter(phone, record, {
      act: (p) => countFilms(p, 'in', 2),
      leaves: /Films in 2/,
      shows: async (p) => {
        await goOn(p);
        await expect(p.page.getByRole('checkbox', { name: /^Wet-out films counted/ })).toBeChecked();
      },
    });
    await tick(phone, ['Masking off the cloth']);
    await press(phone, 'Mix cup 1');
    await press(phone, 'Tare cup 1 and start');
    await expectBigFigure(phone, '90.0 g');
  });

  await test.step('5: resin has been poured', async () => {
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        await pour(p, '90.3', loosely('Resin is in: 90.3 g'));
        await expect(button(p, 'Hardener going in')).toBeVisible();
      },
      leaves: /Cup 1: resin 90.3 g/,
      shows: async (p) => {
        await follow(p, 'Go on with cup 1');
        await expectBigFigure(p, '117.4 g');
      },
    });
  });

  await test.step('6: hardener has touched resin', async () => {
    let contact: Started;
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        contact = await timed(() => hardenerGoesIn(p), 0);
        // How long that is, is reckoned from the cup; that it goes on being that long is what a kill could break.
        contact.lasts = await leftNow(p);
        expect(contact.lasts).toBeGreaterThan(40 * 60);
      },
      leaves: /Cup 1: hardener in/,
      shows: async (p) => {
        await expectLeft(p, contact);
        await follow(p, 'Go on with cup 1');
        await expectBigFigure(p, '117.4 g');
      },
    });
  });

  await test.step('7: too much hardener has been poured, and not been put right yet', async () => {
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        // 32.4 g of hardener want 108.0 g of resin.
        await typeOnKeys(p, '122.7');
        await press(p, loosely('Pour resin to 140.4 g'));
        await expectBigFigure(p, '140.4 g');
      },
      leaves: /Cup 1: hardener 32.4 g/,
      shows: async (p) => {
        await goOn(p);
        await press(p, 'Back to cup 1');
        await expectBigFigure(p, '140.4 g');
      },
    });
    await pour(phone, '140.4', loosely('Resin is in: 140.4 g'));
  });

  await test.step('8: a cup has been emptied, and the tape deadline stands', async () => {
    let byThen = '';
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        await cupIsEmpty(p, 1);
        await expect(button(p, 'Tare cup 2 and start')).toBeVisible();
        byThen = (await clocks(p).textContent()) ?? '';
      },
      leaves: /Cup 1 empty/,
      shows: async (p) => {
        const time = /\d+:\d\d\s[AP]M/.exec(byThen.slice(byThen.indexOf('Tape')))?.[0] ?? 'no time';
        await expectClock(p, time);
        await follow(p, 'Mix next cup');
      },
    });
    // 306.1 g to apply, 125.4 came out of cup 1: two cups of 180.7/2 + 15 = 105.3 g, in 100:30.
    for (const [number, resin, total] of [
      [2, '81.0', '105.3'],
      [3, '81.1', '105.4'],
    ] as const) {
      await press(phone, `Tare cup ${number} and start`);
      await expectBigFigure(phone, `${resin} g`);
      await pour(phone, resin, loosely(`Resin is in: ${resin} g`));
      await expectBigFigure(phone, `${total} g`);
      await hardenerGoesIn(phone);
      await pour(phone, total, loosely(`Hardener is in: ${total} g`));
      await cupIsEmpty(phone, number);
    }
    await expect(heading(phone)).toHaveText('All of it is mixed');
    await press(phone, 'All cups are mixed');
    await goToStage(phone, 'Wrap');
    await press(phone, 'All done to here');
    await tick(phone, stepsOf('wrap').slice(0, 3));
    await countFilms(phone, 'out', 2);
    await goToStage(phone, 'Shrink tape');
    await tick(phone, stepsOf('shrinkTape'));
    await lightOven(phone);
  });

  await test.step('9: a temperature has been logged', async () => {
    const oven = addressOf(phone).replace(/.*\//, '');
    await logByChip(phone, '23');
    phone = await power.cutAfter(phone, `/record/oven/${oven}`, {
      act: (p) => logByKeypad(p, '41'),
      leaves: /Upper mast no. 1 41 °C/,
      shows: async (p) => {
        await p.page.getByRole('link', { name: /^Oven load 1/ }).tap();
        const readings = p.page.getByRole('list', { name: 'Readings, newest first' });
        await expect(readings.getByRole('listitem')).toHaveText([loosely('41 °C'), loosely('23 °C')]);
      },
    });
    await press(phone, 'Oven is off');
    await holdDown(phone, /^Out of the oven, last read 41/);
    await expect(heading(phone)).toHaveText('Out of the oven');
    await press(phone, `Go on with ${tube.name} no. 1`);
    await goToStage(phone, 'Cure');
    await tick(phone, ['Cup samples in beside the tube', 'Gelled at a tape edge, turning stopped']);
    await tick(phone, ['Hold done by the coldest part sensor']);
    await feelSamples(phone, 3);
    await goToStage(phone, 'Weigh');
  });

  await test.step('10: the cured tube has been weighed', async () => {
    phone = await power.cutAfter(phone, record, {
      act: async (p) => {
        await press(p, 'Weigh the tube');
        await weigh(p, 'Cured tube', '466', loosely('Tube weighs 466.0 g'));
      },
      leaves: /Cured tube, ends not cut 466.0 g/,
      shows: async (p) => {
        await goOn(p);
        await press(p, 'Weigh the film');
        await weighIn(p, '11.6', loosely('Film got out weighs 11.6 g'));
        await follow(p, '‹ Route');
      },
    });
    await goToStage(phone, 'Measure');
    await press(phone, 'All done to here');
    await expectSaid(phone, /^Ticked, times? not seen/);
    await press(phone, 'Only tick it');
    await tick(phone, ['Looked over, tapped for dry spots']);
    await judge(phone, 'Good');
    await press(phone, 'Tube no. 1 is done');
    await expect(heading(phone)).toHaveText('Tube no. 1 is done');
    await follow(phone, 'Record');
    await expect(phone.page.getByRole('link', { name: /^Upper mast no. 1/ })).toContainText(
      loosely('466 g52:48, 38 % fiber'),
    );
  });
});
