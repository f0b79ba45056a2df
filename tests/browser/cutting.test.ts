import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import DxfParser, { type ILwpolylineEntity } from 'dxf-parser';
import { type CutPiece, cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { outlineArea } from '#calc';
import { starterWallShelf } from '../app/cut-shop.ts';
import { follow, loosely, phoneOnRealTime, press, typeOnKeys } from './support/hands.ts';
import { readPdf } from './support/pdf.ts';
import { seed } from './support/seed.ts';
import { lowerMast, mastBuild, walledPlans, yard, yardBuild } from './support/walled.ts';

async function open(page: Page, at: string): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [...walledPlans, mastBuild, yardBuild]);
  await expect(page.getByText('Lower mast no. 1').first()).toBeVisible();
  await page.goto(`./#${at}`);
}

function piecesOf(plan: typeof lowerMast): CutPiece[] {
  if (!hasWall(plan)) throw new Error('no wall');
  return cutPieces(plan, starterWallShelf);
}

async function download(page: Page, name: RegExp): Promise<{ name: string; text: string }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).tap()]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

for (const { paper, width, height, piece } of [
  { paper: 'A4', width: 210, height: 297, piece: 'skin' },
  { paper: 'Letter', width: 215.9, height: 279.4, piece: 'heel' },
]) {
  test(`a template on ${paper} is true to a tenth of a millimeter on every sheet`, async ({ page }) => {
    await open(page, '/plan/lower-mast/template');
    await page.getByLabel('Piece').selectOption(piece);
    await page.getByRole('button', { name: paper, exact: true }).tap();
    const button = page.getByRole('button', { name: /^Print \d+ sheets$/ });
    const count = Number(/\d+/.exec((await button.textContent()) ?? '')?.[0]);
    const sheets = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    expect(sheets).toHaveLength(count);
    for (const sheet of sheets) {
      expect([sheet.width, sheet.height].sort((a, b) => a - b).map(Math.round)).toEqual(
        [width, height].map(Math.round),
      );
      const check = sheet.lines.filter((mm) => Math.abs(mm - 100) < 5);
      expect(check).toHaveLength(1);
      expect(Math.abs((check[0] ?? 0) - 100)).toBeLessThan(0.1);
    }
  });
}

test('the files for a cutter hold every piece at true size', async ({ page }) => {
  await open(page, '/plan/lower-mast/template');
  const pieces = piecesOf(lowerMast);

  const svg = await download(page, /^SVG/);
  expect(svg.name).toBe('Lower-mast.svg');
  const areas = await page.evaluate((text) => {
    const drawing = new DOMParser().parseFromString(text, 'image/svg+xml');
    return [...drawing.querySelectorAll<SVGPathElement>('path.outline')].map((path) => {
      const numbers = (path.getAttribute('d') ?? '').match(/-?[\d.]+/g)?.map(Number) ?? [];
      let twice = 0;
      for (let i = 0; i < numbers.length; i += 2) {
        const [x = 0, y = 0] = numbers.slice(i, i + 2);
        const [nextX = numbers[0] ?? 0, nextY = numbers[1] ?? 0] = numbers.slice(i + 2, i + 4);
        twice += x * nextY - nextX * y;
      }
      return Math.abs(twice) / 2e6;
    });
  }, svg.text);
  expect(areas).toHaveLength(pieces.length);
  for (const [i, piece] of pieces.entries())
    expect(Math.abs((areas[i] ?? 0) / piece.area - 1)).toBeLessThan(1e-4);

  const dxf = await download(page, /^DXF/);
  expect(dxf.name).toBe('Lower-mast.dxf');
  const drawing = new DxfParser().parseSync(dxf.text);
  for (const piece of pieces) {
    const [outline] = drawing?.entities.filter((e) => e.layer === `${piece.number} ${piece.name}`) ?? [];
    const corners = (outline as ILwpolylineEntity | undefined)?.vertices ?? [];
    const area = outlineArea({ outline: corners.map(({ x, y }) => ({ x: x / 1000, y: y / 1000 })) });
    expect(Math.abs(area / piece.area - 1)).toBeLessThan(1e-4);
  }
});

