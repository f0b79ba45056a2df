import { expect, type Page, test } from '@playwright/test';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import { cupOf, type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { seed } from './support/seed.ts';

const address = '#/build/build-1';
const stagesBefore = (stage: string): Event[] => {
  const at = buildHeader.route.findIndex((s) => s.stage === stage);
  return buildHeader.route.slice(0, at).flatMap((s, i) => ticksOf(s.stage, i));
};
const films = (direction: 'in' | 'out', count: number): Event => ({
  minute: 8,
  kind: 'filmCount',
  direction,
  count,
  round: 1,
});

interface Shop {
  events?: Event[];
  header?: object;
  minute?: number;
  hash?: string;
}

/** Opens the route of a build to which this happened, at a minute after its start. */
async function atBench(page: Page, { events = [], header = {}, minute = 30, hash = address }: Shop) {
  await page.clock.install({ time: minutes(minute) });
  await page.goto(`./${hash}`);
  await page.locator('h1').waitFor();
  await seed(page, [{ ...buildHeader, ...header }, ...entriesOf('build-1', events)]);
  await expect(page.locator('h1')).not.toHaveText('No such tube');
}

/** A thumb takes longer between two presses than a glove's bounce, which is ignored, ms */
const bounce = 400;
async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.clock.fastForward(bounce);
  await page.getByRole('button', { name }).first().tap();
}
const line = (page: Page, name: string | RegExp) => page.getByRole('checkbox', { name });
const title = (page: Page) => page.getByRole('heading', { level: 1 });

test('one tap ticks a step with its time, and it stands after a reload', async ({ page }) => {
  await atBench(page, {});
  await expect(title(page)).toHaveText('Mandrel prep');
  await press(page, 'Mandrel picked, diameter measured');
  await expect(line(page, /Mandrel picked/)).toBeChecked();
  await expect(page.getByRole('button', { name: 'Rolled on the bench: straight' })).toBeVisible();
  await page.reload();
  await expect(line(page, /Mandrel picked.*\d:\d\d [AP]M/)).toBeChecked();
  await expect(line(page, /Rolled on the bench/)).not.toBeChecked();
});

test('a tick can be undone for ten seconds, and taken back from its line for ever', async ({ page }) => {
  await atBench(page, {});
  await line(page, /Rolled on the bench/).tap();
  await expect(line(page, /Rolled on the bench/)).toBeChecked();
  await press(page, 'Undo');
  await expect(line(page, /Rolled on the bench/)).not.toBeChecked();
  await page.clock.fastForward(bounce);
  await line(page, /Rolled on the bench/).tap();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible();
  await page.clock.fastForward(11_000);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden();
  await line(page, /Rolled on the bench/).tap();
  await press(page, 'Take the tick back');
  await expect(line(page, /Rolled on the bench/)).not.toBeChecked();
});

test('ticks passed over are made up in one press, as done and not seen when', async ({ page }) => {
  await atBench(page, {});
  await line(page, /Edges deburred/).tap();
  await press(page, 'All done to here');
  await expect(line(page, /Mandrel picked.*time not seen/)).toBeChecked();
  await expect(line(page, /Rolled on the bench.*time not seen/)).toBeChecked();
  await expect(line(page, /Edges deburred.*[AP]M/)).toBeChecked();
});

test('a coat starts its wait by being ticked, and the next coat ends it', async ({ page }) => {
  const route = starterChecklists['starter-checklist-wax-pva'].stages;
  await atBench(page, { events: ticksOf('mandrelPrep', 1), header: { route } });
  await press(page, 'Wax coat 1 on, hazed and buffed');
  const first = page.getByRole('listitem').filter({ has: line(page, /Wax coat 1/) });
  await expect(first).toContainText(/30:00 left|29:\d\d left/);
  await page.clock.fastForward(31 * 60_000);
  await expect(first).toContainText('Wait is over');
  await press(page, 'Wax coat 2 on, hazed and buffed');
  await expect(line(page, /Wax coat 2/)).toBeChecked();
  await expect(first).not.toContainText('Wait is over');
});

test('surroundings give the dew point and say when to wait', async ({ page }) => {
  await atBench(page, { events: stagesBefore('setUp') });
  await press(page, 'Read the surroundings');
  const type = async (keys: string) => {
    for (const key of keys) await page.getByRole('button', { name: key, exact: true }).tap();
  };
  await type('20');
  await press(page, 'Next: resin');
  await type('20');
  await press(page, 'Next: mandrel');
  await type('15');
  await press(page, 'Next: humidity');
  await type('65');
  await expect(page.getByText(/Dew point 13\.2/)).toBeVisible();
  await press(page, 'Readings are down');
  await expect(line(page, /Air, resin, mandrel/)).toBeChecked();
  await expect(page.getByText(/Mandrel is 1\.8\s°C above the dew point/)).toBeVisible();
  await page.reload();
  await expect(page.getByText(/Mandrel is 1\.8\s°C above the dew point/)).toBeVisible();
});

