import { expect } from '@playwright/test';
import type { StageName } from '#shared/record/checklist.ts';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import {
  button,
  expectSaid,
  follow,
  heading,
  loosely,
  type Name,
  type Phone,
  press,
  sheet,
  timeOfDay,
  typeOnKeys,
} from './hands.ts';

/** The tube of these tests: six plies of 200 g/m2 carbon on a 38 mm mandrel. */
export const tube = {
  name: 'Upper mast',
  /** g, as typed */
  cloth: '225',
  mandrel: '38',
  plies: '6',
  length: '1.5 m',
};

/** Its steps, in the words of the route it takes. */
export function stepsOf(stage: StageName): string[] {
  const found = starterChecklists['starter-checklist-film-sleeve'].stages.find((s) => s.stage === stage);
  if (!found) throw new Error(`no stage ${stage} on the route`);
  return found.steps.map((s) => s.text);
}

/** From a first screen, or from the bench, to the route of a new tube. */
export async function startTube(phone: Phone): Promise<void> {
  const { page } = phone;
  await button(phone, /^Start the first tube$/)
    .or(page.getByRole('link', { name: 'Start a tube' }))
    .tap();
  await page.getByLabel('Name').fill(tube.name);
  await page.getByLabel('Cloth on the scale').fill(tube.cloth);
  await page.getByText('Mandrel, release, tape, checklist').tap();
  await page.getByLabel('Mandrel diameter').fill(tube.mandrel);
  await page.getByLabel('Plies').fill(tube.plies);
  await page.getByLabel('Tube length').fill(tube.length);
  await press(phone, `Start ${tube.name} no. 1`);
  await expect(heading(phone)).toHaveText('Mandrel prep');
}

/** One tap each; each is on disk before the next. */
export async function tick(phone: Phone, steps: readonly string[]): Promise<void> {
  for (const step of steps) {
    await press(phone, step);
    await expectSaid(phone, `Ticked: ${step}`);
  }
}

/** A step out of its turn, by a touch on its own line. */
export async function tickLine(phone: Phone, step: string): Promise<void> {
  await phone.settle();
  await phone.page.getByRole('checkbox', { name: new RegExp(`^${step}`) }).tap();
  await expectSaid(phone, new RegExp(`^Ticked: ${step}`));
}

export const tickStage = (phone: Phone, stage: StageName): Promise<void> => tick(phone, stepsOf(stage));

export async function readSurroundings(phone: Phone): Promise<void> {
  await press(phone, 'Read the surroundings');
  await typeOnKeys(phone, '21');
  await press(phone, 'Next: resin');
  await typeOnKeys(phone, '20.5');
  await press(phone, 'Next: mandrel');
  await typeOnKeys(phone, '21');
  await press(phone, 'Next: humidity');
  await typeOnKeys(phone, '45');
  await press(phone, 'Readings are down');
  await expectSaid(phone, 'Surroundings written down');
}

export async function countFilms(phone: Phone, direction: 'in' | 'out', count: number): Promise<void> {
  await press(phone, `Count the films ${direction}`);
  const asks = sheet(phone, direction === 'in' ? 'Films laid in' : 'Films taken out');
  for (let i = 0; i < count; i++) await asks.getByRole('button', { name: 'One film more' }).tap();
  await press(phone, direction === 'in' ? `${count} films in` : `${count} of ${count} films out`);
  await expectSaid(phone, `Films ${direction}: ${count}`);
}

/** To another stage of the route by the list of all of them. */
export async function goToStage(phone: Phone, name: string): Promise<void> {
  await press(phone, 'All stages');
  await sheet(phone, 'All stages')
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .tap();
  await expect(heading(phone)).toHaveText(name);
}

/** Types what the scale shows, and presses what will have happened. */
export async function pour(phone: Phone, reads: string, action: Name): Promise<void> {
  await typeOnKeys(phone, reads);
  await press(phone, action);
}

/** Returns when it was, to the second that the phone may have been at it, ms. */
export async function hardenerGoesIn(phone: Phone): Promise<number> {
  const at = await phone.page.evaluate(() => Date.now());
  await press(phone, 'Hardener going in');
  await expect(heading(phone)).toHaveText('Pour hardener to');
  return at;
}

