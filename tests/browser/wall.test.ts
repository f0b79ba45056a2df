import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import {
  crowded,
  dragThumb,
  expectWidths,
  field,
  newPlan,
  openPiece,
  station,
  write,
} from './support/drawing.ts';
import { button, follow, heading, loosely, type Phone, phoneOnRealTime, press } from './support/hands.ts';

const lowerMast = { name: 'Lower mast', diameter: '50.8', length: '2400', plies: '3' };

/** Of 200 g/m2 carbon at 35 % fiber, as the shelf has it: 0.2/(1790 x 0.35) m a ply. */
const ply = 200 / 1790 / 0.35;
/** mm of cloth for whole plies, lap and all. */
const width = (plies: number, diameter = 50.8, lap = 15) =>
  String(Math.round(Math.PI * plies * (diameter + plies * ply) + lap));

async function atBench(page: Page): Promise<Phone> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  return phoneOnRealTime(page);
}

/** 3 plies, 6 at the partners, 2 at the head. */
async function drawLowerMast(phone: Phone): Promise<void> {
  await newPlan(phone, lowerMast);
  await openPiece(phone, 1);
  await station(phone, '500', '3');
  await station(phone, '560', '6');
  await station(phone, '800', '6');
  await station(phone, '1400', '3');
  await press(phone, 'Station after');
  await write(phone, 'Plies', '2');
}

test('the lower mast is drawn from nothing: 3 plies, 6 at the partners, 2 at the head', async ({ page }) => {
  const phone = await atBench(page);
  const began = Date.now();
  await drawLowerMast(phone);
  // w = pi n (D + n t) + lap, by hand
  await expectWidths(phone, [width(3), width(6), `${width(2)} mm`]);
  expect([width(3), width(6), width(2)]).toEqual(['503', '1009', '338']);
  await press(phone, 'Piece is drawn: back to the wall');
  await expect(page.getByRole('list', { name: 'Pieces in wrap order' })).toContainText('2 to 6 plies');
  await press(phone, 'Save this wall');
  await expect(heading(phone)).toHaveText('Lower mast');
  const main = page.getByRole('main');
  await expect(main).toContainText('against 6 plies throughout');
  await expect(main.getByText(/^−4\d\s%$/)).toBeVisible();
  expect(Date.now() - began).toBeLessThan(180_000);
  await page.reload();
  await expect(page.getByRole('img', { name: /^Wall along the tube, 2 to 6 plies/ })).toBeVisible();
});

test('at a station any one of plies, wall and width gives the other two', async ({ page }) => {
  const phone = await atBench(page);
  await newPlan(phone, lowerMast);
  await openPiece(phone, 1);
  await write(phone, 'Cloth width', '1008.67');
  await expect(field(phone, 'Plies')).toHaveValue('6');
  await write(phone, 'Wall', '1.28');
  await expect(field(phone, 'Plies')).toHaveValue(/^4\.01/);
  await press(phone, 'Plies: more');
  await expect(field(phone, 'Plies')).toHaveValue('5');
  await expect(field(phone, 'Cloth width')).toHaveValue(/^838/);
});

test('a thumb moves a station by steps, the figure stands above it, and undo takes the whole drag back', async ({
  page,
}) => {
  const phone = await atBench(page);
  await drawLowerMast(phone);
  const handle = page.locator('.station-handle').nth(4);
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('no handle on the screen');
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const said = await dragThumb(page, from, { x: from.x + 24, y: from.y - 42 });
  expect(said).toMatch(/^\d+ plies\s+\d+0\smm\s+\d+\smm wide$/);
  await expect(page.getByText('Station 5 of 6')).toBeVisible();
  const plies = await field(phone, 'Plies').inputValue();
  expect(said.startsWith(`${plies} plies`)).toBe(true);
  expect(Number(plies)).toBeGreaterThan(3);
  await press(phone, 'Undo');
  await expect(field(phone, 'Plies')).toHaveValue('3');
  await expect(field(phone, 'From end 0')).toHaveValue(loosely('1400 mm'));
});

