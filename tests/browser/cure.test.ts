import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import ICAL from 'ical.js';
import { buildHeader, entries, lit, loadHeader, minutes } from '../app/oven-loads.ts';
import { button, follow, heading, loosely, type Phone, phoneWithOwnClock, press } from './support/hands.ts';
import { seed } from './support/seed.ts';

const boom = buildHeader({ schedule: loadHeader.schedule });
const cureAt = boom.route.findIndex((s) => s.stage === 'cure');
const taped = [
  boom,
  ...entries(
    'boom',
    boom.route
      .slice(0, cureAt)
      .flatMap((s) =>
        s.steps.map((step) => ({ kind: 'tick', step: step.id, round: 1, happenedAt: minutes(-60) })),
      ) as never,
  ),
];
const mast = {
  record: 'revision',
  v: 1,
  type: 'plan',
  doc: 'mast',
  id: 'mast-1',
  parents: [],
  at: minutes(-90),
  device: 'phone',
  body: {
    name: 'Upper mast',
    mandrelDiameter: 0.0381,
    tubeLength: 1.5,
    cloth: 'starter-cloth-carbon-plain-193',
    clothAmount: { by: 'mass', mass: 0.225 },
    plies: 6,
    resin: 'starter-resin-laminating-slow',
    release: 'starter-release-polyester-sleeve',
    tape: 'starter-tape-polyester-25',
    checklist: 'starter-checklist-film-sleeve',
    goal: boom.goal,
    schedule: loadHeader.schedule,
    serviceTemperature: 323.15,
  },
};

async function open(page: Page, hash: string, records: readonly object[]): Promise<Phone> {
  await page.clock.install({ time: lit });
  await page.goto(`./#${hash}`);
  await page.locator('h1').waitFor();
  await seed(page, records);
  await page.locator('h1').waitFor();
  return phoneWithOwnClock(page);
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const stages = (page: Page) => page.locator('.stage-title');
const noViolations = async (page: Page) =>
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

async function write(page: Page, label: string, figure: string): Promise<void> {
  await field(page, label).fill(figure);
  await field(page, label).blur();
}

test('a cure in five stages breaks the film’s limit, is told what would fit, takes it, and is lit; its reminders go into a calendar', async ({
  page,
}) => {
  const phone = await open(page, '/oven/new', taped);
  await expect(stages(page)).toHaveText([/^Ramp to 66/, /^Hold 3/, /^Cool to 35/]);

  await press(phone, /^1 Ramp to/);
  await write(page, 'Ramps to', '49');
  await press(phone, 'Hold');
  await write(page, 'Lasts', '30 min');
  await press(phone, 'Ramp');
  await write(page, 'Ramps to', '88');
  await expect(stages(page)).toHaveText([/^Ramp to 49/, /^Hold 30/, /^Ramp to 88/, /^Hold 3/, /^Cool to 35/]);

  // 3 min up from 82 to 88 at 2 a minute, 3 h held, 4 min down at 1.5.
  const broken = page.getByRole('region', { name: 'Limits gone over' });
  await expect(broken).toContainText(loosely('6 °C over what the release film bears'));
  await expect(broken).toContainText(loosely('Over it for 3 h 07'));
  const fits = broken.getByText(/^82.°C for \d+.h/);
  await expect(fits).toBeVisible();
  await noViolations(page);

  await button(phone, /^Take 82/).tap();
  await expect(broken).toHaveCount(0);
  await expect(stages(page).nth(2)).toHaveText(/^Ramp to 82/);
  await press(phone, 'Undo');
  await expect(broken).toContainText(loosely('6 °C over'));
  await button(phone, /^Take 82/).tap();

  await press(phone, 'Oven is lit');
  await expect(heading(phone)).toHaveText(loosely('Warming to 82 °C'));
  await follow(phone, 'Reminders to read it');
  await expect(page.getByText('A closed app cannot ring')).toBeVisible();
  const [file] = await Promise.all([page.waitForEvent('download'), press(phone, 'Save the calendar file')]);
  expect(file.suggestedFilename()).toBe('oven-load-1.ics');
  const calendar = new ICAL.Component(ICAL.parse(await readFile(await file.path(), 'utf8')));
  const events = calendar.getAllSubcomponents('vevent').map((e) => new ICAL.Event(e));
  expect(events.length).toBeGreaterThan(6);
  expect(events[0]?.startDate.toJSDate().getTime()).toBeGreaterThan(lit);
  expect(events.at(-1)?.summary).toBe('Oven load 1: hold done');
  for (const event of events) expect(event.component.getAllSubcomponents('valarm')).toHaveLength(1);
  await noViolations(page);
});

test('a plan’s cure is changed on a screen of its own, with a postcure, and stands after a reload', async ({
  page,
}) => {
  const phone = await open(page, '/plan/mast', [mast]);
  await follow(phone, 'Change its cure');
  await expect(heading(phone)).toHaveText('Cure');
  await press(phone, 'Add a postcure');
  await press(phone, /^4 Ramp to/);
  await expect(field(page, 'How fast up')).toHaveValue(loosely('15 °C/h'));
  await press(phone, 'How fast up: more');
  await press(phone, 'How fast up: more');
  await expect(
    page.getByText(loosely('Stage 4 goes at 25 °C/h with nothing to hold the tube')),
  ).toBeVisible();
  await press(phone, 'How fast up: less');
  await expect(page.getByText(/with nothing to hold the tube/)).toHaveCount(0);
  await press(phone, 'Save the cure');
  await expect(heading(phone)).toHaveText('Upper mast');
  await page.reload();
  await expect(page.getByText('Plan · revision 2')).toBeVisible();
  await follow(phone, 'Change its cure');
  await expect(stages(page)).toHaveCount(6);
  await noViolations(page);
});

test('a temperature that only makes sense in the other unit is asked about, kept, and stops the saving', async ({
  page,
}) => {
  const phone = await open(page, '/plan/mast/cure', [mast]);
  await press(phone, /^1 Ramp to/);
  await write(page, 'Ramps to', '150');
  await expect(page.getByRole('alert')).toContainText(loosely('Do you mean 150 °F = 65.6 °C?'));
  await expect(field(page, 'Ramps to')).toHaveValue('150');
  await press(phone, 'Save the cure');
  await expect(heading(phone)).toHaveText('Cure');
  await press(phone, loosely('Yes, 150 °F'));
  await expect(stages(page).first()).toHaveText(loosely('Ramp to 65.6 °C'));
  await press(phone, 'Save the cure');
  await expect(heading(phone)).toHaveText('Upper mast');
});
