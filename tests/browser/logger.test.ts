import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { buildHeader, celsius, entries, lit, loadHeader, minutes } from '../app/oven-loads.ts';
import { button, heading, holdDown, loosely, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { seed } from './support/seed.ts';

const folder = join(import.meta.dirname, '../logger-files');

const inside = (build: string) => ({
  kind: 'joinedOvenLoad',
  build,
  ovenLoad: 'oven',
  round: 1,
  channel: build,
  happenedAt: lit,
});

/** Two tubes cured and out, read by hand now and then. */
const cured = [
  buildHeader({ schedule: loadHeader.schedule }),
  ...entries('boom', [inside('boom')] as never),
  loadHeader,
  ...entries('oven', [
    { kind: 'ovenStage', stage: 'lit', happenedAt: lit },
    inside('boom'),
    ...[
      [0, 23],
      [60, 64],
      [120, 65],
      [180, 65],
    ].map(([at = 0, degrees = 0]) => ({
      kind: 'reading',
      channel: 'boom',
      temperature: celsius(degrees),
      happenedAt: minutes(at),
    })),
    { kind: 'ovenStage', stage: 'off', happenedAt: minutes(205) },
    { kind: 'ovenStage', stage: 'out', happenedAt: minutes(240) },
    { kind: 'closed', happenedAt: minutes(240) },
  ] as never),
];

async function open(page: Page, hash: string, records: readonly object[] = cured): Promise<Phone> {
  await page.goto(`./#${hash}`);
  await page.locator('h1').waitFor();
  await seed(page, records);
  await page.locator('h1').waitFor();
  return phoneOnRealTime(page);
}

const choose = ({ page }: Phone, name: string) =>
  page.locator('input[type=file]').setInputFiles(join(folder, name));

const noViolations = async (page: Page) =>
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

const look = (page: Page, name: string) =>
  process.env.SHOTS
    ? page.screenshot({ path: `${process.env.SHOTS}/${name}.png`, fullPage: true })
    : undefined;

test('three files of three loggers are read, with their faults named, and stay with the oven load and its backup', async ({
  page,
}) => {
  const phone = await open(page, '/oven/oven');
  await page.getByRole('link', { name: 'Take in a logger’s file' }).tap();
  await expect(heading(phone)).toHaveText('A logger’s file');
  await choose(phone, 'semicolons.csv');
  await expect(heading(phone)).toHaveText('Is it read right?');
  await expect(page.getByText('Nothing wrong with it')).toBeVisible();
  await expect(page.getByLabel(/^Column 4: Oven air/)).toHaveValue('air');
  await expect(page.getByLabel(/^Column 5: Boom/)).toHaveValue('boom');
  await expect(button(phone, loosely('°C'))).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByText(loosely('1:55 PM to 6:14 PM'))).toBeVisible();
  await noViolations(page);
  await look(page, 'preview');
  await press(phone, 'Take in 1,040 readings');
  await expect(page.getByRole('link', { name: /semicolons\.csv/ })).toContainText('1,040');
  await look(page, 'oven');

  await page.getByRole('link', { name: 'Take in a logger’s file' }).tap();
  await choose(phone, 'elapsed-tabs.txt');
  await expect(page.getByLabel(/^Column 2: Sprit/)).toHaveValue('sprit');
  await expect(page.getByLabel(/^Column 3: Element/)).toHaveValue('new element');
  await expect(button(phone, loosely('°F'))).toHaveAttribute('aria-pressed', 'true');
  await look(page, 'preview-elapsed');
  await press(phone, 'Take in 1,800 readings');
  await expect(page.getByRole('link', { name: /elapsed-tabs\.txt/ })).toBeVisible();

  await page.getByRole('link', { name: 'Take in a logger’s file' }).tap();
  await choose(phone, 'faults.csv');
  const faults = page.getByRole('list', { name: 'What is wrong with it' });
  await expect(faults.getByText(loosely('1 gap, the longest 10 min'))).toBeVisible();
  await expect(faults.getByText(loosely('The clock jumped back 25 min'))).toBeVisible();
  await expect(faults.getByText('3 rows with the time of the row before')).toBeVisible();
  await expect(faults.getByText('CH2 temp reads nothing in 18 rows')).toBeVisible();
  await expect(faults.getByText('CH3 temp: no sensor was connected')).toBeVisible();
  await expect(faults.getByText('Air temp jumps for a single row, 1 time')).toBeVisible();
  await look(page, 'preview-faults');
  await noViolations(page);
  const spike = page.getByRole('checkbox', { name: /jumps for a single row/ });
  await expect(spike).toBeChecked();
  await expect(button(phone, 'Take in 2,661 readings')).toBeVisible();
  await spike.tap();
  await expect(spike).not.toBeChecked();
  await expect(button(phone, 'Take in 2,662 readings')).toBeVisible();
  await spike.tap();
  await press(phone, 'Take in 2,661 readings');

  const files = page.getByRole('list', { name: 'Logger’s files' });
  await expect(files.getByRole('listitem')).toHaveCount(3);
  await page.reload();
  await expect(files.getByRole('listitem')).toHaveCount(3);

  await page.getByRole('link', { name: 'The chart, large' }).tap();
  await expect(heading(phone)).toHaveText('The cure, large');
  await expect(page.getByText(/^All of it: /)).toBeVisible();
  await look(page, 'chart');
  await noViolations(page);
  await press(phone, '+ Closer');
  await press(phone, '+ Closer');
  await expect(page.getByText(/^All of it: /)).toHaveCount(0);
  await press(phone, 'Later ›');
  await look(page, 'chart-closer');
  await press(phone, 'All of it');
  await expect(page.getByText(/^All of it: /)).toBeVisible();

  await page.goto('./#/data');
  const saved = page.waitForEvent('download');
  await press(phone, 'Save the backup');
  const text = await readFile(await (await saved).path(), 'utf8');
  const kept = text.split('\n').filter((line) => line.includes('"type":"text/csv"'));
  expect(kept).toHaveLength(3);
  const bytes = await readFile(join(folder, 'faults.csv'), 'base64');
  expect(kept.some((line) => JSON.parse(line).data === bytes)).toBe(true);
});

