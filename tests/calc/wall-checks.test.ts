import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  edgesStack,
  plyDrops,
  plyThicknessFromDiameter,
  rollPieces,
  seamCheck,
  trueSizeTiles,
  tubeMass,
  widthForWraps,
  wrapsForWidth,
} from '#calc';
import { cylinder, plies, rolledOn, shapes, straight } from './wall-pieces.ts';

const even = (wraps: number) => straight([0, wraps], [3, wraps]);
const resin = { resinDensity: 1180, fiberVolumeFraction: 0.35 };

describe('edges that stack up', () => {
  it('are those of two pieces that start on the same line, all along', () => {
    const roll = rolledOn(0.038, 3, plies(even(2)), plies(even(2), { clock: 0.3 }));
    const pairs = edgesStack({ roll });
    expect(pairs).toHaveLength(4);
    for (const { first, second, from, to, nearest } of pairs) {
      expect([first.piece, second.piece, from, to]).toEqual([0, 1, 0, 3]);
      expect(nearest).toBeCloseTo(0.3 * (0.019 + 4 * 0.0003), 6);
    }
  });

  it('are none when the pieces start on opposite sides, nor a piece with itself', () => {
    expect(
      edgesStack({ roll: rolledOn(0.038, 3, plies(even(2)), plies(even(2), { clock: Math.PI })) }),
    ).toEqual([]);
    expect(edgesStack({ roll: rolledOn(0.038, 3, plies(even(2))) })).toEqual([]);
  });

  it('are told across the line where the angle starts again', () => {
    const roll = rolledOn(
      0.038,
      3,
      plies(even(2), { clock: 0.1 }),
      plies(even(2), { clock: 2 * Math.PI - 0.1 }),
    );
    expect(edgesStack({ roll })[0]?.nearest).toBeCloseTo(0.2 * (0.019 + 4 * 0.0003), 6);
  });

  it('are let be where they only cross', () => {
    const roll = rolledOn(0.038, 3, plies(even(2), { clock: 1.5 }), plies(straight([0, 8], [3, 2])));
    expect(edgesStack({ roll }).filter(({ first }) => first.edge === 'free')).not.toEqual([]);
    expect(edgesStack({ roll, longerThan: 1 }).filter(({ second }) => second.edge === 'free')).toEqual([]);
  });
});

describe('where edges run together', () => {
  const turning = fc.double({ min: 1, max: 6, noNaN: true });

  it('is every stretch on which no sample is further apart, from its first to its last', () => {
    fc.assert(
      fc.property(
        turning,
        turning,
        turning,
        fc.double({ min: 0, max: 6, noNaN: true }),
        (foot, mid, tip, clock) => {
          const within = 0.02;
          const roll = rolledOn(
            0.038,
            3,
            plies(even(2)),
            plies(straight([0, foot], [1.3, mid], [3, tip]), { clock }),
          );
          const apart = (i: number) => {
            const turns = 2 - (clock / (2 * Math.PI) + (roll.pieces[1]?.wraps[i] ?? 0));
            return Math.PI * (roll.outsideDiameter[i] ?? 0) * Math.abs(turns - Math.round(turns));
          };
          const together: [number, number][] = [];
          for (let i = 0, from = -1; i <= roll.at.length; i += 1) {
            const near = i < roll.at.length && apart(i) <= within;
            if (near && from < 0) from = i;
            if (!near && from >= 0) {
              const run: [number, number] = [roll.at[from] ?? 0, roll.at[i - 1] ?? 0];
              if (run[1] - run[0] > 0.1) together.push(run);
              from = -1;
            }
          }
          const told = edgesStack({ roll, within }).filter(
            ({ first, second }) => first.edge === 'free' && second.edge === 'free',
          );
          expect(told.map(({ from, to }) => [from, to])).toEqual(together);
        },
      ),
    );
  });
});

