import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { extractText, getDocumentProxy } from 'unpdf';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { caseOfLoads, foot, force, rest, tipPulled } from '../app/loads-of.ts';
import { crowded } from './support/drawing.ts';
import { follow, heading, loosely, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { appIsKept, unplug } from './support/offline.ts';
import { seed } from './support/seed.ts';
import { lowerMast, mastBuild, planRevision } from './support/walled.ts';

test.use({ serviceWorkers: 'allow' });

const home = '/plan/lower-mast/loads';
const field = (page: Page, label: string) => page.getByRole('textbox', { name: label, exact: true });
const main = (page: Page) => page.getByRole('main');
const go = async (page: Page, to: string) => {
  await page.goto(`./#${to}`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
};

/** A phone with the lower mast of 2.4 m among its plans, loaded as told. */
async function withMast(page: Page, loads?: LoadPlan): Promise<Phone> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [planRevision('lower-mast', loads ? { ...lowerMast, loads } : lowerMast)]);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  return phoneOnRealTime(page);
}

/** Held at its foot, 40 N at its tip, a spread load over its upper part; factors set. */
const full: LoadPlan = tipPulled(2.4, {
  supports: [foot, rest(0.6)],
  cases: [
    caseOfLoads([
      force(2.4, 40, { typed: '9 lbf' }),
      { id: 'sail', kind: 'spread', from: 0.6, to: 2.4, atFrom: 30, atTo: 10, typed: '30 N/m, 10 N/m' },
    ]),
    caseOfLoads(
      [
        { id: 'twist', kind: 'torque', at: 2.4, torque: 8 },
        { id: 'press', kind: 'axial', at: 2.4, force: -250 },
        { id: 'up', kind: 'point', at: 1.2, force: -30 },
      ],
      { id: 'wishbone', name: 'Wishbone', loadFactor: 1.5 },
    ),
  ],
  mostDeflection: 0.3,
  fittings: [
    { id: 'band', kind: 'clamp', name: 'Gooseneck band', at: 0.7, width: 0.04, force: 150 },
    {
      id: 'ferrule',
      kind: 'bond',
      name: 'Head ferrule',
      at: 2.38,
      length: 0.04,
      glue: 0.0003,
      shearModulus: 1e9,
      shearStrength: 20e6,
      modulus: 70e9,
      wall: 0.0015,
      force: 600,
    },
  ],
});

test('with no network a mast is held, loaded and checked by thumb, and a station of its margins picked', async ({
  page,
}) => {
  const phone = await withMast(page);
  await appIsKept(page);
  await unplug(page);
  await go(page, '/plan/lower-mast');
  await page.getByRole('link', { name: /^Loads and margins/ }).tap();
  await expect(heading(phone)).toHaveText('Held and loaded');
  await expect(main(page)).toContainText('Nothing holds the tube yet');

  await press(phone, 'Say how it is held');
  await press(phone, 'Hold it there');
  await press(phone, 'Say what pulls on it');
  await field(page, 'Force').fill('9 lbf');
  await expect(main(page)).toContainText(loosely('= 40 N'));
  await expect(field(page, 'At')).toHaveValue(loosely('2400 mm'));
  await press(phone, 'Load is in Case 1');
  await follow(phone, 'Add a load');
  await page.getByLabel('What it is').selectOption({ label: 'Spread evenly' });
  await field(page, 'Load for each length').fill('20');
  await field(page, 'Begins at').fill('600');
  await press(phone, 'Load is in Case 1');

  const loads = page.getByRole('list', { name: 'Loads' });
  await expect(loads).toContainText('written as 9 lbf');
  await expect(
    page.getByRole('img', { name: /Built in at 0.*Force at 2400.*Spread load from 600/s }),
  ).toBeVisible();
  await press(phone, 'Set the load factor of Case 1');
  await field(page, 'Load factor').fill('1.5');
  await press(phone, 'Save the change');
  await press(phone, 'Set the safety factor');
  await field(page, 'Safety factor').fill('2');
  await field(page, 'Most it may go aside').fill('300');
  await press(phone, 'It must do that');
  await press(phone, 'See the margins');

  await expect(heading(phone)).toHaveText('Margins');
  await expect(page.locator('.along-figure')).toHaveText(/Least margin, at .*[+−]\d\.\d\d/s);
  await expect(page.getByRole('list', { name: 'What rules where' })).toContainText(/rules/);
  await expect(main(page)).toContainText('Estimates for planning. Thin-wall hand layup scatters');
  await expect(main(page)).toContainText(/Under Case 1 it goes .* aside at 2400/);
  const plot = page.getByRole('img', { name: /^Margin along the tube/ });
  await plot.scrollIntoViewIfNeeded();
  const box = await plot.boundingBox();
  if (!box) throw new Error('no plot on the screen');
  await page.touchscreen.tap(box.x + 34 + (box.width - 50) / 2, box.y + 90);
  await expect(page.getByRole('region', { name: 'The picked station' })).toContainText(loosely('At 1200 mm'));
  const picked = page.getByRole('region', { name: 'The picked station' });
  for (const check of ['Largest stress', 'Tsai-Wu', 'Wall buckling', 'Ovalization', 'Shear flow'])
    await expect(picked).toContainText(check);

  await page.reload();
  await expect(heading(phone)).toHaveText('Margins');
});

