import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Nest,
  type NestPiece,
  nestPieces,
  outlineArea,
  outlineBounds,
  type Point,
  placedOutline,
  splicePiece,
} from '#calc';
import { shelfLength } from './nest-bounds.ts';

const tapered = (length: number, wide: number, narrow: number): Point[] => [
  { x: 0, y: 0 },
  { x: length, y: 0 },
  { x: length, y: narrow },
  { x: 0, y: wide },
];
const pair = (count = 2): NestPiece => ({ id: 'skin', outline: tapered(3, 0.4, 0.2), count, warpAngle: 0 });

function onRoll(pieces: readonly NestPiece[], nest: Nest): Point[][] {
  return nest.placements.map((place) => {
    const piece = pieces.find(({ id }) => id === place.id);
    return placedOutline({ ...place, outline: piece?.outline ?? [], warpAngle: piece?.warpAngle ?? 0 });
  });
}

/** Whether a point lies inside an outline by more than a distance. */
function inside({ x, y }: Point, outline: readonly Point[], by: number): boolean {
  let within = false;
  for (let k = 0; k < outline.length; k += 1) {
    const [a, b] = [outline[k], outline[(k + 1) % outline.length]];
    if (!a || !b) continue;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
    if (Math.hypot(x - a.x - share * dx, y - a.y - share * dy) <= by) return false;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / dy) * dx) within = !within;
  }
  return within;
}