test('an upper mast on a tapered mandrel: cut wider where it is thicker, and its fiber drift split', async ({
  page,
}) => {
  const phone = await atBench(page);
  await newPlan(phone, { name: 'Upper mast', diameter: '38', length: '1900', plies: '4' });
  await page.getByRole('link', { name: /^Mandrel/ }).tap();
  await press(phone, 'Tapered');
  await write(phone, 'Bare diameter at its far end', '22');
  await write(phone, 'Its far end, from end 0', '1900');
  await press(phone, 'Mandrel is set: back to the wall');
  await openPiece(phone, 1);
  await write(phone, 'Lap', '0');
  // Round the arc of end 0 it is pi n (D + n t); square from the datum edge the arc is a hair short of that.
  const picture = page.getByRole('img', { name: /^Cut piece/ }).first();
  const atEnd0 = Number(
    /\d{3}/.exec((await picture.locator('.picture-number').first().textContent()) ?? '')?.[0],
  );
  const round = Math.PI * 4 * (38 + 4 * ply);
  expect(atEnd0).toBeGreaterThan(round - 5);
  expect(atEnd0).toBeLessThanOrEqual(round + 0.5);
  // 360 N sin(half-angle): 4 wraps, 16 mm on the diameter in 1900 mm
  const drift = 360 * 4 * Math.sin(Math.atan(8 / 1900));
  await expect(page.getByText(loosely(`the fiber turns by ${drift.toFixed(1)}°`))).toBeVisible();
  await press(phone, /^Split it about mid-piece/);
  await expect(page.getByText(/Split: half of it is off each way/)).toBeVisible();
  await press(phone, 'Piece is drawn: back to the wall');
  await press(phone, 'Save this wall');
  await expect(page.getByRole('main')).toContainText(loosely('38 mm to 22 mm'));
});

test('a figure that cannot be is told at its field, and the last good picture stays', async ({ page }) => {
  const phone = await atBench(page);
  await drawLowerMast(phone);
  const picture = page
    .getByRole('img', { name: /^Cut piece/ })
    .first()
    .locator('.picture-cloth');
  const good = await picture.getAttribute('d');
  await press(phone, 'Station before');
  const at = async (label: string, figure: string, says: RegExp) => {
    await write(phone, label, figure);
    await expect(page.getByRole('main').getByRole('alert').filter({ hasText: says })).toBeVisible();
    await expect(field(phone, label)).toHaveValue(figure);
    expect(await picture.getAttribute('d')).toBe(good);
    await write(phone, label, label === 'From end 0' ? '1400' : '3');
  };
  await at('From end 0', '700', /^Station 5 lies between 801\smm and 2399\smm/);
  await at('From end 0', '2400', /^Station 5 lies between/);
  await at('Plies', '0', /^Zero will not do here/);
  await at('Plies', '-2', /cannot be below zero/);
  await at('Plies', 'three', /is not a number/);
  await write(phone, 'Cloth width', '10');
  await expect(page.getByRole('alert').filter({ hasText: /wider than its lap of 15\smm/ })).toBeVisible();
});

