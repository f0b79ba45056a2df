import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nextStep } from '#app/parts/step-field.tsx';
import {
  addStation,
  convert,
  giveBy,
  mirrored,
  moveStation,
  removeStation,
  roomOf,
  scaledTo,
  shapedLike,
  shapeOf,
  stationsOnTube,
} from '#app/planning/wall/shape-edits.ts';
import { alongStep, snap, upStep } from '#app/planning/wall/snapping.ts';
import { lowerMastPlies, pieceOf, shape } from './wall-of.ts';

const under = { startDiameter: 0.0508, thickness: 0.0003, overlap: 0.015 };

describe('stations of a piece', () => {
  test('moving the first one moves where the piece starts, and leaves the others where they lie', () => {
    const moved = moveStation(pieceOf(lowerMastPlies), 0, { at: 0.2 });
    expect(moved.start).toBeCloseTo(0.2, 12);
    expect(shapeOf(moved).stations[0]?.at).toBe(0);
    expect(stationsOnTube(moved).map((s) => Number(s.at.toFixed(9)))).toEqual([
      0.2, 0.5, 0.56, 0.8, 1.4, 2.4,
    ]);
  });

  test('one can be moved up to a millimeter from its neighbors, and not off the tube', () => {
    const piece = pieceOf(lowerMastPlies);
    expect(roomOf(piece, 2, 2.4)).toEqual({ min: 0.501, max: 0.799 });
    expect(roomOf(piece, 0, 2.4).min).toBe(0);
    expect(roomOf(piece, 5, 2.4).max).toBe(2.4);
  });

  test('a new one lies halfway to the next, on the line that is there', () => {
    const { piece, index } = addStation(pieceOf(lowerMastPlies), 4);
    expect(index).toBe(5);
    expect(stationsOnTube(piece)[5]).toEqual({ at: 1.9, value: 2.5 });
  });

  test('asked for after the last, it comes before it', () => {
    const { piece, index } = addStation(pieceOf(lowerMastPlies), 5);
    expect(index).toBe(5);
    expect(stationsOnTube(piece)).toHaveLength(7);
  });

  test('between two that lie on each other there is no room for one', () => {
    const tight = pieceOf(
      shape([
        [0, 3],
        [0.001, 4],
      ]),
    );
    expect(addStation(tight, 0).piece).toBe(tight);
  });

  test('two ends always stay', () => {
    const two = pieceOf(
      shape([
        [0, 3],
        [2.4, 3],
      ]),
    );
    expect(removeStation(two, 0)).toBe(two);
    expect(stationsOnTube(removeStation(pieceOf(lowerMastPlies), 2))).toHaveLength(5);
  });

  test('a first one deleted lets the piece start at the second', () => {
    expect(removeStation(pieceOf(lowerMastPlies), 0).start).toBe(0.5);
  });
});

describe('plies, wall and width', () => {
  test('4 plies of 0.3 mm on 50.8 mm want a cloth of pi 4 (50.8 + 4 x 0.3) and the lap', () => {
    const width = convert({ plies: 4 }, 'width', under);
    expect(width).toBeCloseTo(Math.PI * 4 * (0.0508 + 4 * 0.0003) + 0.015, 12);
    expect(convert({ plies: 4 }, 'wall', under)).toBeCloseTo(0.0012, 12);
  });

  test('whatever a piece is given by, it stays the same piece there and back', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.2, max: 40, noNaN: true }), { minLength: 2, maxLength: 12 }),
        fc.constantFrom('width' as const, 'wall' as const),
        (plies, by) => {
          const piece = pieceOf(shape(plies.map((value, i) => [i * 0.2, value])));
          const back = giveBy(
            giveBy(piece, by, () => under),
            'plies',
            () => under,
          );
          shapeOf(back).stations.forEach((s, i) => {
            expect(s.value / (plies[i] ?? 0)).toBeCloseTo(1, 9);
          });
        },
      ),
    );
  });
});

describe('the whole shape', () => {
  test('turned end for end twice it is as it was', () => {
    const piece = pieceOf(lowerMastPlies);
    const twice = stationsOnTube(mirrored(mirrored(piece)));
    twice.forEach((s, i) => {
      expect(s.at).toBeCloseTo(lowerMastPlies.stations[i]?.at ?? -1, 9);
      expect(s.value).toBe(lowerMastPlies.stations[i]?.value);
    });
  });

  test('stretched, every station moves by the same share', () => {
    expect(
      stationsOnTube(scaledTo(pieceOf(lowerMastPlies), 4.8)).map((s) => Number(s.at.toFixed(9))),
    ).toEqual([0, 1, 1.12, 1.6, 2.8, 4.8]);
  });

  test('shaped like another it takes over its stations and where it starts, not its cloth', () => {
    const other = pieceOf(lowerMastPlies, { start: 0.3, material: 'other' });
    const piece = shapedLike(
      pieceOf(
        shape([
          [0, 1],
          [1, 1],
        ]),
      ),
      other,
    );
    expect(stationsOnTube(piece)).toEqual(stationsOnTube(other));
    expect(piece.material).not.toBe('other');
  });
});

describe('a thumb', () => {
  test('snaps to the first even figure that is no finer than a pixel', () => {
    expect(alongStep(2.4 / 300, 'metric')).toBe(0.01);
    expect(alongStep(0.1 / 300, 'metric')).toBe(0.001);
    expect(alongStep(12 / 300, 'metric')).toBe(0.05);
    expect(alongStep(2.4 / 300, 'inchPound')).toBeCloseTo(0.0127, 9);
  });

  test('reaches the ends though they are no whole step, and never leaves them', () => {
    expect(snap(0.5619, 0.01, 0.501, 0.799)).toBeCloseTo(0.56, 12);
    expect(snap(0.2, 0.01, 0.501, 0.799)).toBe(0.501);
    expect(snap(5, 0.01, 0.501, 0.799)).toBe(0.799);
    expect(snap(0.5012, 0.01, 0.501, 0.799)).toBe(0.501);
  });

  test('steps a figure that is no whole one to the next whole one', () => {
    expect(nextStep(3.3, 1, 1)).toBe(4);
    expect(nextStep(3.3, 1, -1)).toBe(3);
    expect(nextStep(3, 1, 1)).toBe(4);
    expect(nextStep(2.9999999, 1, -1)).toBe(2);
    expect(nextStep(0.1 + 0.2, 0.1, 1)).toBeCloseTo(0.4, 12);
    expect(upStep('plies', 'metric')).toBe(1);
  });
});