export async function cupIsEmpty(phone: Phone, number: number): Promise<number> {
  const at = await phone.page.evaluate(() => Date.now());
  await press(phone, `Cup ${number} is empty: it is on the cloth`);
  return at;
}

/** Weighs something from the list of weights, which stands open. */
export async function weigh(phone: Phone, what: string, reads: string, action: Name): Promise<void> {
  await phone.page
    .getByRole('list', { name: 'Weights' })
    .getByRole('link', { name: new RegExp(`^${what}`) })
    .tap();
  await weighIn(phone, reads, action);
}

/** The figure on the scale, when its screen stands open. */
export async function weighIn(phone: Phone, reads: string, action: Name): Promise<void> {
  await typeOnKeys(phone, reads);
  await press(phone, action);
  await expect(phone.page.getByRole('list', { name: 'Weights' })).toBeVisible();
}

/** A step of the route that is done by weighing, there and back. */
export async function weighOnTheWay(
  phone: Phone,
  { opens, reads, action }: { opens: string; reads: string; action: string },
): Promise<void> {
  await press(phone, opens);
  await weighIn(phone, reads, loosely(action));
  await follow(phone, '‹ Route');
}

/** One temperature by its chip: two taps. */
export async function logByChip(phone: Phone, degrees: string): Promise<void> {
  const chips = phone.page.getByRole('group', { name: 'What it reads' });
  await chips.getByRole('button', { name: loosely(`${degrees} °C`) }).tap();
  await press(phone, loosely(`Log ${degrees} °C`));
  await expectLogged(phone, degrees);
}

export async function logByKeypad(phone: Phone, degrees: string): Promise<void> {
  await press(phone, 'Other');
  await typeOnKeys(phone, degrees);
  await press(phone, new RegExp(`^Log ${degrees}`));
  await expectLogged(phone, degrees);
}

async function expectLogged(phone: Phone, degrees: string): Promise<void> {
  await expect(button(phone, loosely(`Logged ${degrees} °C at`))).toBeVisible();
}

export async function lightOven(phone: Phone): Promise<void> {
  await press(phone, 'Set up an oven load');
  await expect(heading(phone)).toHaveText('Set up an oven load');
  await press(phone, 'Oven is lit');
  await expect(heading(phone)).toHaveText(/^Warming to/);
}

export async function feelSamples(phone: Phone, cups: number): Promise<void> {
  await press(phone, 'Feel the cup samples');
  const asks = sheet(phone, 'Cup samples');
  for (let cup = 1; cup <= cups; cup++) {
    await asks
      .getByRole('group', { name: new RegExp(`^Cup ${cup}`) })
      .getByRole('button', { name: 'Hard' })
      .tap();
  }
  await press(phone, 'Every sample is hard');
  await expectSaid(phone, 'Every sample is hard');
}

export async function judge(phone: Phone, outcome: 'Good' | 'Rework' | 'Scrap'): Promise<void> {
  await press(phone, 'Judge the tube');
  await sheet(phone, 'How did it come out?')
    .getByRole('button', { name: new RegExp(`^${outcome}`) })
    .tap();
  await press(phone, `Judged ${outcome.toLowerCase()}`);
  await expectSaid(phone, `Judged: ${outcome.toLowerCase()}`);
}

/** Around the tube at a station, with the screen of all stations open. */
export async function measureAround(phone: Phone, station: string, reads: string): Promise<void> {
  await press(phone, loosely(`Read it at ${station}`));
  await expect(heading(phone)).toHaveText(loosely(`Around at ${station}`));
  await pour(phone, reads, loosely(`${reads} mm around`));
  await expect(heading(phone)).toHaveText('Measure the wall');
}

/** The strip of clocks at the top of every screen. */
export const clocks = ({ page }: Phone) => page.getByRole('complementary', { name: 'Running clocks' });

export async function expectClock(phone: Phone, words: string | RegExp): Promise<void> {
  await expect(clocks(phone)).toContainText(words);
}

/** A time of day that lies within the second or two a test needs between asking and pressing. */
export const about = (at: number): RegExp => {
  const [early, late] = [timeOfDay(at), timeOfDay(at + 3000)];
  const either = early === late ? early : `(${early}|${late})`;
  return new RegExp(either.replaceAll(' ', '\\s'));
};
