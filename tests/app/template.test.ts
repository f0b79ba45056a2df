import DxfParser, { type ILwpolylineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutPiece, cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { templateDxf } from '#app/planning/wall/template-dxf.ts';
import { templateMarks } from '#app/planning/wall/template-marks.ts';
import { stacked, templateSvg } from '#app/planning/wall/template-svg.ts';
import { crossings, sheetName, sheetsFor } from '#app/planning/wall/template-tiles.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { outlineArea, outlineBounds } from '#calc';
import type { Plan } from '#shared/record/plan.ts';
import { lowerMast, upperMast, yard } from '../browser/support/walled.ts';
import { starterWallShelf } from './cut-shop.ts';

function piecesOf(plan: Plan): CutPiece[] {
  if (!hasWall(plan)) throw new Error(`${plan.name} has no wall`);
  return cutPieces(plan, starterWallShelf);
}
const plans = [lowerMast, upperMast, yard];

describe('a DXF file read by a general parser', () => {
  it.each(plans)(
    'holds a closed polyline in mm on a layer of its own for each piece of $name',
    async (plan) => {
      const pieces = piecesOf(plan);
      const drawing = new DxfParser().parseSync(await templateDxf(pieces));
      expect(drawing?.header.$INSUNITS).toBe(4);
      for (const piece of pieces) {
        const layer = `${piece.number} ${piece.name}`;
        const own = drawing?.entities.filter((e) => e.layer === layer) as ILwpolylineEntity[];
        expect(own).toHaveLength(1);
        expect(own[0]?.type).toBe('LWPOLYLINE');
        expect(own[0]?.shape).toBe(true);
        const area = outlineArea({
          outline: (own[0]?.vertices ?? []).map(({ x, y }) => ({ x: x / 1000, y: y / 1000 })),
        });
        expect(area / piece.area).toBeCloseTo(1, 6);
      }
    },
  );

  it('takes any name for a layer', async () => {
    const [piece] = piecesOf(upperMast);
    if (!piece) throw new Error('no piece');
    const odd = { ...piece, name: 'Skin: 4/2, "smooth" <new>' };
    const drawing = new DxfParser().parseSync(await templateDxf([odd]));
    const layers = Object.keys(drawing?.tables.layer.layers ?? {});
    expect(layers).toContain('1 Skin  4 2   smooth   new');
  });
});

describe('an SVG file', () => {
  it('says its size in millimeters and counts in them', () => {
    const svg = templateSvg('Lower mast', piecesOf(lowerMast));
    const [, width = '', , boxWidth = ''] =
      /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) /.exec(svg) ?? [];
    expect(width).toBe(boxWidth);
    expect(Number(width)).toBeCloseTo(2500, 6);
  });

  it('carries names with signs that mean something in a file', () => {
    const [piece] = piecesOf(upperMast);
    if (!piece) throw new Error('no piece');
    const svg = templateSvg('A & B', [{ ...piece, name: '<Skin> & "core"' }]);
    expect(svg).toContain('<title>A &amp; B</title>');
    expect(svg).toContain('<title>&lt;Skin&gt; &amp; &quot;core&quot;</title>');
  });

  it('lays no piece on another', () => {
    const boxes = stacked(piecesOf(yard)).map(({ piece, move }) => {
      const { minY, maxY } = outlineBounds({ outline: piece.flat.outline });
      return [minY + move.y, maxY + move.y];
    });
    expect(boxes[1]?.[0]).toBeGreaterThan(boxes[0]?.[1] ?? Number.POSITIVE_INFINITY);
  });
});

describe('sheets at true size', () => {
  const cases = plans
    .flatMap((plan) => piecesOf(plan))
    .flatMap((piece) => (['a4', 'letter'] as const).map((paper) => ({ piece, paper, name: piece.name })));

  it.each(cases)('hold every point of $name on $paper', ({ piece, paper }) => {
    const { tiles } = sheetsFor(piece.flat, paper);
    for (const { x, y } of piece.flat.outline) {
      const slack = 1e-9;
      const on = tiles.some(
        (t) =>
          x >= t.x - slack && x <= t.x + t.width + slack && y >= t.y - slack && y <= t.y + t.height + slack,
      );
      expect(on).toBe(true);
    }
  });

  it('leave out those on which there would be nothing', () => {
    const [skin] = piecesOf(lowerMast);
    if (!skin) throw new Error('no piece');
    const tiling = sheetsFor(skin.flat, 'a4');
    expect(tiling.tiles.length).toBeLessThan(tiling.columns * tiling.rows);
    expect(tiling.tiles.length).toBeGreaterThan(skin.area / (tiling.sheet.width * tiling.sheet.height));
  });

  it('share a cross with each neighbor', () => {
    const [skin] = piecesOf(lowerMast);
    if (!skin) throw new Error('no piece');
    const tiling = sheetsFor(skin.flat, 'letter');
    const crosses = crossings(tiling);
    const on = (t: (typeof tiling.tiles)[number]) =>
      crosses.filter((c) => c.x > t.x && c.x < t.x + t.width && c.y > t.y && c.y < t.y + t.height);
    for (const a of tiling.tiles) {
      expect(on(a).length).toBe(4);
      for (const b of tiling.tiles) {
        if (b.row !== a.row || b.column !== a.column + 1) continue;
        expect(on(a).filter((c) => on(b).includes(c)).length).toBe(2);
      }
    }
  });

  it('have a name of their own each', () => {
    fc.assert(
      fc.property(
        fc.nat(200),
        fc.nat(200),
        fc.nat(200),
        fc.nat(200),
        (row, column, otherRow, otherColumn) => {
          const same = row === otherRow && column === otherColumn;
          expect(sheetName({ row, column }) === sheetName({ row: otherRow, column: otherColumn })).toBe(same);
        },
      ),
    );
  });
});

describe('the marks drawn on the cloth', () => {
  it.each(plans)('of $name say warp, datum edge, end 0, inside, rolling and turning', (plan) => {
    for (const piece of piecesOf(plan)) {
      const said = templateMarks(piece)
        .texts.map((t) => t.text)
        .join(' ');
      for (const word of [
        'Warp',
        'Datum edge',
        'End 0',
        'Inside face up',
        'Rolls this way',
        'seen from end 0',
      ]) {
        expect(said).toContain(word);
      }
    }
  });
});
