import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dewPoint, tubeSection, widthForWraps, wrapsForWidth } from '#calc';

const diameter = fc.double({ min: 0.005, max: 0.5, noNaN: true });
const ply = fc.double({ min: 0.00002, max: 0.002, noNaN: true });

describe('the roll', () => {
  it('returns to the same width by way of the wraps, and to the same wraps by way of the width', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 200, noNaN: true }),
        diameter,
        ply,
        (value, startDiameter, plyThickness) => {
          const core = { startDiameter, plyThickness };
          const width = widthForWraps({ wraps: value, ...core });
          expect(wrapsForWidth({ width, ...core }) / value).toBeCloseTo(1, 12);
          const wraps = wrapsForWidth({ width: value, ...core });
          expect(widthForWraps({ wraps, ...core }) / value).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it('fills the ring between core and outside with the area of the cloth', () => {
    const core = { startDiameter: 0.038, plyThickness: 0.0003 };
    const wraps = wrapsForWidth({ width: 0.5, ...core });
    const { area } = tubeSection({ innerDiameter: 0.038, wall: wraps * 0.0003 });
    expect(area).toBeCloseTo(0.5 * 0.0003, 15);
  });

  it('makes no wrap of no cloth', () => {
    expect(wrapsForWidth({ width: 0, startDiameter: 0.038, plyThickness: 0.0003 })).toBe(0);
    expect(widthForWraps({ wraps: 0, startDiameter: 0.038, plyThickness: 0.0003 })).toBe(0);
  });
});

describe('the section of a tube', () => {
  it('is the difference of two solid bars', () => {
    fc.assert(
      fc.property(diameter, fc.double({ min: 0.0002, max: 0.05, noNaN: true }), (inner, wall) => {
        const tube = tubeSection({ innerDiameter: inner, wall });
        const outside = tubeSection({ innerDiameter: 0, wall: inner / 2 + wall });
        const hole = tubeSection({ innerDiameter: 0, wall: inner / 2 });
        expect((hole.area + tube.area) / outside.area).toBeCloseTo(1, 12);
        expect((hole.i + tube.i) / outside.i).toBeCloseTo(1, 12);
        expect(tube.j).toBe(2 * tube.i);
      }),
    );
  });

  it('keeps its digits in a wall a millionth of the diameter', () => {
    const { i } = tubeSection({ innerDiameter: 1 - 1e-6, wall: 1e-6 });
    // Thin wall about its mean diameter of 1 m: pi r^3 t (1 + (t/2r)^2), with r = 0.5 m.
    expect(i / ((Math.PI * 1e-6) / 8)).toBeCloseTo(1, 11);
  });
});

describe('the dew point', () => {
  it('is the air itself at 100 % and below it otherwise, higher the damper', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 228.15, max: 333.15, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (temperature, relativeHumidity) => {
          expect(dewPoint({ temperature, relativeHumidity: 1 })).toBeCloseTo(temperature, 9);
          const dew = dewPoint({ temperature, relativeHumidity });
          expect(dew).toBeLessThan(temperature);
          expect(dewPoint({ temperature, relativeHumidity: relativeHumidity + 0.01 })).toBeGreaterThan(dew);
        },
      ),
    );
  });

  it('is given at both ends of its range and not beyond', () => {
    for (const temperature of [228.15, 333.15]) {
      expect(dewPoint({ temperature, relativeHumidity: 0.5 })).toBeLessThan(temperature);
    }
    expect(() => dewPoint({ temperature: 228.1, relativeHumidity: 0.5 })).toThrow('temperature');
    expect(() => dewPoint({ temperature: 333.2, relativeHumidity: 0.5 })).toThrow('temperature');
    expect(() => dewPoint({ temperature: 293.15, relativeHumidity: 0 })).toThrow('relativeHumidity');
  });
});