describe('plies that drop', () => {
  it('are let be at 6 mm a ply and told of at less', () => {
    expect(
      plyDrops({ roll: rolledOn(0.038, 3, plies(straight([0, 3], [1, 3], [1.006, 2], [3, 2]))) }),
    ).toEqual([]);
    const [drop] = plyDrops({
      roll: rolledOn(0.038, 3, plies(straight([0, 3], [1, 3], [1.005, 2], [3, 2]))),
    });
    expect(drop?.from).toBe(1);
    expect(drop?.to).toBe(1.005);
    expect(drop?.perPly).toBeCloseTo(0.005, 9);
    expect(drop?.ratio).toBeCloseTo(0.005 / 0.0003, 6);
  });

  it('need 20 times their thickness when they are thick', () => {
    const thick = (long: number) =>
      rolledOn(0.038, 3, plies(straight([0, 3], [1, 3], [1 + long, 2], [3, 2]), { thickness: 0.0006 }));
    expect(plyDrops({ roll: thick(0.0121) })).toEqual([]);
    expect(plyDrops({ roll: thick(0.011) })).toHaveLength(1);
  });

  it('are let be one by one, and told of when two end together', () => {
    const ends = (gap: number) =>
      rolledOn(
        0.038,
        3,
        plies(even(2)),
        plies(straight([0, 1], [1, 1])),
        plies(straight([0, 1], [1 + gap, 1])),
      );
    expect(plyDrops({ roll: ends(0.0061) })).toEqual([]);
    const [drop] = plyDrops({ roll: ends(0.004) });
    expect(drop?.drop).toBeCloseTo(0.0006, 9);
    expect([drop?.from, drop?.to]).toEqual([1, 1.004]);
  });

  it('are told of at both ends of a thickening, and not at the ends of the tube', () => {
    const sleeve = plies(straight([0, 3], [0.4, 3]), { start: 1 });
    const drops = plyDrops({ roll: rolledOn(0.038, 3, plies(even(2)), sleeve) });
    expect(drops.map(({ from, to }) => [from, to])).toEqual([
      [1, 1],
      [1.4, 1.4],
    ]);
  });

  it('are told of from where the wall begins to change to where it ends, square end and ramp together', () => {
    const square = plies(straight([0, 1], [1, 1]));
    const ramp = plies(straight([0, 3], [1.0005, 3], [1.003, 2], [3, 2]));
    const drops = plyDrops({ roll: rolledOn(0.038, 3, square, ramp) });
    expect(drops.map(({ from, to }) => [from, to])).toEqual([[1, 1.003]]);
    expect(drops[0]?.drop).toBeCloseTo(0.0006, 9);
  });

  it('are told of no further than they drop, however finely the wall is looked at', () => {
    const ramp = plies(straight([0, 4], [1, 4], [1.004, 2], [3, 2]));
    const roll = rollPieces({ mandrel: cylinder(0.038, 3), pieces: [ramp], length: 3, step: 0.001 });
    const [drop, ...more] = plyDrops({ roll });
    expect(drop?.from).toBeCloseTo(1, 9);
    expect(drop?.to).toBeCloseTo(1.004, 9);
    expect(more).toEqual([]);
  });

  it('are told of where foam ends square', () => {
    const foam = plies(straight([0, 1], [1, 1]), { kind: 'core', thickness: 0.005, density: 75 });
    const drops = plyDrops({ roll: rolledOn(0.1, 3, plies(even(1)), foam, plies(even(2))) });
    expect(drops).toHaveLength(1);
    expect(drops[0]?.drop).toBeCloseTo(0.005, 9);
  });
});

describe('what a tube weighs', () => {
  it('is cloth, resin, core and film together, and along it what it is in all', () => {
    fc.assert(
      fc.property(shapes(1, 6), fc.double({ min: 0, max: 0.02, noNaN: true }), (shape, overlap) => {
        const foam = plies(even(1), { kind: 'core', thickness: 0.005, arealWeight: undefined, density: 75 });
        const roll = rolledOn(0.06, 3, plies(shape, { overlap }), foam, plies(shape));
        const mass = tubeMass({ roll, ...resin, coreFaceResin: 0.2 });
        expect(mass.cloth + mass.resin + mass.core + mass.film).toBeCloseTo(mass.total, 9);
        const all = mass.pieces.reduce((sum, piece) => sum + piece.dry + piece.resin, 0);
        expect(all).toBeCloseTo(mass.total, 9);
        expect(mass.balance).toBeGreaterThan(0);
        expect(mass.balance).toBeLessThan(3);
        expect(mass.saved).toBeGreaterThan(-1e-3 * mass.thickest);
      }),
      { numRuns: 30 },
    );
  });

  it('counts the resin that both faces of a core drink', () => {
    const foam = plies(even(1), { kind: 'core', thickness: 0.005, arealWeight: undefined, density: 75 });
    const roll = rolledOn(0.06, 3, foam, plies(even(2)));
    const [core] = tubeMass({ roll, ...resin, coreFaceResin: 0.2 }).pieces;
    const area = 3 * Math.PI * 0.065;
    expect(core).toEqual({
      area: expect.closeTo(area, 9),
      dry: expect.closeTo(area * 0.005 * 75, 9),
      resin: expect.closeTo(area * 0.4, 9),
    });
  });

  it('balances in the middle when it is even, nearer the thick end when it is not', () => {
    expect(tubeMass({ roll: rolledOn(0.038, 3, plies(even(3))), ...resin }).balance).toBeCloseTo(1.5, 12);
    expect(
      tubeMass({ roll: rolledOn(0.038, 3, plies(straight([0, 6], [3, 2]))), ...resin }).balance,
    ).toBeLessThan(1.3);
  });

  it('saves nothing when it is even, and what the taper leaves out when it is not', () => {
    const same = tubeMass({ roll: rolledOn(0.038, 3, plies(even(3))), ...resin });
    expect(same.saved).toBeCloseTo(0, 12);
    const tapered = tubeMass({ roll: rolledOn(0.038, 3, plies(straight([0, 6], [3, 2]))), ...resin });
    const thick = tubeMass({ roll: rolledOn(0.038, 3, plies(even(6))), ...resin });
    expect(tapered.thickest).toBeCloseTo(thick.total, 12);
    expect(tapered.savedShare).toBeCloseTo(1 - tapered.total / thick.total, 12);
  });

  it('is not known of a cloth without its weight, by name', () => {
    const bare = plies(even(3), { arealWeight: undefined });
    expect(() => tubeMass({ roll: rolledOn(0.038, 3, bare), ...resin })).toThrow('pieces[0].arealWeight');
  });
});