test('the diagrams are picked one at a time, with the greatest value, its place and what the supports give back', async ({
  page,
}) => {
  const phone = await withMast(page, tipPulled(2.4, { cases: [caseOfLoads([force(2.4, 50)])] }));
  await go(page, home);
  await follow(phone, 'Moment and shear');
  // F L, by hand: 50 N at 2.4 m
  await expect(page.locator('.along-figure')).toHaveText(/Greatest moment, at 0\smm.*\?−?120\s*N·m/);
  await press(phone, 'Shear');
  await expect(page.locator('.along-figure')).toHaveText(/Greatest shear, at 0\smm.*\?−?50\s*N/);
  await page.getByRole('slider', { name: 'Place along the tube' }).fill('1.2');
  const picked = page.getByRole('region', { name: 'The picked station' });
  await expect(picked).toContainText(loosely('At 1200 mm'));
  await expect(picked.getByRole('row', { name: /^Moment/ })).toContainText(loosely('60 N·m'));
  await press(phone, 'Aside');
  await expect(page.locator('.along-figure')).toHaveText(/Greatest aside, at 2400\smm\d+\s*mm/);
  await expect(page.getByRole('row', { name: loosely('0 mm −50 N') })).toContainText('120');
});

test('every wrong state is told in a sentence, and the main action leads to where it is put right', async ({
  page,
}) => {
  const { safetyFactor: _, ...noSafety } = tipPulled(2.4);
  const states: [LoadPlan, RegExp, string, RegExp][] = [
    [{ supports: [], cases: [] }, /Nothing holds the tube yet/, 'Say how it is held', /New support/],
    [
      tipPulled(2.4, { supports: [rest(1)] }),
      /alone and would swing/,
      'Hold it at a second place',
      /New support/,
    ],
    [
      tipPulled(2.4, { cases: [caseOfLoads([force(2.6, 50)])] }),
      /The force of 50\sN at 2600\smm in Gust is off the tube, which ends at 2400\smm/,
      'Put the load right',
      /Change the load/,
    ],
    [noSafety, /There is no safety factor/, 'Set the safety factor', /What you ask of it/],
  ];
  for (const [loads, says, act, then] of states) {
    const phone = await withMast(page, loads);
    await go(page, `${home}/margins`);
    await expect(main(page)).toContainText(says);
    await press(phone, act);
    await expect(heading(phone)).toHaveText(then);
  }
});