test('tape is stopped once while films are missing, and goes on for a reason', async ({ page }) => {
  await atBench(page, { events: [...stagesBefore('shrinkTape'), films('in', 3), films('out', 2)] });
  await press(page, 'Coated side down, start locked');
  await expect(page.getByRole('dialog', { name: 'Films: 2 of 3 are out.' })).toBeVisible();
  await press(page, 'Not needed this time');
  await expect(line(page, /Coated side down/)).toBeChecked();
  await press(page, 'First pass end to end, half overlap');
  await expect(line(page, /First pass/)).toBeChecked();
});

test('once hardener is in, missing films are said and block nothing', async ({ page }) => {
  const wet = cupOf('a', 1, 20);
  await atBench(page, { events: [...stagesBefore('shrinkTape'), ...wet, films('in', 3), films('out', 2)] });
  await expect(page.getByText('Films: 2 of 3 are out.')).toBeVisible();
  await press(page, 'Coated side down, start locked');
  await expect(line(page, /Coated side down/)).toBeChecked();
  await expect(page.getByText('Films: 2 of 3 are out.')).toBeVisible();
  await press(page, 'Count films out');
  await press(page, 'One film more');
  await press(page, '3 of 3 films out');
  await expect(page.getByText(/are out\.$/)).toBeHidden();
});

test('looking ahead is free, and a step there can be done out of order', async ({ page }) => {
  await atBench(page, {});
  await press(page, 'All stages');
  await press(page, /^Demold/);
  await expect(title(page)).toHaveText('Demold');
  await press(page, 'Cooled until hand warm');
  await expect(line(page, /Cooled until hand warm/)).toBeChecked();
  await expect(page.getByText(/steps before .* not ticked/)).toBeVisible();
});

test('mix to cure is gone through again in a second round', async ({ page }) => {
  await atBench(page, { events: stagesBefore('demold') });
  await press(page, 'All stages');
  await press(page, 'Another round: mix to cure again');
  await expect(title(page)).toHaveText('Mix');
  await expect(page.getByText(/round 2/).first()).toBeVisible();
  await expect(line(page, /Wet-out films counted/)).not.toBeChecked();
});

test('a note and a photo are kept', async ({ page }) => {
  await atBench(page, {});
  await press(page, 'Note or photo');
  await page.getByLabel('What is worth knowing').fill('Scratch at 400 mm');
  await page.getByLabel('Take a photo').setInputFiles('public/icon-192.png');
  await expect(page.getByRole('img', { name: 'As it will be kept' })).toBeVisible();
  await press(page, 'Photo is kept');
  await expect(page.getByRole('dialog')).toBeHidden();
  const kept = await page.evaluate(async () => {
    const opened = indexedDB.open('tubewright');
    const database = await new Promise<IDBDatabase>((resolve) => {
      opened.onsuccess = () => resolve(opened.result);
    });
    const all = database.transaction('entries').objectStore('entries').getAll();
    const entries = await new Promise<{ kind: string; caption?: string; hash?: string }[]>((resolve) => {
      all.onsuccess = () => resolve(all.result);
    });
    database.close();
    return entries.find((e) => e.kind === 'photo');
  });
  expect(kept?.caption).toBe('Scratch at 400 mm');
  expect(kept?.hash).toMatch(/^[0-9a-f]{64}$/);
});

test('a file that is no picture gets a sentence, and the words typed stay', async ({ page }) => {
  await atBench(page, {});
  await press(page, 'Note or photo');
  await page.getByLabel('What is worth knowing').fill('Scratch at 400 mm');
  await page.getByLabel('Take a photo').setInputFiles('package.json');
  await expect(page.getByRole('alert')).toContainText('not a picture');
  await expect(page.getByLabel('What is worth knowing')).toHaveValue('Scratch at 400 mm');
});

test('a route that is through asks for a judgment, closes, and can be opened again', async ({ page }) => {
  await atBench(page, { events: buildHeader.route.flatMap((s, i) => ticksOf(s.stage, i)) });
  await press(page, 'Tube no. 1 is done');
  await press(page, /^Good/);
  await press(page, 'Tube no. 1 is done: good');
  await expect(title(page)).toHaveText('Tube no. 1 is done');
  await press(page, 'Open it again');
  await expect(title(page)).toHaveText('Measure');
});

test('an address of no build says so and leads back', async ({ page }) => {
  await page.goto('./#/build/nothing');
  await expect(title(page)).toHaveText('No such tube');
  await page.getByRole('link', { name: /Bench/ }).first().tap();
  await expect(title(page)).not.toHaveText('No such tube');
});