/** Thirty rows a minute apart, their dates to be made. */
const small = (date: (minute: number) => string) => ({
  name: 'small.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(
    `Time,Air\n${Array.from({ length: 30 }, (_, i) => `${date(i)}:00,${20 + i}.5`).join('\n')}`,
  ),
});
const two = (n: number) => String(n).padStart(2, '0');
const onTheDay = (i: number) => `2026-05-16 14:${two(i)}`;

test('a date that can be two days is asked about before anything is taken in', async ({ page }) => {
  const phone = await open(page, '/oven/oven/logger');
  await page.locator('input[type=file]').setInputFiles(small((i) => `03/04/2026 14:${two(i)}`));
  await expect(page.getByText('03/04/2026 can be two days')).toBeVisible();
  await expect(button(phone, 'Say first which day its dates mean')).toBeDisabled();
  await press(phone, /^Mar 4.*month, day, year$/);
  await expect(page.getByText('Not the day of this oven load')).toBeVisible();
  await press(phone, loosely('It began when the oven was lit, 2:00 PM'));
  await expect(page.getByText('Not the day of this oven load')).toHaveCount(0);
  await expect(page.getByText(loosely('2:00 PM to 2:29 PM'))).toBeVisible();
  await press(phone, 'Take in 30 readings');
  await expect(page.getByRole('link', { name: /small\.csv/ })).toContainText('30');
});

test('the same file twice adds nothing, and what has no readings is refused in a sentence', async ({
  page,
}) => {
  const phone = await open(page, '/oven/oven/logger');
  await page.locator('input[type=file]').setInputFiles(small(onTheDay));
  await press(phone, 'Take in 30 readings');
  await page.getByRole('link', { name: 'Take in a logger’s file' }).tap();
  await page.locator('input[type=file]').setInputFiles({ ...small(onTheDay), name: 'copy.csv' });
  await expect(page.getByText('copy.csv is in this oven load already: nothing was added.')).toBeVisible();
  await press(phone, 'Back to the oven load');
  await expect(page.getByRole('list', { name: 'Logger’s files' }).getByRole('listitem')).toHaveCount(1);

  await page.getByRole('link', { name: 'Take in a logger’s file' }).tap();
  await page.locator('input[type=file]').setInputFiles({
    name: 'letter.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('Dear builder,\nthe oven is fine.\n'),
  });
  await expect(page.getByRole('alert')).toContainText('letter.txt was not taken in');
  await noViolations(page);
});

test('a file that is read wrongly is read again another way, and struck out it is gone', async ({ page }) => {
  const phone = await open(page, '/oven/oven/logger');
  await page.locator('input[type=file]').setInputFiles(small(onTheDay));
  await press(phone, 'Take in 30 readings');
  await page.getByRole('link', { name: /small\.csv/ }).tap();
  await expect(heading(phone)).toHaveText('How this file is read');
  await page.getByLabel(/^Column 2: Air/).selectOption({ label: 'Boom no. 2' });
  await press(phone, 'Read it like this: 30 readings');
  await page.getByRole('link', { name: /small\.csv/ }).tap();
  await expect(page.getByLabel(/^Column 2: Air/)).toHaveValue('boom');
  await page.goto('./#/record/oven/oven');
  await page.getByRole('link', { name: /Logger’s file small\.csv/ }).tap();
  await holdDown(phone, /Hold to strike it out/);
  await page.goto('./#/oven/oven');
  await expect(page.getByRole('link', { name: 'Take in a logger’s file' })).toBeVisible();
  await expect(page.getByRole('link', { name: /small\.csv/ })).toHaveCount(0);
});
