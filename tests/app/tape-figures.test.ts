import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullAt, rollsFor, squeezes, wound } from '#app/laying-up/tape/tape-figures.ts';
import { jobOfBuild } from '#app/laying-up/tape/tape-job.ts';
import { starterTapes } from '#shared/reference/starter-tapes.ts';
import { buildHeader, celsius, schedule } from './oven-loads.ts';

const tape = starterTapes['starter-tape-polyester-25'];
const half = { overlapFraction: 0.5, passes: 2 };
const taper = [
  { at: 0, diameter: 0.04 },
  { at: 1.9, diameter: 0.02 },
];

describe('tape for a tube', () => {
  it('is turns and layers as they are counted, and a tenth more than lies on the tube', () => {
    const even = taper.map((o) => ({ ...o, diameter: 0.04 }));
    const { turns, net, ready, layers, advance } = wound(even, tape, half);
    expect(advance).toBe(0.0125);
    expect(turns).toBeCloseTo((2 * 1.9) / 0.0125, 6);
    expect(layers).toEqual({ least: 4, most: 4 });
    expect(ready / net).toBeCloseTo(1.1, 12);
    // 304 turns of pi (40 mm + 0.2 mm of tape on the mean), the slant left out: 38.4 m
    expect(net).toBeGreaterThan(304 * Math.PI * 0.04);
    expect(net).toBeLessThan(304 * Math.PI * 0.0405);
  });

  it('comes in whole rolls, and what is left of them goes on with what is used', () => {
    expect(rollsFor(50, 50)).toEqual({ rolls: 1, left: 0 });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 900, noNaN: true }), (ready) => {
        const { rolls, left } = rollsFor(ready, 50);
        expect(rolls * 50 - left).toBeCloseTo(ready, 9);
        expect(left).toBeGreaterThanOrEqual(-1e-6);
        expect(left).toBeLessThan(50);
      }),
    );
  });
});

describe('the squeeze of a tape', () => {
  it('is winding tension only below its window', () => {
    expect(pullAt(tape, celsius(60))).toEqual({ by: 'winding' });
  });

  it('goes by what the tape is said to pull, and by what tapes usually pull where nothing is said', () => {
    expect(pullAt(tape, celsius(100))).toEqual({ by: 'typical', least: 400, most: 400 });
    const { shrinkForce: _, ...plain } = tape;
    expect(pullAt(plain, celsius(100))).toEqual({ by: 'typical', least: 200, most: 1000 });
    const { typical: __, ...own } = tape;
    expect(pullAt(own, celsius(90))).toMatchObject({ by: 'measured' });
  });

  it('grows from nothing where a tape begins to shrink before its first figure', () => {
    const own = { ...tape, shrinkForce: [{ temperature: celsius(105), force: 400 }] };
    const { least } = pullAt(own, celsius(85)) as { least: number };
    expect(least).toBeCloseTo(200, 6);
  });

  it('is hardest where the tube is thin', () => {
    const places = squeezes(taper, { by: 'typical', least: 400, most: 400 }, { least: 4, most: 4 });
    // n T/R: 4 x 400/0.01 and 4 x 400/0.02
    expect(places.map((p) => p.most)).toEqual([160_000, 80_000]);
    expect(places.map((p) => p.at)).toEqual([1.9, 0]);
    const even = taper.map((o) => ({ ...o, diameter: 0.04 }));
    expect(squeezes(even, { by: 'typical', least: 200, most: 1000 }, { least: 4, most: 4 })).toHaveLength(1);
  });
});

describe('a tube without a plan', () => {
  it('is wound by what it was started with, and says what is missing otherwise', () => {
    const known = { mandrelDiameter: 0.0381, tubeLength: 1.75, plies: 3, schedule };
    expect(jobOfBuild(buildHeader(known))).toMatchObject({ outside: [{ at: 0 }, { at: 1.75 }], tape });
    expect(jobOfBuild(buildHeader())).toEqual({ says: expect.stringContaining('without its diameter') });
  });
});