describe('where the free edge landed', () => {
  it('moves by pi N squared for each bit of ply thickness', () => {
    const core = { startDiameter: 0.038 };
    const wraps = 8;
    const width = widthForWraps({ wraps, ...core, plyThickness: 0.0003 });
    const now = wrapsForWidth({ width, ...core, plyThickness: 0.00031 });
    const outside = 0.038 + 2 * wraps * 0.0003;
    const edgeOff = (now - wraps) * Math.PI * outside;
    const { plyThickness } = seamCheck({ edgeOff, wraps, plyThickness: 0.0003, readingError: 0.001 });
    expect(plyThickness).toBeCloseTo(0.00031, 6);
  });

  it('says nothing of the ply when the wraps are too few to show it', () => {
    const few = seamCheck({ edgeOff: 0.003, wraps: 3, plyThickness: 0.0003, readingError: 0.002 });
    expect(few.plyThickness).toBeUndefined();
    expect(few.error).toBeCloseTo(0.002 / (Math.PI * 9 * 0.0003), 12);
  });

  it('asks for a look at more than 5 mm, either way', () => {
    const at = (edgeOff: number) =>
      seamCheck({ edgeOff, wraps: 3, plyThickness: 0.0003, readingError: 0.002 }).look;
    expect([at(0.005), at(-0.005), at(0.0051), at(-0.0051)]).toEqual([false, false, true, true]);
  });

  it('never gives a ply of no thickness', () => {
    const far = seamCheck({ edgeOff: 1, wraps: 10, plyThickness: 0.0003, readingError: 0.001 });
    expect(far.plyThickness).toBeUndefined();
    expect(far.look).toBe(true);
  });

  it('is a gross check beside the diameter of the cured tube', () => {
    expect(plyThicknessFromDiameter({ outsideDiameter: 0.0404, innerDiameter: 0.038, wraps: 4 })).toBeCloseTo(
      0.0003,
      12,
    );
  });
});

describe('sheets at true size', () => {
  const bounds = { minX: -0.02, minY: 0, maxX: 3, maxY: 0.35 };

  it('cover the whole drawing and lap by what is asked', () => {
    fc.assert(
      fc.property(
        fc.record({
          minX: fc.double({ min: -1, max: 0, noNaN: true }),
          minY: fc.double({ min: -1, max: 0, noNaN: true }),
          maxX: fc.double({ min: 0, max: 6, noNaN: true }),
          maxY: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        fc.constantFrom('a4', 'letter'),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (whole, paper, margin, overlap) => {
          const { tiles, columns, rows, sheet } = trueSizeTiles({ bounds: whole, paper, margin, overlap });
          expect(tiles).toHaveLength(columns * rows);
          const last = tiles.at(-1);
          expect([tiles[0]?.x, tiles[0]?.y]).toEqual([
            expect.closeTo(whole.minX, 12),
            expect.closeTo(whole.minY, 12),
          ]);
          expect((last?.x ?? 0) + (last?.width ?? 0)).toBeGreaterThanOrEqual(whole.maxX - 1e-9);
          expect((last?.y ?? 0) + (last?.height ?? 0)).toBeGreaterThanOrEqual(whole.maxY - 1e-9);
          expect(last?.width).toBeCloseTo(sheet.width - 2 * margin, 12);
          const beside = tiles.find(({ row, column }) => row === 0 && column === 1);
          if (beside) expect((tiles[0]?.x ?? 0) + (tiles[0]?.width ?? 0) - beside.x).toBeCloseTo(overlap, 12);
        },
      ),
    );
  });

  it('lie the way round that takes fewer, each with room for a length of 100 mm', () => {
    const { sheet, tiles } = trueSizeTiles({ bounds, paper: 'a4', margin: 0.01, overlap: 0.01 });
    expect(sheet).toEqual({ width: 0.297, height: 0.21 });
    expect(tiles).toHaveLength(12 * 2);
    expect(() => trueSizeTiles({ bounds, paper: 'a4', margin: 0.05, overlap: 0.01 })).toThrow('margin');
    expect(() => trueSizeTiles({ bounds, paper: 'a3' as 'a4', margin: 0.01, overlap: 0.01 })).toThrow(
      'paper',
    );
  });

  it('are refused by the thousand', () => {
    const huge = { minX: 0, minY: 0, maxX: 100, maxY: 10 };
    expect(() => trueSizeTiles({ bounds: huge, paper: 'a4', margin: 0.01, overlap: 0.01 })).toThrow(
      'bounds must fit on 2000 sheets',
    );
  });
});
