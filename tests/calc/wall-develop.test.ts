import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  developPiece,
  fiberDrift,
  offsetsFromDatum,
  outlineArea,
  outlineBounds,
  type PieceSpec,
  type Point,
  rollPieces,
  type Shape,
  tubeMass,
} from '#calc';
import { cylinder, plies, rolledOn, shapes, straight, wide } from './wall-pieces.ts';

const cone = straight([0, 0.04], [3, 0.03]);

function onMandrel(mandrel: Shape, ...pieces: readonly PieceSpec[]) {
  return rollPieces({ mandrel, pieces, length: 3, step: 0.001, mayBeOpen: true });
}

function distance(point: Point, outline: readonly Point[]): number {
  return outline.reduce((least, a, k) => {
    const b = outline[k + 1] ?? outline[0] ?? a;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const long = dx * dx + dy * dy;
    const share =
      long === 0 ? 0 : Math.max(0, Math.min(1, ((point.x - a.x) * dx + (point.y - a.y) * dy) / long));
    return Math.min(least, Math.hypot(point.x - a.x - share * dx, point.y - a.y - share * dy));
  }, Number.POSITIVE_INFINITY);
}

describe('a flat piece on a cylinder', () => {
  it('is its width at each station, square to the datum edge, with no more corners than that takes', () => {
    const roll = rolledOn(0.038, 3, wide(straight([0, 0.4], [1, 0.5], [3, 0.2])));
    const { outline, length, halfAngle, marks } = developPiece({ roll, piece: 0 });
    expect(outline).toEqual([
      { x: 0, y: 0 },
      { x: 3, y: 0 },
      { x: 3, y: expect.closeTo(0.2, 12) },
      { x: 1, y: expect.closeTo(0.5, 12) },
      { x: 0, y: expect.closeTo(0.4, 12) },
    ]);
    expect([length, halfAngle]).toEqual([3, 0]);
    expect(marks[1]).toEqual({ at: 1, x: 1, edge: { x: 1, y: expect.closeTo(0.5, 12) } });
  });

  it('steps where its shape does, and where a piece under it ends', () => {
    const step: Shape = { ...straight([0, 3], [1, 2], [3, 2]), between: 'step' };
    const stepped = developPiece({ roll: rolledOn(0.038, 3, plies(step)), piece: 0 });
    expect(stepped.outline).toHaveLength(6);
    const under = plies(straight([0, 3], [1, 3]));
    const roll = rolledOn(0.038, 3, under, plies(straight([0, 2], [3, 2])));
    const edges = offsetsFromDatum({ ...developPiece({ roll, piece: 1 }), every: 1 }).filter(
      ({ x }) => Math.abs(x - 1) < 1e-6,
    );
    expect(edges).toHaveLength(2);
    expect((edges[0]?.to ?? 0) - (edges[1]?.to ?? 0)).toBeCloseTo(Math.PI * 2 * 6 * 0.0003, 9);
  });

  it('starts from its own end 0 wherever that lies on the tube', () => {
    const roll = rolledOn(0.038, 3, plies(straight([0.2, 3], [1, 2]), { start: 0.5 }));
    const { outline, length, marks } = developPiece({ roll, piece: 0 });
    expect(length).toBeCloseTo(0.8, 12);
    expect(outlineBounds({ outline }).minX).toBe(0);
    expect(marks.map(({ at }) => at)).toEqual([expect.closeTo(0.7, 12), expect.closeTo(1.5, 12)]);
  });

  it('has the area of its widths, and never a negative one', () => {
    fc.assert(
      fc.property(shapes(0.3, 8), (shape) => {
        const roll = onMandrel(cylinder(0.038, 3), plies(shape, { overlap: 0.015 }));
        const area = outlineArea(developPiece({ roll, piece: 0, chordError: 1e-6 }));
        const { pieces } = tubeMass({ roll, resinDensity: 1180, fiberVolumeFraction: 0.35 });
        expect(Math.abs(area / (pieces[0]?.area ?? 0) - 1)).toBeLessThan(1e-5);
        expect(area).toBeGreaterThan(0);
      }),
      { numRuns: 8 },
    );
  });
});

