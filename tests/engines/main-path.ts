import type { Browser, Engine } from './engine.ts';
import { expectNoTroubles, type Hands } from './hands.ts';
import type { Host } from './offline-server.ts';
import { until } from './until.ts';

/** What one engine is tried on: the app on a host that is soon gone, and a folder for what it keeps. */
export interface Bench {
  engine: Engine;
  host: Host;
  folder: string;
  browser: Browser;
  hands: Hands;
}

/** Spaces of every kind are one; the words end where the name ends. */
const starts = (words: string): RegExp => new RegExp(`^${words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);

/** The first visit, the only one with a network, and from then on none. */
export async function keepTheApp({ hands, host }: Bench): Promise<void> {
  await hands.open();
  await hands.seeHeading('Your bench is clear');
  await until(
    'all of the app is on the phone',
    () => hands.page.run(() => navigator.serviceWorker.controller !== null),
    20_000,
  );
  // A part that is still on its way when the page is left is told of as a fault by some browsers.
  let parts = -1;
  await until(
    'every part of the page is there',
    async () => {
      const before = parts;
      parts = await hands.page.run(() => performance.getEntriesByType('resource').length);
      await new Promise((later) => setTimeout(later, 700));
      return parts === before;
    },
    20_000,
  );
  await host.stop();
  await hands.open();
  await hands.seeHeading('Your bench is clear');
}

/** 60 g of cloth on a short tube: one cup. */
export async function startTube({ hands }: Bench): Promise<void> {
  await hands.press('Start the first tube');
  await hands.fill('Name', 'Sprit');
  await hands.fill('Cloth on the scale', '60');
  await hands.press('Mandrel, release, tape, checklist');
  await hands.fill('Mandrel diameter', '38');
  await hands.fill('Plies', '2');
  await hands.fill('Tube length', '1.2 m');
  await hands.press('Start Sprit no. 1');
  await hands.seeHeading('Mandrel prep');
}

async function goToStage(hands: Hands, stage: string): Promise<void> {
  await hands.press('All stages');
  await hands.press(starts(stage), 'All stages');
  await hands.seeHeading(stage);
}

async function tick(hands: Hands, steps: readonly string[]): Promise<void> {
  for (const step of steps) {
    await hands.press(starts(step));
    await hands.seeSaid(starts(`Ticked: ${step}`));
  }
}

/** By thumb, and by a foot switch that sends page-down. */
export async function prepare({ hands }: Bench): Promise<void> {
  await hands.press('Mandrel picked, diameter measured');
  await hands.seeSaid(starts('Ticked: Mandrel picked'));
  await hands.check(starts('Edges deburred'));
  await hands.seeSaid(starts('Ticked: Edges deburred'));
  await hands.press('Undo');
  await hands.keys('PageDown');
  await hands.seeSaid(starts('Ticked: Rolled on the bench'));
  await goToStage(hands, 'Set up');
  await hands.press('Read the surroundings');
  for (const [reads, next] of [
    ['21', 'Next: resin'],
    ['20.5', 'Next: mandrel'],
    ['21', 'Next: humidity'],
    ['45', 'Readings are down'],
  ] as const) {
    await hands.figuresOnKeys(reads);
    await hands.press(next);
  }
  await hands.seeText('dew point 8.6 °C');
}

async function pour(hands: Hands, stopAt: RegExp, reads: string, action: string): Promise<void> {
  await hands.seeFigure(stopAt);
  await hands.figuresOnKeys(reads);
  await hands.press(action);
}

/** One cup to the gram, over a reload, and with its clock running from the hardener on. */
export async function mix({ hands }: Bench): Promise<void> {
  await goToStage(hands, 'Mix');
  await hands.press('Count the films in');
  await hands.press('One film more', 'Films laid in');
  await hands.press('1 film in');
  await hands.press('Masking off the cloth');
  await hands.press('Mix cup 1');
  // 60*767/626.5 = 73.5 g stay in the part; /0.9 for what the tape squeezes out, and 15 g stay in the cup.
  await hands.seeFigure(/96.6 g$/);
  await hands.press('Tare cup 1 and start');
  await hands.press('Not needed this time', 'No dry run yet');
  // 96.6/1.3
  await pour(hands, /74.3 g$/, '74.6', 'Resin is in: 74.6 g');
  await hands.open(await hands.page.run(() => location.hash));
  await hands.seeFigure(/97.0 g$/);
  await hands.press('Hardener going in');
  await hands.press('Done another way', 'Release is not through');
  await hands.press('Done another way', 'The stand is not turning yet');
  await hands.press('Hardener going in');
  await hands.seeText('left');
  await pour(hands, /97.0 g$/, '97.2', 'Hardener is in: 97.2 g');
  await hands.seeHeading('Stir 2 to 3 minutes');
  await hands.later(3);
  await hands.press('Cup 1 is empty: it is on the cloth');
  await hands.seeText('Tape all on');
  await hands.press('All cups are mixed');
}

/** What one tab writes stands in the other, and the clock runs in both. */
export async function workInTwoTabs({ hands, browser }: Bench): Promise<void> {
  const second = hands.beside(await browser.newPage());
  await second.open(await hands.page.run(() => location.hash));
  const clocks = () => document.querySelector('aside')?.textContent ?? '';
  await second.seeText('Tape all on');
  const before = await second.page.run(clocks);
  await until('the clock runs', async () => (await second.page.run(clocks)) !== before);
  await goToStage(second, 'Wet-out');
  await second.check(starts('Half the resin'));
  await second.seeSaid(starts('Ticked: Half the resin'));
  await goToStage(hands, 'Wet-out');
  await hands.seeLine(/^Half the resin.* [AP]M$/);
  await expectNoTroubles(browser.troubles());
  await second.page.close();
}

/** The rest of the route, with what was not ticked left for the end. */
export async function wetOutWrapAndTape({ hands }: Bench): Promise<void> {
  await goToStage(hands, 'Wrap');
  await tick(hands, ['First edge on the line', 'Rolled firm', 'Outer edge lands']);
  await hands.press('Count the films out');
  await hands.press('One film more', 'Films taken out');
  await hands.press(/^1 of 1 films? out$/);
  await goToStage(hands, 'Shrink tape');
  await tick(hands, ['Coated side down', 'First pass', 'Second pass', 'Ends locked']);
}

async function logByKeys(hands: Hands, degrees: string): Promise<void> {
  await hands.press('Other');
  await hands.figuresOnKeys(degrees);
  await hands.press(starts(`Log ${degrees}`));
  await hands.seeButton(starts(`Logged ${degrees} °C at`));
}

/** Readings by chip and by keypad, gel seen, the hold counted, the oven off. */
export async function cure({ hands }: Bench): Promise<void> {
  await goToStage(hands, 'Cure');
  await hands.press('Set up an oven load');
  await hands.press('Oven is lit');
  await hands.seeHeading(/^Warming to 66/);
  await hands.press(/^23 °C/, 'What it reads');
  await hands.press(/^Log 23 °C/);
  await hands.seeButton(/^Logged 23 °C at/);
  await hands.press(/^Gel seen/);
  await hands.later(20);
  await logByKeys(hands, '65');
  await hands.seeHeading(/^Holding at 66/);
  await hands.later(30);
  await hands.press(/^66 °C/, 'What it reads');
  await hands.press(/^Log 66 °C/);
  await hands.seeButton(/^Logged 66 °C at/);
  await hands.later(155);
  await logByKeys(hands, '66');
  await hands.press('Oven is off');
  await hands.later(40);
  await hands.holdDown(/^Out of the oven, last read 66/);
  await hands.seeHeading('Out of the oven');
}

/** A press-and-hold, a sheet of its own for each judgment, and the tube's weight on the record. */
export async function demoldAndWeigh({ hands }: Bench): Promise<void> {
  await hands.press(/^Go on with Sprit no. 1$/);
  await goToStage(hands, 'Demold');
  await hands.check(starts('Twisted loose'));
  await goToStage(hands, 'Weigh');
  await hands.press('Weigh the tube');
  await hands.follow(starts('Cured tube'));
  await hands.figuresOnKeys('126');
  await hands.press('Tube weighs 126.0 g');
  await hands.follow('‹ Route');
  await goToStage(hands, 'Measure');
  await hands.check(starts('Judged'));
  await hands.press('Judge the tube');
  await hands.press(starts('Good'), 'How did it come out?');
  await hands.press('Judged good');
  await hands.press('All done to here');
  await hands.press('Tube no. 1 is done');
  await hands.seeHeading('Tube no. 1 is done');
}
