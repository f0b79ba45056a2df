import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clothGroups } from '#app/planning/cutting/cloth-groups.ts';
import { type CutPiece, cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { cuttingProblem } from '#app/planning/cutting/cutting-words.ts';
import { cutOf, type LaidOut, layOut as layOutBy, type RollSettings } from '#app/planning/cutting/lay-out.ts';
import { placeCut } from '#app/planning/cutting/marks-on-roll.ts';
import { placeLabels } from '#app/planning/cutting/place-labels.ts';
import { textWidth } from '#app/planning/wall/pictures/scale.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { nestPieces, outlineArea } from '#calc';
import type { Plan } from '#shared/record/plan.ts';
import { lowerMast, upperMast, yard } from '../browser/support/walled.ts';
import { starterWallShelf } from './cut-shop.ts';

function piecesOf(plan: Plan): CutPiece[] {
  if (!hasWall(plan)) throw new Error(`${plan.name} has no wall`);
  return cutPieces(plan, starterWallShelf);
}

const layOut = (pieces: readonly CutPiece[], settings: RollSettings) =>
  layOutBy(pieces, settings, nestPieces);
const roll: RollSettings = { rollWidth: 1.27, mask: 0.0125, selvage: 0.01, tubes: 1, spliced: new Set() };
const placed = (out: LaidOut) =>
  out.nest.placements.flatMap((p) => {
    const cut = cutOf(out, p);
    return cut ? placeCut(cut, p) : [];
  });

describe('pieces laid out on a roll', () => {
  it('come by cloth, each from its own roll', () => {
    const plan = lowerMast;
    if (!hasWall(plan)) throw new Error('no wall');
    const groups = clothGroups(plan, piecesOf(plan), starterWallShelf);
    expect(groups.map((g) => [g.doc, g.pieces.map((p) => p.name)])).toEqual([
      ['starter-cloth-carbon-plain-193', ['Skin']],
      ['starter-cloth-aramid-170', ['Heel sleeve']],
    ]);
  });

  it('lie between the selvages with their masking, every mark of them too', async () => {
    const out = await layOut(piecesOf(upperMast), { ...roll, tubes: 3 });
    expect(out.nest.placements).toHaveLength(3);
    for (const { outline, marks } of placed(out)) {
      for (const { x, y } of outline) {
        expect(x).toBeGreaterThan(roll.mask - 1e-3);
        expect(x).toBeLessThan(out.nest.length - roll.mask + 1e-3);
        expect(y).toBeGreaterThan(roll.mask + roll.selvage - 1e-3);
        expect(y).toBeLessThan(roll.rollWidth - roll.mask - roll.selvage + 1e-3);
      }
      for (const { along, across } of marks) {
        expect(along).toBeLessThanOrEqual(out.nest.length);
        expect(across).toBeLessThanOrEqual(roll.rollWidth);
      }
    }
  });

  it('keep the distances between their marks, however they are turned', async () => {
    const [piece] = piecesOf(upperMast);
    const out = await layOut(piecesOf(upperMast), { ...roll, tubes: 2 });
    for (const { marks } of placed(out)) {
      const [start, end] = marks;
      if (!start || !end || !piece) throw new Error('no datum edge');
      const datum = Math.hypot(end.along - start.along, end.across - start.across);
      expect(datum).toBeCloseTo(piece.flat.length, 9);
    }
  });

  it('that are wider than the roll are not cut smaller but offered a splice', async () => {
    const [bias, outer] = piecesOf(yard);
    const out = await layOut(piecesOf(yard), roll);
    expect(out.tooWide.map((w) => w.piece.id)).toEqual([bias?.id]);
    expect(out.nest.placements.map((p) => p.id)).toEqual([outer?.id]);
    expect(out.tooWide[0]?.unplaced.splice.at.length).toBeGreaterThan(0);
  });

  it('lie on the roll as strips once a splice is taken, with no cloth lost but for the lap', async () => {
    const [bias] = piecesOf(yard);
    if (!bias) throw new Error('no piece');
    const out = await layOut(piecesOf(yard), { ...roll, spliced: new Set([bias.id]) });
    const strips = out.cuts.filter((c) => c.of.id === bias.id);
    expect(strips.map((s) => s.label)).toEqual(['1a', '1b']);
    expect(out.nest.placements).toHaveLength(3);
    const area = strips.reduce((sum, s) => sum + outlineArea({ outline: s.nest.outline }), 0);
    expect(area).toBeGreaterThan(bias.area);
    expect(area).toBeLessThan(bias.area * 1.2);
  });

  it('put the fiber direction wanted about mid-piece on a tapered mandrel', () => {
    const [straight] = piecesOf(lowerMast);
    const [tapered] = piecesOf(upperMast);
    expect(straight?.warpAngle).toBe(0);
    // 360 N sin(half-angle), half of it: 3.5 wraps or so on a mandrel that loses 14 mm in 1.8 m.
    const half = (Math.PI * 3.5 * 0.007) / 1.8;
    expect(tapered?.warpAngle).toBeLessThan(0);
    expect(Math.abs(tapered?.warpAngle ?? 0)).toBeCloseTo(half, 2);
  });
});

describe('a roll that cannot be', () => {
  const says = async (settings: RollSettings) => {
    try {
      await layOut(piecesOf(upperMast), settings);
    } catch (error) {
      if (error instanceof RangeError) return cuttingProblem(error, settings);
    }
    return undefined;
  };

  it('narrower than its masking says so at its field', async () => {
    expect(await says({ ...roll, rollWidth: 0.03 })).toMatchObject({
      field: 'rollWidth',
      says: expect.stringContaining('wider roll'),
    });
  });

  it('of more pieces than anybody cuts says so', async () => {
    expect(await says({ ...roll, tubes: 600 })).toMatchObject({ field: 'tubes' });
  });
});

describe('labels of a picture', () => {
  const wanted = fc.array(
    fc.record({
      text: fc.string({ minLength: 1, maxLength: 9 }),
      size: fc.constantFrom(12, 17),
      places: fc.array(
        fc.record({ x: fc.integer({ min: -20, max: 340 }), y: fc.integer({ min: -20, max: 260 }) }),
        {
          maxLength: 4,
        },
      ),
    }),
    { maxLength: 40 },
  );

  it('never lie on one another or outside, by the widths they are given', () => {
    fc.assert(
      fc.property(wanted, (all) => {
        const labels = placeLabels(all, { width: 320, height: 240 });
        const boxes = labels.map(({ x, y, text, size }) => {
          const half = textWidth(text, size) / 2;
          return { left: x - half, right: x + half, top: y - size * 0.6, bottom: y + size * 0.6 };
        });
        for (const [i, a] of boxes.entries()) {
          expect(a.left >= 0 && a.right <= 320 && a.top >= 0 && a.bottom <= 240).toBe(true);
          for (const b of boxes.slice(i + 1)) {
            const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
            expect(apart).toBe(true);
          }
        }
      }),
    );
  });
});
