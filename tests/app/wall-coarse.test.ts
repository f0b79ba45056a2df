import { describe, expect, test } from 'vitest';
import { coarse } from '#app/planning/wall/pictures/coarse.ts';
import { layersOf } from '#app/planning/wall/pictures/layers.ts';
import { masses, rollOf } from '#app/planning/wall/wall-model.ts';
import { lowerMastPlies, pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const sleeve = pieceOf(
  shape([
    [0, 2],
    [0.3337, 1],
  ]),
  { start: 0.7771 },
);
const plan = wallOf([pieceOf(lowerMastPlies), sleeve]);

describe('a roll drawn no finer than the screen', () => {
  const roll = rollOf(plan, shelf);
  const drawn = coarse(roll, 300);

  test('has two samples a pixel, and some more for corners', () => {
    expect(drawn.at.length).toBeLessThan(640);
    expect(roll.at.length).toBeGreaterThan(2400);
  });

  test('keeps every station, both sides of a jump, and both ends', () => {
    for (const at of [0, 0.5, 0.56, 0.8, 0.7771, 1.1108, 1.4, 2.4]) {
      expect([...drawn.at].some((x) => Math.abs(x - at) < 1e-9)).toBe(true);
    }
    const jumps = [...drawn.before].filter((b) => b === 1).length;
    expect(jumps).toBe([...roll.before].filter((b) => b === 1).length);
  });

  test('says the same of the wall as the whole one', () => {
    expect(layersOf(drawn).says).toBe(layersOf(roll).says);
  });

  test('is the same object as long as its roll is, so that pictures need not be drawn anew', () => {
    expect(coarse(roll, 300)).toBe(drawn);
    expect(coarse(roll, 100_000)).toBe(roll);
  });
});

test('what a thumb sees while it drags weighs the same to a hundredth of a gram', () => {
  const fine = masses(plan, rollOf(plan, shelf), shelf)?.total ?? Number.NaN;
  const quick = masses(plan, rollOf(plan, shelf, 2.4 / 700), shelf)?.total ?? Number.NaN;
  expect(Math.abs(fine - quick)).toBeLessThan(1e-5);
});