test('on a phone of 320 px no label of a layout lies on another', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page, '/plan/lower-mast/cutting');
  for (const plan of ['lower-mast', 'upper-mast', 'yard']) {
    await page.goto(`./#/plan/${plan}/cutting`);
    await page.getByLabel('Tubes at once').fill('3');
    await expect(page.locator('svg.nest').first()).toBeVisible();
    for (const picture of await page.locator('svg.nest').all()) {
      await expect(picture).toHaveAttribute('aria-label', /^3 pieces on the roll/);
      const boxes = await picture.locator('text').evaluateAll((all) =>
        all.map((text) => {
          const { left, right, top, bottom } = text.getBoundingClientRect();
          return { text: text.textContent, left, right, top, bottom };
        }),
      );
      expect(boxes.length).toBeGreaterThan(5);
      for (const [i, a] of boxes.entries()) {
        expect(a.left, `${plan}: ${a.text}`).toBeGreaterThanOrEqual(0);
        expect(a.right, `${plan}: ${a.text}`).toBeLessThanOrEqual(320);
        for (const b of boxes.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart, `${plan}: ${a.text} and ${b.text}`).toBe(true);
        }
      }
    }
  }
});

test('a piece wider than its roll is spliced only when the builder says so', async ({ page }) => {
  const phone = phoneOnRealTime(page);
  await open(page, '/plan/yard/cutting');
  await expect(page.getByText('Bias skin does not fit on this roll')).toBeVisible();
  await expect(page.getByRole('img', { name: /^1 pieces? on the roll/ })).toBeVisible();
  await press(phone, 'Splice Bias skin of 2 strips');
  await expect(page.getByRole('img', { name: /^3 pieces on the roll/ })).toBeVisible();
  await page.getByLabel('Width of the roll').fill('20 mm');
  await expect(page.getByText(/a wider roll or less masking leaves cloth to cut/)).toBeVisible();
  await expect(page.getByRole('img', { name: /^3 pieces on the roll/ })).toBeVisible();
});

test('cloth is cut and weighed piece by piece, and a heavy one can go on the shelf', async ({ page }) => {
  const phone = phoneOnRealTime(page);
  const [bias, outer] = piecesOf(yard);
  const grams = (area = 0) => (area * 0.193 * 1.08 * 1000).toFixed(1);
  await open(page, '/build/yard-build/cut-1');
  await follow(phone, 'Cut list');
  await press(phone, 'Bias skin is cut');
  await expect(page.getByRole('checkbox', { name: /Bias skin/ })).toBeChecked();
  await press(phone, 'Weigh Bias skin');
  await typeOnKeys(phone, grams(bias?.area));
  await press(phone, loosely(`It weighs ${grams(bias?.area)} g`));
  await expect(page.getByText(/8.% heavier than 193.g/)).toBeVisible();
  await press(phone, 'Weigh Outer skin');
  await typeOnKeys(phone, grams(outer?.area));
  await press(phone, loosely(`It weighs ${grams(outer?.area)} g`));
  await expect(page.getByRole('checkbox', { name: /Outer skin/ })).toBeChecked();
  // With the last one weighed its sum is what resin is mixed for: no press more.
  const all = grams((bias?.area ?? 0) + (outer?.area ?? 0));
  await expect(page.getByRole('button', { name: 'On with the route' })).toBeVisible();
  await press(phone, loosely('Put 208 g/m² on the shelf'));
  await expect(page.getByText(/The shelf has 208.g.m² for it now/)).toBeVisible();
  await page.reload();
  await expect(page.getByText(/The shelf has 208.g.m² for it now/)).toBeVisible();
  await press(phone, 'On with the route');
  await expect(page.getByRole('checkbox', { name: 'Dry cloth weighed and written down' })).toBeChecked();
  await page.goto('./#/mix/yard-build');
  await expect(page.getByText(loosely(`For ${all} g of cloth, as weighed.`))).toBeVisible();
});

test('an edge that landed more than 5 mm off asks for a look', async ({ page }) => {
  const phone = phoneOnRealTime(page);
  await open(page, '/build/yard-build/wrap-1');
  await follow(phone, 'Where the outer edge landed');
  await press(phone, loosely('Read it at 10 mm'));
  await press(phone, 'Short of it');
  await typeOnKeys(phone, '6');
  await press(phone, loosely('Edge is 6 mm short of it'));
  await expect(page.getByText(/Outer skin at 10.mm: 6.mm short of it. Look/)).toBeVisible();
  await page.goto('./#/record/build/yard-build');
  await expect(page.getByText(/Outer skin against its mark at 10.mm/)).toBeVisible();
});
