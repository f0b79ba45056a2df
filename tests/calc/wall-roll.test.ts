import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PieceSpec, pliesAround, type Roll, rollPieces, seamAngle, stationValues } from '#calc';
import { cylinder, plies, rolledOn, shapes, straight, wide } from './wall-pieces.ts';

function at(roll: Roll, x: number): number {
  return roll.at.findIndex(
    (one, i) => Math.abs(one - x) < 1e-9 && (roll.before[i] === 0 || x === roll.length),
  );
}

describe('plies to width and back', () => {
  const core = { startDiameter: 0.038, thickness: 0.0003, overlap: 0.015 };

  it('returns to the same plies, wall and width from any one of them, to 1e-9', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 60, noNaN: true }),
        fc.double({ min: 0.005, max: 0.5, noNaN: true }),
        fc.double({ min: 0.00002, max: 0.02, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (wanted, startDiameter, thickness, overlap) => {
          const given = { startDiameter, thickness, overlap };
          const { width, wall } = stationValues({ ...given, plies: wanted });
          expect(Math.abs(stationValues({ ...given, width }).plies / wanted - 1)).toBeLessThan(1e-9);
          expect(Math.abs(stationValues({ ...given, wall }).width / width - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('holds all along any shape that can be drawn', () => {
    fc.assert(
      fc.property(shapes(1, 8), (shape) => {
        const roll = rolledOn(0.038, 3, plies(shape, { overlap: 0.015 }));
        const [piece] = roll.pieces;
        piece?.plies.forEach((wanted, i) => {
          const width = piece.width[i] ?? 0;
          expect(Math.abs(stationValues({ ...core, width }).plies / wanted - 1)).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('asks for exactly one of the three', () => {
    expect(() => stationValues({ ...core })).toThrow(
      'plies, width or wall must be given, exactly one of them, got none',
    );
    expect(() => stationValues({ ...core, plies: 2, wall: 0.001 })).toThrow('got plies and wall');
    expect(() => stationValues({ ...core, width: 0.015 })).toThrow('width must be greater than 0.015 m');
  });
});

describe('a roll', () => {
  it('is n plies everywhere of w = pi n (D + n t) and the overlap, and one more under the lap', () => {
    const roll = rolledOn(0.038, 1, plies(straight([0, 4], [1, 4]), { overlap: 0.015 }));
    expect(roll.pieces[0]?.width[0]).toBeCloseTo(Math.PI * 4 * (0.038 + 4 * 0.0003) + 0.015, 15);
    expect(roll.wallMin[0]).toBeCloseTo(4 * 0.0003, 15);
    expect(roll.wallMax[0]).toBeCloseTo(5 * 0.0003, 15);
    const lap = pliesAround({ roll, at: 0.5 }).steps.filter((step) => step.plies === 5);
    const arc = lap.reduce((sum, { from, to }) => sum + to - from, 0) * (0.038 / 2 + 4 * 0.0003);
    expect(arc).toBeCloseTo(0.015, 3);
  });

  it('takes a computed number of wraps a hair under a whole one for that one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.double({ min: 0.005, max: 0.2, noNaN: true }),
        (wraps, diameter) => {
          const width = Math.PI * wraps * (diameter + wraps * 0.0003);
          const roll = rolledOn(diameter, 1, wide(straight([0, width], [1, width])));
          expect(roll.wallMin[0]).toBeCloseTo(wraps * 0.0003, 12);
          expect(roll.wallMax[0]).toBeCloseTo(wraps * 0.0003, 12);
          expect(pliesAround({ roll, at: 0.3 }).steps).toHaveLength(1);
        },
      ),
    );
  });

  it('lays later pieces on earlier ones, only where they are', () => {
    const under = plies(straight([0, 3], [1, 3]), { start: 1 });
    const roll = rolledOn(0.038, 3, under, plies(straight([0, 2], [3, 2])));
    const top = roll.pieces[1];
    expect(top?.startDiameter[at(roll, 0.5)]).toBeCloseTo(0.038, 15);
    expect(top?.startDiameter[at(roll, 1.5)]).toBeCloseTo(0.038 + 6 * 0.0003, 15);
    expect(top?.startDiameter[at(roll, 2.5)]).toBeCloseTo(0.038, 15);
    expect(roll.outsideDiameter[at(roll, 1.5)]).toBeCloseTo(0.038 + 10 * 0.0003, 15);
  });

  it('has every station and both sides of every jump among its samples', () => {
    const sleeve = plies(straight([0, 3], [0.2222, 2], [0.5, 2]), { start: 0.3333 });
    const roll = rolledOn(0.038, 3, plies(straight([0, 2], [3, 2])), sleeve);
    const places = [...roll.at];
    expect(places.filter((x) => Math.abs(x - 0.5555) < 1e-9)).toHaveLength(1);
    for (const end of [0.3333, 0.8333]) {
      const [before = 0, after = 0] = places.flatMap((x, i) => (Math.abs(x - end) < 1e-9 ? [i] : []));
      expect(after).toBe(before + 1);
      expect(Math.abs((roll.wallMean[before] ?? 0) - (roll.wallMean[after] ?? 0))).toBeGreaterThan(0.0005);
    }
    places.forEach((x, i) => {
      expect(x).toBeGreaterThanOrEqual(places[i - 1] ?? 0);
    });
  });

  it('is for any pieces at its thinnest no more than at its mean, and that no more than at its thickest', () => {
    const piece = fc
      .record({
        shape: shapes(0.2, 6),
        clock: fc.double({ min: -9, max: 9, noNaN: true }),
        lap: fc.double({ min: 0, max: 0.03, noNaN: true }),
      })
      .map(({ shape, clock, lap }): PieceSpec => plies(shape, { clock, overlap: lap }));
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 5 }), (pieces) => {
        const roll = rolledOn(0.038, 3, ...pieces);
        roll.wallMean.forEach((mean, i) => {
          expect(roll.wallMin[i]).toBeLessThanOrEqual(mean + 1e-12);
          expect(roll.wallMax[i]).toBeGreaterThanOrEqual(mean - 1e-12);
        });
      }),
      { numRuns: 30 },
    );
  });

  it('agrees round the tube with its thinnest, thickest and mean wall', () => {
    const piece = fc
      .record({ shape: shapes(0.2, 6), clock: fc.double({ min: -9, max: 9, noNaN: true }) })
      .map(({ shape, clock }): PieceSpec => plies(shape, { clock }));
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 4 }), fc.nat(299), (pieces, k) => {
        const roll = rolledOn(0.038, 3, ...pieces);
        const i = at(roll, roll.at[k] ?? 0);
        const { steps } = pliesAround({ roll, at: roll.at[i] ?? 0 });
        expect(steps[0]?.from).toBe(0);
        expect(steps.at(-1)?.to).toBeCloseTo(2 * Math.PI, 12);
        const mean = steps.reduce((sum, { from, to, wall }) => sum + wall * (to - from), 0) / (2 * Math.PI);
        expect(mean).toBeCloseTo(roll.wallMean[i] ?? 0, 9);
        expect(Math.min(...steps.map(({ wall }) => wall))).toBeCloseTo(roll.wallMin[i] ?? 0, 9);
        expect(Math.max(...steps.map(({ wall }) => wall))).toBeCloseTo(roll.wallMax[i] ?? 0, 9);
      }),
    );
  });

  it('counts foam and film in its wall and not in its plies', () => {
    const foam = { kind: 'core', thickness: 0.005, density: 75 } as const;
    const roll = rolledOn(
      0.1,
      1,
      plies(straight([0, 1], [1, 1])),
      plies(straight([0, 1], [1, 1]), foam),
      plies(straight([0, 2], [1, 2])),
    );
    expect(pliesAround({ roll, at: 0.5 }).steps).toEqual([
      { from: 0, to: 2 * Math.PI, plies: 3, wall: expect.closeTo(0.0059, 12) },
    ]);
    expect(roll.pieces[2]?.startDiameter[0]).toBeCloseTo(0.1 + 2 * 0.0053, 12);
  });

  it('has its seam a turn farther for each wrap', () => {
    const roll = rolledOn(0.038, 1, plies(straight([0, 3], [1, 2]), { clock: 0.5 }));
    const { at: places, angle } = seamAngle({ roll, piece: 0 });
    expect(angle[0]).toBeCloseTo(0.5 + 6 * Math.PI, 12);
    expect(angle.at(-1)).toBeCloseTo(0.5 + 4 * Math.PI, 12);
    expect(places.at(-1)).toBe(1);
    const [seam] = pliesAround({ roll, at: 0.25 }).seams;
    expect(seam?.outer).toBeCloseTo((0.5 + 2 * Math.PI * 2.75) % (2 * Math.PI), 9);
    expect(seam?.inner).toBeCloseTo(0.5, 12);
  });

  it.each([0.1, 12])('of a tube of %f m is rolled', (length) => {
    const pieces = [plies(straight([0, 3], [length, 2]))];
    const roll = rollPieces({ mandrel: cylinder(0.05, length), pieces, length, step: 0.001 });
    expect(roll.at.at(-1)).toBe(length);
    expect(roll.at).toHaveLength(Math.round(length * 1000) + 1);
  });
});

