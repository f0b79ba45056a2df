import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { helixLength, helixReach, hoopPressure, tapeAdvance, tapeLayers, tapePull, windTape } from '#calc';

const diameter = fc.double({ min: 0.005, max: 0.3, noNaN: true });
const length = fc.double({ min: 0.05, max: 10, noNaN: true });
const width = fc.double({ min: 0.005, max: 0.1, noNaN: true });
const overlapFraction = fc.double({ min: 0, max: 0.9, noNaN: true });

describe('a length of tape', () => {
  it('goes as far as the tube it was reckoned for', () => {
    fc.assert(
      fc.property(diameter, length, width, (d, long, advance) => {
        const tapeLength = helixLength({ diameter: d, length: long, advance });
        expect(helixReach({ diameter: d, tapeLength, advance }) / long).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is longer than the tube and than its turns, and grows with diameter and overlap', () => {
    fc.assert(
      fc.property(diameter, length, width, overlapFraction, (d, long, w, f) => {
        const tape = (by: object) => {
          const input = { width: w, overlapFraction: f, diameter: d, length: long, ...by };
          return helixLength({ ...input, advance: tapeAdvance(input) });
        };
        const turns = long / tapeAdvance({ width: w, overlapFraction: f });
        expect(tape({})).toBeGreaterThan(long);
        expect(tape({})).toBeGreaterThanOrEqual(turns * Math.PI * d);
        expect(tape({ diameter: 1.01 * d })).toBeGreaterThan(tape({}));
        expect(tape({ overlapFraction: f + 0.01 })).toBeGreaterThan(tape({}));
      }),
    );
  });

  it('wound on an even tube is the helix, and on many short stretches of a cone the cone', () => {
    fc.assert(
      fc.property(diameter, diameter, length, width, (d0, d1, long, w) => {
        const tape = { width: w, thickness: 0, overlapFraction: 0.5, passes: 1 };
        const even = [0, long].map((at) => ({ at, diameter: d0 }));
        const helix = helixLength({ diameter: d0, length: long, advance: w / 2 });
        expect(windTape({ outside: even, ...tape }).length / helix).toBeCloseTo(1, 12);
        const many = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => ({
          at: (long * k) / 7,
          diameter: d0 + ((d1 - d0) * k) / 7,
        }));
        const [first, last] = [many[0], many[7]];
        if (!first || !last) throw new Error('eight places');
        const cone = windTape({ outside: [first, last], ...tape }).length;
        expect(windTape({ outside: many, ...tape }).length / cone).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of two passes is more than twice one, by what the second lies on', () => {
    const outside = [0, 1].map((at) => ({ at, diameter: 0.04 }));
    const tape = { outside, width: 0.025, thickness: 5e-5, overlapFraction: 0.5 };
    const once = windTape({ ...tape, passes: 1 });
    const twice = windTape({ ...tape, passes: 2 });
    expect(twice.turns).toBeCloseTo(2 * once.turns, 12);
    expect(twice.length).toBeGreaterThan(2 * once.length);
    // Two layers of 0.05 mm more on each side: 80 turns of pi times 0.2 mm.
    expect(twice.length - 2 * once.length).toBeCloseTo(80 * Math.PI * 0.0002, 3);
  });

  it('jumps where the tube has a step, and refuses places out of order', () => {
    const tape = { width: 0.025, thickness: 0, overlapFraction: 0.5, passes: 1 };
    const outside = [
      { at: 0, diameter: 0.03 },
      { at: 0.5, diameter: 0.03 },
      { at: 0.5, diameter: 0.04 },
      { at: 1, diameter: 0.04 },
    ];
    const both = [0.03, 0.04].map((d) => helixLength({ diameter: d, length: 0.5, advance: 0.0125 }));
    expect(windTape({ outside, ...tape }).length).toBeCloseTo((both[0] ?? 0) + (both[1] ?? 0), 9);
    expect(() => windTape({ outside: [...outside].reverse(), ...tape })).toThrow('outside[1].at');
    expect(() => windTape({ outside: outside.slice(0, 1), ...tape })).toThrow('outside must be a list');
  });
});

describe('layers of tape', () => {
  it.each([
    [0, 1, 1, 1],
    [0.5, 1, 2, 2],
    [0.5, 2, 4, 4],
    [2 / 3, 1, 3, 3],
    [0.667, 1, 3, 3],
    [0.75, 2, 8, 8],
    [0.6, 1, 2, 3],
    [0.3, 2, 2, 4],
  ])('at %f overlap and %i passes are %i to %i', (overlap, passes, least, most) => {
    expect(tapeLayers({ overlapFraction: overlap, passes })).toEqual({ least, most });
  });

  it('come in whole passes', () => {
    expect(() => tapeLayers({ overlapFraction: 0.5, passes: 1.5 })).toThrow('passes');
  });
});

describe('the pull of a tape', () => {
  const points = [
    { temperature: 338, force: 0 },
    { temperature: 373, force: 400 },
    { temperature: 423, force: 600 },
  ];

  it('is none below its first point, the points themselves, and the last beyond it', () => {
    for (const { temperature, force } of points) expect(tapePull({ points, temperature })).toBe(force);
    expect(tapePull({ points, temperature: 300 })).toBe(0);
    expect(tapePull({ points, temperature: 500 })).toBe(600);
    expect(tapePull({ points: points.slice(1), temperature: 372.9 })).toBe(0);
  });

  it('never falls as it gets hotter when its points do not', () => {
    fc.assert(
      fc.property(fc.double({ min: 250, max: 500, noNaN: true }), (temperature) => {
        const pull = tapePull({ points, temperature });
        expect(tapePull({ points, temperature: temperature + 1 })).toBeGreaterThanOrEqual(pull);
      }),
    );
  });

  it('wants its points from cold to hot', () => {
    expect(() => tapePull({ points: [...points].reverse(), temperature: 350 })).toThrow(
      'points[1].temperature must be greater than 423 K',
    );
  });

  it('presses harder on a thin tube, in proportion', () => {
    const pressure = (radius: number, layers: number) =>
      hoopPressure({ tensionPerWidth: 500, radius, layers });
    expect(pressure(0.01, 2)).toBe(100_000);
    expect(pressure(0.02, 2)).toBe(50_000);
    expect(pressure(0.02, 0)).toBe(0);
  });
});
