import { describe, expect, it } from 'vitest';
import { cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { wallCautions } from '#app/planning/wall/wall-cautions.ts';
import { flatPieces, masses, rollOf, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { wallProblem } from '#app/planning/wall/wall-words.ts';
import { pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const even = (length: number, plies: number) =>
  shape([
    [0, plies],
    [length, plies],
  ]);

function tube(length: number, plan: WalledPlan): WalledPlan {
  const mandrel = shape([
    [0, 0.0508],
    [length, 0.0508],
  ]);
  return { ...plan, tubeLength: length, wall: { ...plan.wall, mandrel } };
}

function refused(plan: WalledPlan): string {
  try {
    flatPieces(rollOf(plan, shelf));
  } catch (error) {
    if (error instanceof RangeError) return wallProblem(error, plan.wall).says;
    throw error;
  }
  return '';
}

describe('a wall at the ends of what is made by hand', () => {
  for (const length of [0.1, 12]) {
    it(`of ${length} m is rolled, cut and weighed like any other`, () => {
      const plan = tube(length, wallOf([pieceOf(even(length, 3), { overlap: 0.015 })]));
      const roll = rollOf(plan, shelf);
      const [piece] = cutPieces(plan, shelf);
      // w = pi n (D + n t) + lap, by hand, of 193 g/m2 carbon at 35 % fiber
      const ply = 0.193 / 1790 / 0.35;
      expect(piece?.width).toBeCloseTo(Math.PI * 3 * (0.0508 + 3 * ply) + 0.015, 6);
      const cloth = masses(plan, roll, shelf)?.cloth ?? 0;
      expect(cloth).toBeCloseTo((piece?.width ?? 0) * length * 0.193, 6);
      expect(wallCautions(plan, roll)).toEqual([]);
    });
  }

  it('with 200 stations keeps each of them on the cloth', () => {
    const stations = Array.from({ length: 200 }, (_, k) => [(k * 2.4) / 199, 3 + Math.sin(k / 20)] as const);
    const plan = wallOf([pieceOf(shape(stations, 'smooth'), { overlap: 0.015 })]);
    expect(flatPieces(rollOf(plan, shelf))[0]?.marks).toHaveLength(200);
  });
});

describe('a wall that cannot be is told in one sentence', () => {
  const at = (
    stations: readonly (readonly [number, number])[],
    between: 'straight' | 'smooth' | 'step' = 'straight',
  ) => refused(wallOf([pieceOf(shape(stations, between), { name: 'Skin' })]));

  it('stations out of order, and on top of each other', () => {
    expect(
      at([
        [0, 3],
        [1, 3],
        [0.8, 3],
        [2.4, 3],
      ]),
    ).toMatch(/^The stations of Skin are out of order/);
    expect(
      at([
        [0, 3],
        [1, 3],
        [1, 4],
        [2.4, 3],
      ]),
    ).toMatch(/^Two stations of Skin lie on top of each other/);
  });

  it('nothing at a station, and less than nothing', () => {
    expect(
      at([
        [0, 3],
        [2.4, 0],
      ]),
    ).toMatch(/^Skin has a station with nothing there/);
    expect(
      at([
        [0, 3],
        [2.4, -1],
      ]),
    ).toMatch(/^Skin has a station with nothing there/);
  });

  it('a smooth curve through a step', () => {
    expect(
      at(
        [
          [0, 3],
          [1, 3],
          [1.0005, 5],
          [2.4, 3],
        ],
        'smooth',
      ),
    ).toMatch(/^Skin steps where it should be smooth/);
  });

  it('a piece longer than its tube', () => {
    expect(
      at([
        [0, 3],
        [2.6, 3],
      ]),
    ).toMatch(/^Skin reaches 2600.mm and the tube ends at 2400.mm/);
  });

  it('a wall that does not fit the taper of its mandrel', () => {
    const plan = wallOf([pieceOf(even(0.3, 12), { name: 'Skin' })], { tubeLength: 0.3 });
    const cone = shape([
      [0, 0.3],
      [0.3, 0.1],
    ]);
    expect(refused({ ...plan, wall: { ...plan.wall, mandrel: cone } })).toMatch(
      /^Skin does not fit the taper/,
    );
  });
});