test('a figure that cannot be is told at its field, and what was typed stays while something is looked up', async ({
  page,
}) => {
  const phone = await withMast(page, full);
  await go(page, `${home}/case/gust/new`);
  await press(phone, 'Load is in Gust');
  await expect(main(page)).toContainText('Write a force like');
  await field(page, 'Force').fill('40 furlongs');
  await expect(main(page)).toContainText('40 furlongs is not a force');
  await field(page, 'Force').fill('40');
  await field(page, 'At').fill('3 m');
  await press(phone, 'Load is in Gust');
  await expect(main(page)).toContainText(
    loosely('That is off the tube, which goes from 0 to 2400 mm: write a place between.'),
  );
  await go(page, '/words/moment');
  await go(page, `${home}/case/gust/new`);
  await expect(field(page, 'Force')).toHaveValue('40');
  await expect(field(page, 'At')).toHaveValue('3 m');
  await field(page, 'At').fill('1 m');
  await press(phone, 'Load is in Gust');
  await expect(page.getByRole('list', { name: 'Loads' })).toContainText(loosely('Force at 1000 mm40 N'));

  await go(page, `${home}/asked`);
  await field(page, 'Safety factor').fill('0.9');
  await press(phone, 'It must do that');
  await expect(main(page)).toContainText('A safety factor is 1 or more');
  await expect(field(page, 'Safety factor')).toHaveValue('0.9');
});

test('a load taken out comes back with Undo, and a change of the plan keeps its loads', async ({ page }) => {
  const phone = await withMast(page, full);
  await go(page, home);
  const loads = page.getByRole('list', { name: 'Loads' });
  await loads.getByRole('link', { name: /^Force at 2400/ }).tap();
  await press(phone, 'Take this load out');
  await expect(loads.getByRole('link')).toHaveCount(2);
  await press(phone, 'Undo');
  await expect(loads.getByRole('link')).toHaveCount(3);
  await go(page, '/plan/lower-mast/edit');
  await page.getByLabel('Name').fill('Lower mast, light');
  await press(phone, 'Save as a new revision');
  await expect(heading(phone)).toHaveText('Lower mast, light');
  await go(page, home);
  await expect(loads.getByRole('link')).toHaveCount(3);
});

test('on paper a build says what its tube was planned to carry, by how much, and the cautions', async ({
  page,
}) => {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const plan = planRevision('lower-mast', { ...lowerMast, loads: full });
  await seed(page, [plan, { ...mastBuild, plan }]);
  await go(page, `/record/build/${mastBuild.id}/paper`);
  const part = page.getByRole('region', { name: 'Loads and margins' });
  await expect(part).toContainText(loosely('Built in at 0 mm; Rests at 600 mm'));
  await expect(part).toContainText(loosely('Force at 2400 mm, written as 9 lbf'));
  await expect(part.getByRole('row', { name: /^Least margin, at .*mm/ })).toContainText(/[+−]\d\.\d\d/);
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ preferCSSPageSize: true })), {
    verbosity: 0,
  });
  const { text } = await extractText(pdf, { mergePages: true });
  for (const words of [
    'Loads and margins, as planned',
    'Wishbone: column buckling',
    'Head ferrule',
    'Thin-wall hand layup scatters',
    'tests and licensed review',
  ]) {
    expect(text).toContain(words);
  }
  expect(text).not.toMatch(/NaN|undefined|Infinity/);
});

const addresses = [
  '',
  '/asked',
  '/margins',
  '/lines/wishbone',
  '/support/new',
  '/support/rest-0.6',
  '/fitting/new',
  '/fitting/ferrule',
  '/case/gust',
  '/case/new',
  '/case/gust/sail',
  '/case/wishbone/twist',
];

test('no screen of loads has a fault of access, nor words of a picture on each other at 320 px', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 568 });
  await withMast(page, full);
  for (const address of addresses) {
    await go(page, home + address);
    await page.waitForTimeout(200);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(
      violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target).join(', ')}`),
      address,
    ).toEqual([]);
    expect(await crowded(page), address).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), address).toBe(320);
  }
});