describe('a flat piece on a tapered mandrel', () => {
  it('has ends that are arcs about the apex when the cloth has no thickness to speak of', () => {
    const roll = onMandrel(cone, plies(straight([0, 4], [3, 4]), { thickness: 1e-6 }));
    const { outline, halfAngle } = developPiece({ roll, piece: 0, chordError: 1e-6 });
    const apex = { x: 0.02 / Math.sin(-halfAngle), y: 0 };
    const radii = outline.map(({ x, y }) => Math.hypot(x - apex.x, y - apex.y));
    const far = radii.filter((radius) => Math.abs(radius - (apex.x - 3)) < 1e-4);
    const near = radii.filter((radius) => Math.abs(radius - apex.x) < 1e-4);
    expect(far.length).toBeGreaterThan(5);
    expect(near.length).toBeGreaterThan(5);
    expect(far.length + near.length).toBe(outline.length);
  });

  it('turns by the drift of the fiber from one edge to the other', () => {
    const roll = onMandrel(cone, plies(straight([0, 4], [3, 4])));
    const { marks, halfAngle } = developPiece({ roll, piece: 0 });
    const [first, last] = [marks[0]?.edge, marks[1]?.edge];
    const angle = Math.atan2((last?.y ?? 0) - (first?.y ?? 0), (last?.x ?? 0) - (first?.x ?? 0));
    const { total, eachWay } = fiberDrift({ wraps: 4, halfAngle: Math.abs(halfAngle) });
    expect(Math.abs(angle)).toBeCloseTo(total, 9);
    expect(eachWay).toBe(total / 2);
  });

  it('keeps the chord error it states', () => {
    fc.assert(
      fc.property(shapes(1, 6), fc.constantFrom(0.0002, 0.00002), (shape, chordError) => {
        const pieces = [plies(straight([0, 2], [1, 1.5], [3, 2])), plies(shape)];
        const roll = rollPieces({ mandrel: cone, pieces, length: 3, step: 0.05, mayBeOpen: true });
        const coarse = developPiece({ roll, piece: 1, chordError }).outline;
        const fine = developPiece({ roll, piece: 1, chordError: 2e-6 }).outline;
        expect(Math.max(...fine.map((point) => distance(point, coarse)))).toBeLessThanOrEqual(
          chordError + 2e-7,
        );
      }),
      { numRuns: 10 },
    );
  });

  it('needs few corners for a builder to mark', () => {
    const roll = onMandrel(cone, plies(straight([0, 3], [0.6, 6], [3, 2])));
    expect(developPiece({ roll, piece: 0 }).outline.length).toBeLessThan(40);
  });

  it('turned end for end is the same piece seen from the other end', () => {
    const back = straight([0, 0.03], [3, 0.04]);
    const there = outlineArea(
      developPiece({ roll: onMandrel(cone, plies(straight([0, 4], [3, 3]))), piece: 0 }),
    );
    const here = outlineArea(
      developPiece({ roll: onMandrel(back, plies(straight([0, 3], [3, 4]))), piece: 0 }),
    );
    expect(here).toBeCloseTo(there, 6);
  });

  it('becomes the one on a cylinder as the taper goes to nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -14, max: -4, noNaN: true }), (power) => {
        const slight = straight([0, 0.04], [3, 0.04 - 10 ** power]);
        const shape = straight([0, 4], [3, 3]);
        const flat = developPiece({ roll: onMandrel(slight, plies(shape)), piece: 0 }).marks;
        const square = developPiece({ roll: onMandrel(cylinder(0.04, 3), plies(shape)), piece: 0 }).marks;
        flat.forEach(({ edge }, k) => {
          expect(Math.abs(edge.y - (square[k]?.edge.y ?? 0))).toBeLessThan(20 * 10 ** power + 1e-9);
          expect(Math.abs(edge.x - (square[k]?.edge.x ?? 0))).toBeLessThan(20 * 10 ** power + 1e-9);
        });
      }),
    );
  });

  it('is refused where the mandrel bends or steps, by name and place; a bend of a hair is let be', () => {
    const full = plies(straight([0, 4], [3, 4]));
    const on =
      (mandrel: Shape, piece: PieceSpec = full) =>
      () =>
        developPiece({ roll: onMandrel(mandrel, piece), piece: 0 });
    const bent = straight([0, 0.04], [1.2, 0.04], [3, 0.03]);
    expect(on(bent)).toThrow(
      'mandrel must be a cylinder or one even taper under pieces[0]: it bends at 1.2 m, where the cloth would not lie flat',
    );
    expect(on(bent, plies(straight([0, 4], [1.2, 4])))).not.toThrow();
    expect(on(bent, plies(straight([0, 4], [1.8, 4]), { start: 1.2 }))).not.toThrow();
    expect(on({ ...straight([0, 0.04], [1.2, 0.03], [3, 0.03]), between: 'step' })).toThrow(
      'it steps at 1.2 m',
    );
    expect(on(straight([0, 0.04], [1.5, 0.03501], [3, 0.03]))).not.toThrow();
    expect(on({ ...straight([0, 0.04], [1.5, 0.035], [3, 0.03]), between: 'smooth' })).not.toThrow();
    expect(on({ ...straight([0, 0.04], [0.5, 0.03], [3, 0.03]), between: 'smooth' })).toThrow('it bends');
  });

  it('is refused when the taper is so steep that the cloth would run into itself', () => {
    const steep = straight([0, 1], [3, 0.01]);
    const roll = onMandrel(steep, plies(straight([0, 8], [3, 8])));
    expect(() => developPiece({ roll, piece: 0 })).toThrow(
      /mandrel must taper less under pieces\[0\].*8 wraps/,
    );
  });
});

describe('what to mark with a rule', () => {
  it('is the width at every so many meters, at both ends and at the stations', () => {
    const roll = rolledOn(0.038, 3, wide(straight([0, 0.4], [1, 0.5], [3, 0.2])));
    const { outline, marks } = developPiece({ roll, piece: 0 });
    const offsets = offsetsFromDatum({ outline, every: 0.4, also: marks.map(({ x }) => x) });
    expect(offsets.map(({ x }) => Number(x.toFixed(9)))).toEqual([0, 0.4, 0.8, 1, 1.2, 1.6, 2, 2.4, 2.8, 3]);
    expect(offsets[1]).toEqual({ x: 0.4, from: 0, to: expect.closeTo(0.44, 9) });
    expect(offsets.at(-1)).toEqual({ x: 3, from: 0, to: expect.closeTo(0.2, 9) });
  });

  it('goes past the ends of the datum edge where the arcs bulge', () => {
    const roll = onMandrel(cone, plies(straight([0, 4], [3, 4])));
    const flat = developPiece({ roll, piece: 0 });
    const offsets = offsetsFromDatum({ ...flat, every: 0.5 });
    expect(offsets.at(-1)?.x).toBeGreaterThan(flat.length);
    expect(offsets.at(-1)?.from).toBeGreaterThan(0.3);
    expect(offsets[0]).toEqual({ x: 0, from: 0, to: expect.closeTo(0, 9) });
  });
});