describe('a roll that cannot be', () => {
  const full = plies(straight([0, 3], [3, 2]));
  const roll =
    (pieces: readonly PieceSpec[], mandrel = cylinder(0.038, 3), long = 3) =>
    () =>
      rollPieces({ mandrel, pieces, length: long, step: 0.01 });

  it('has a piece longer than the mandrel, or a tube longer than it', () => {
    expect(roll([plies(straight([0, 3], [3.2, 2]))])).toThrow(
      'pieces[0].start and its stations[].at must keep it on the tube: it reaches 3.2 m and the tube ends at 3 m',
    );
    expect(roll([full], cylinder(0.038, 2.5))).toThrow(
      'length must be at most 2.5 m, the end of the mandrel',
    );
    expect(roll([full], straight([0.5, 0.038], [3, 0.038]))).toThrow('mandrel.stations[0].at');
  });

  it('has no width or wraps somewhere, or less than the lap', () => {
    expect(roll([full, plies(straight([0, 3], [3, 0]))])).toThrow('pieces[1].wraps.stations[1].value');
    expect(roll([wide(straight([0, 0.3], [3, -0.1]))])).toThrow('pieces[0].width.stations[1].value');
    expect(roll([wide(straight([0, 0.3], [3, 0.01]), { overlap: 0.012 })])).toThrow('greater than 0.012');
  });

  it('is not closed by a ply of cloth all round, unless it may be open', () => {
    const half = plies(straight([0, 0.5], [3, 0.5]));
    expect(roll([half])).toThrow('pieces must make at least one ply of cloth all round, and do not at 0 m');
    expect(roll([half, { ...half, clock: Math.PI }])).not.toThrow();
    expect(roll([half, { ...half, clock: 3 }])).toThrow('pieces must');
    expect(roll([plies(straight([0, 3], [2, 3]))])).toThrow('do not at 2 m');
    expect(roll([])).toThrow('pieces must');
    expect(() => rolledOn(0.038, 3, half)).not.toThrow();
  });

  it('has two shapes for a piece, or none', () => {
    const both = { ...full, width: straight([0, 1], [3, 1]) } as unknown as PieceSpec;
    const none = { ...full, wraps: undefined } as unknown as PieceSpec;
    expect(roll([both])).toThrow(
      'pieces[0].wraps, width or wall must be given, exactly one of them, got wraps and width',
    );
    expect(roll([none])).toThrow('got none');
  });

  it('is asked for in steps that no phone can draw', () => {
    expect(() => rollPieces({ mandrel: cylinder(0.038, 3), pieces: [full], length: 3, step: 1e-6 })).toThrow(
      'step',
    );
  });
});