test('a tube longer than its mandrel is told where it is set, and cannot be saved', async ({ page }) => {
  const phone = await atBench(page);
  await newPlan(phone, lowerMast);
  await page.getByRole('link', { name: /^Mandrel/ }).tap();
  await write(phone, 'Its far end, from end 0', '2000');
  await expect(page.getByRole('alert')).toContainText(
    loosely('The mandrel ends at 2000 mm, before the tube does'),
  );
  await press(phone, 'Mandrel is set: back to the wall');
  await expect(page.getByRole('alert')).toContainText(loosely('The mandrel ends at 2000 mm'));
  await expect(button(phone, 'It cannot be rolled yet')).toBeVisible();
  await press(phone, 'Undo');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('a wall open somewhere says where, until another piece closes it', async ({ page }) => {
  const phone = await atBench(page);
  await newPlan(phone, lowerMast);
  await openPiece(phone, 1);
  await write(phone, 'From end 0', '300');
  await expect(page.getByText(loosely('The tube is open at 0 mm'))).toBeVisible();
  await press(phone, 'Piece is drawn: back to the wall');
  await expect(button(phone, 'The tube is open somewhere')).toBeVisible();
  await page.getByRole('group', { name: 'Add a piece on top' }).getByRole('button', { name: 'Cloth' }).tap();
  await expect(page.getByText('piece 2 of 2')).toBeVisible();
  await press(phone, 'Piece is drawn: back to the wall');
  await expect(button(phone, 'Save this wall')).toBeVisible();
});

test('pieces are added, turned, put in another order and taken out', async ({ page }) => {
  const phone = await atBench(page);
  await newPlan(phone, lowerMast);
  const add = page.getByRole('group', { name: 'Add a piece on top' });
  await add.getByRole('button', { name: 'Core' }).tap();
  await press(phone, 'Piece is drawn: back to the wall');
  await add.getByRole('button', { name: 'Cloth' }).tap();
  await press(phone, 'Bias 45°');
  await write(phone, 'Starting edge at', '120');
  await press(phone, 'Wrap it earlier');
  await expect(page.getByText('piece 2 of 3')).toBeVisible();
  await press(phone, 'Piece is drawn: back to the wall');
  const pieces = page.getByRole('list', { name: 'Pieces in wrap order' });
  await expect(pieces.getByRole('link').nth(2)).toContainText('bias 45°');
  await expect(page.getByRole('main')).toContainText('Core');
  await openPiece(phone, 3);
  await press(phone, 'Take it out');
  await expect(pieces.getByRole('link')).toHaveCount(3);
});

test('at 320 px no label lies on another, on any picture of a wall', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  const phone = await atBench(page);
  await drawLowerMast(phone);
  await expect.poll(() => crowded(page)).toEqual([]);
  await press(phone, 'Piece is drawn: back to the wall');
  await press(phone, 'Set');
  await write(phone, 'Pressed at', '100');
  await expect.poll(() => crowded(page)).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBe(320);
  for (const [i, name] of ['along', 'unrolled', 'cut', 'side', 'flat-1'].entries()) {
    await page.evaluate((to) => {
      location.hash = location.hash.replace(/wall.*/, `wall/picture/${to}`);
    }, name);
    await expect(page.getByRole('main').getByRole('img').first()).toBeVisible();
    await expect.poll(() => crowded(page), `picture ${i}: ${name}`).toEqual([]);
  }
});

test('a cut across follows the thumb along the tube, and says how the seam lies to the load', async ({
  page,
}) => {
  const phone = await atBench(page);
  await drawLowerMast(phone);
  await press(phone, 'Piece is drawn: back to the wall');
  await page.getByRole('slider', { name: 'Station' }).fill('2.4');
  await expect(page.getByRole('img', { name: loosely('Cross-section at 2400 mm') })).toBeVisible();
  await expect(page.getByText(/^2 plies all round, one more from 0° to/)).toBeVisible();
  await press(phone, 'Set');
  await expect(page.getByText('Good', { exact: true }).first()).toBeVisible();
  await write(phone, 'Pressed at', '200');
  await expect(page.getByText(/turn the starting edge by about/)).toBeVisible();
});

test('the editor is readable for a screen reader and by contrast', async ({ page }) => {
  const phone = await atBench(page);
  await drawLowerMast(phone);
  const faults = async () => {
    const { violations } = await new AxeBuilder({ page }).analyze();
    return violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target).join(', ')}`);
  };
  expect(await faults()).toEqual([]);
  await follow(phone, '‹ Wall');
  await expect(heading(phone)).toHaveText('Wall and cloth');
  expect(await faults()).toEqual([]);
});