function cross(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Whether two outlines lie over each other: a corner of one in the other, or sides that cross. */
function overlap(one: readonly Point[], other: readonly Point[]): boolean {
  const by = 1e-7;
  if (one.some((p) => inside(p, other, by)) || other.some((p) => inside(p, one, by))) return true;
  return one.some((a, i) => {
    const b = one[(i + 1) % one.length] ?? a;
    return other.some((c, k) => {
      const d = other[(k + 1) % other.length] ?? c;
      const slack = by * (Math.hypot(b.x - a.x, b.y - a.y) + Math.hypot(d.x - c.x, d.y - c.y));
      const [p, q, r, s] = [cross(a, b, c), cross(a, b, d), cross(c, d, a), cross(c, d, b)];
      const apart = (u: number, v: number): boolean => (u > slack && v < -slack) || (u < -slack && v > slack);
      return apart(p, q) && apart(r, s);
    });
  });
}

/** Pieces as they come off a mandrel: a straight datum edge and a free edge of any shape. */
const anyPiece = fc
  .record({
    length: fc.double({ min: 0.2, max: 3, noNaN: true }),
    edge: fc.array(fc.double({ min: 0.02, max: 0.7, noNaN: true }), { minLength: 2, maxLength: 40 }),
    count: fc.integer({ min: 1, max: 3 }),
    warpAngle: fc.constantFrom(0, 0, 0, Math.PI / 4, -Math.PI / 4, Math.PI / 2),
  })
  .map(({ length, edge, count, warpAngle }) => {
    const free = edge.map((y, k) => ({ x: length * (1 - k / (edge.length - 1)), y }));
    return { outline: [{ x: 0, y: 0 }, { x: length, y: 0 }, ...free], count, warpAngle };
  });
const anySet = fc
  .array(anyPiece, { minLength: 1, maxLength: 4 })
  .map((pieces) => pieces.map((piece, k) => ({ ...piece, id: `piece ${k}` })));
const allowance = fc.record({
  gap: fc.constantFrom(0, 0.005, 0.012),
  selvage: fc.constantFrom(0, 0.01),
  rollWidth: fc.constantFrom(0.6, 1, 1.27),
});

describe('pieces on a roll', () => {
  it('never lie over each other, keep two gaps apart, and stay between the selvages', () => {
    fc.assert(
      fc.property(anySet, allowance, (pieces, { gap, selvage, rollWidth }) => {
        const nest = nestPieces({ pieces, rollWidth, gap, selvage, tries: 6 });
        const outlines = onRoll(pieces, nest);
        outlines.forEach((outline, k) => {
          const bounds = outlineBounds({ outline });
          expect(bounds.minY).toBeGreaterThanOrEqual(selvage + gap - 1e-8);
          expect(bounds.maxY).toBeLessThanOrEqual(rollWidth - selvage - gap + 1e-8);
          expect(bounds.minX).toBeGreaterThanOrEqual(gap - 1e-8);
          expect(bounds.maxX).toBeLessThanOrEqual(nest.length - gap + 1e-8);
          for (const other of outlines.slice(0, k)) {
            expect(overlap(outline, other)).toBe(false);
            for (const point of outline) expect(farFrom(point, other)).toBeGreaterThanOrEqual(2 * gap - 1e-7);
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  it('are all there, once each, or named as not fitting', () => {
    fc.assert(
      fc.property(anySet, (pieces) => {
        const nest = nestPieces({ pieces, rollWidth: 0.6, gap: 0.01, selvage: 0.01, tries: 2 });
        const wanted = pieces.flatMap(({ id, count }) =>
          nest.unplaced.some((one) => one.id === id)
            ? []
            : Array.from({ length: count }, (_, copy) => `${id} ${copy}`),
        );
        expect(nest.placements.map(({ id, copy }) => `${id} ${copy}`).sort()).toEqual(wanted.sort());
        const area = onRoll(pieces, nest).reduce((sum, outline) => sum + outlineArea({ outline }), 0);
        if (nest.length > 0) expect(nest.share).toBeCloseTo(area / (nest.length * 0.6), 9);
      }),
      { numRuns: 30 },
    );
  });

  it('are all there however many layouts are tried, with edges of many corners on a roll they just fill', () => {
    const curved = (id: string, length: number, wide: number, narrow: number): NestPiece => {
      const free = Array.from({ length: 40 }, (_, k) => {
        const share = 1 - k / 39;
        return { x: length * share, y: narrow + (wide - narrow) * Math.cos((share * Math.PI) / 2) };
      });
      return { id, outline: [{ x: 0, y: 0 }, { x: length, y: 0 }, ...free], count: 4, warpAngle: 0 };
    };
    const pieces = [
      curved('lower', 2.1, 0.503, 0.343),
      curved('upper', 1.9, 0.385, 0.2),
      curved('boom', 1.3, 0.38, 0.3),
    ];
    const nest = nestPieces({ pieces, rollWidth: 1.27, gap: 0.0125, selvage: 0.01, tries: 200 });
    expect(nest.placements).toHaveLength(12);
    const area = pieces.reduce((sum, { outline, count }) => sum + count * outlineArea({ outline }), 0);
    expect(nest.share).toBeCloseTo(area / (nest.length * 1.27), 9);
  });

  it('never take more cloth than side by side in the order given', () => {
    fc.assert(
      fc.property(anySet, (pieces) => {
        const nest = nestPieces({ pieces, rollWidth: 1.27, gap: 0.01, selvage: 0.01, tries: 6 });
        if (nest.unplaced.length > 0) return;
        expect(nest.length).toBeLessThanOrEqual(shelfLength(pieces, 1.25, 0.01) + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('lie the same way each time', () => {
    const pieces = [pair(3), { id: 'bias', outline: tapered(0.8, 0.5, 0.4), count: 4, warpAngle: 0.7 }];
    const input = { pieces, rollWidth: 1.27, gap: 0.012, selvage: 0.01 };
    expect(nestPieces(input)).toEqual(nestPieces(input));
  });

  it('are none on a roll of which nothing is asked', () => {
    expect(nestPieces({ pieces: [], rollWidth: 1, gap: 0, selvage: 0 })).toEqual({
      placements: [],
      length: 0,
      share: 0,
      unplaced: [],
    });
  });
});

describe('two equal tapered pieces', () => {
  it('head to tail use 98 % or more of their rectangle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.double({ min: 0.1, max: 0.5, noNaN: true }),
        fc.double({ min: 0.1, max: 0.95, noNaN: true }),
        (length, wide, share) => {
          const outline = tapered(length, wide, share * wide);
          const pieces = [{ id: 'skin', outline, count: 2, warpAngle: 0 }];
          const nest = nestPieces({ pieces, rollWidth: wide * (1 + share) + 1e-6, gap: 0, selvage: 0 });
          expect(nest.share).toBeGreaterThan(0.98);
          expect(nest.placements.map(({ flipped }) => flipped).sort()).toEqual([false, true]);
        },
      ),
    );
  });

  it('slip past each other where the roll is too narrow for head to tail', () => {
    const nest = nestPieces({ pieces: [pair()], rollWidth: 0.55, gap: 0, selvage: 0 });
    expect(nest.length).toBeLessThan(5);
  });
});

describe('the spars of a small sailing canoe', () => {
  const spar = (id: string, length: number, wide: number, narrow: number, count: number): NestPiece => ({
    id,
    outline: tapered(length, wide, narrow),
    count,
    warpAngle: 0,
  });

  it('come within 10 % of what their area allows when they go side by side', () => {
    const pieces = [
      spar('lower mast', 3, 0.5, 0.25, 2),
      spar('upper mast', 2.8, 0.3, 0.16, 2),
      spar('sleeve', 0.2, 0.5, 0.4, 1),
    ];
    const nest = nestPieces({ pieces, rollWidth: 1.27, gap: 0, selvage: 0 });
    expect(nest.share).toBeGreaterThan(0.9);
  });

  it('take a sixth less than shelf order when lengths do not match', () => {
    const pieces = [
      spar('lower mast', 3, 0.5, 0.25, 4),
      spar('upper mast', 2.4, 0.3, 0.16, 4),
      spar('boom', 2, 0.3, 0.28, 2),
      spar('sleeve', 0.4, 0.5, 0.4, 2),
    ];
    const nest = nestPieces({ pieces, rollWidth: 1.27, gap: 0, selvage: 0 });
    expect(nest.length).toBeLessThan((5 / 6) * shelfLength(pieces, 1.27, 0));
    expect(nest.share).toBeGreaterThan(0.85);
  });
});

describe('a piece wider than the roll', () => {
  const wide = { id: 'bias', outline: tapered(2, 0.5, 0.3), count: 2, warpAngle: Math.PI / 4 };

  it('is named once, with a splice whose strips all fit', () => {
    const nest = nestPieces({ pieces: [pair(), wide], rollWidth: 0.9, gap: 0.01, selvage: 0.01 });
    expect(nest.placements).toHaveLength(2);
    const [one, ...others] = nest.unplaced;
    expect(others).toEqual([]);
    expect(one?.reason).toBe('wider than the roll');
    const strips = splicePiece({ ...wide, at: one?.splice.at ?? [], overlap: one?.splice.overlap ?? 0 });
    const pieces = strips.map((outline, k) => ({
      id: `strip ${k}`,
      outline,
      count: 1,
      warpAngle: wide.warpAngle,
    }));
    const spliced = nestPieces({ pieces, rollWidth: 0.9, gap: 0.01, selvage: 0.01 });
    expect(spliced.unplaced).toEqual([]);
    expect(strips).toHaveLength((one?.splice.at.length ?? 0) + 1);
  });

  it('loses no cloth: strips without a lap have its area', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1.5, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (at, warpAngle) => {
          const outline = tapered(2, 0.5, 0.3);
          const strips = splicePiece({ outline, warpAngle, at: [at], overlap: 0 }).filter(
            (strip) => strip.length >= 3,
          );
          expect(strips.reduce((sum, strip) => sum + outlineArea({ outline: strip }), 0)).toBeCloseTo(0.8, 9);
        },
      ),
    );
  });
});

describe('a roll that cannot be used', () => {
  it('is narrower than the allowance, in a sentence that says what would be right', () => {
    expect(() => nestPieces({ pieces: [pair()], rollWidth: 0.05, gap: 0.012, selvage: 0.02 })).toThrow(
      'rollWidth must be at least 0.074 and at most 100 m, got 0.05',
    );
  });

  it('is asked for parts of a piece, too many, or a line', () => {
    const nest = (piece: Partial<NestPiece>) => () =>
      nestPieces({ pieces: [{ ...pair(), ...piece }], rollWidth: 1, gap: 0, selvage: 0 });
    expect(nest({ count: 1.5 })).toThrow('pieces[0].count must be a whole number');
    expect(nest({ count: 501 })).toThrow('pieces[0].count');
    expect(nest({ outline: tapered(2, 0, 0) })).toThrow('pieces[0].outline must enclose some cloth');
  });
});

function farFrom(point: Point, outline: readonly Point[]): number {
  return outline.reduce((least, a, k) => {
    const b = outline[(k + 1) % outline.length] ?? a;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = Math.max(
      0,
      Math.min(1, ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy || 1)),
    );
    return Math.min(least, Math.hypot(point.x - a.x - share * dx, point.y - a.y - share * dy));
  }, Number.POSITIVE_INFINITY);
}
