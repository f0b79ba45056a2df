import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdTime, peak, rampRates, steepest, timeAbove } from '#calc';
import { celsius, history, type Reading } from './histories.ts';

const level = fc.double({ min: 253.15, max: 483.15, noNaN: true });
const lasts = (readings: readonly Reading[]): number =>
  (readings.at(-1)?.time ?? 0) - (readings[0]?.time ?? 0);

describe('time in a band', () => {
  it('and below it and above it make up the whole, on any history', () => {
    fc.assert(
      fc.property(history, level, level, (readings, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const below = lasts(readings) - holdTime({ readings, low });
        const sum = below + holdTime({ readings, low, high }) + timeAbove({ readings, limit: high });
        expect(Math.abs(sum - lasts(readings))).toBeLessThan(1e-6);
      }),
    );
  });

  it('agrees with counting fine slices', () => {
    fc.assert(
      fc.property(history, level, (readings, low) => {
        const slices = 2000;
        let counted = 0;
        readings.slice(1).forEach((to, index) => {
          const from = readings[index] ?? to;
          for (let k = 0; k < slices; k += 1) {
            const at = from.temperature + ((k + 0.5) / slices) * (to.temperature - from.temperature);
            if (at >= low) counted += (to.time - from.time) / slices;
          }
        });
        const slice = lasts(readings) / slices;
        expect(Math.abs(holdTime({ readings, low }) - counted)).toBeLessThanOrEqual(slice + 1e-6);
      }),
      { numRuns: 50 },
    );
  });

  it('interpolates the crossings', () => {
    const readings = celsius([0, 20], [60, 80], [120, 20]);
    expect(holdTime({ readings, low: 333.15 })).toBeCloseTo(2400, 6);
    expect(holdTime({ readings, low: 333.15, high: 343.15 })).toBeCloseTo(1200, 6);
    expect(timeAbove({ readings, limit: 343.15 })).toBeCloseTo(1200, 6);
  });

  it('counts lying exactly on foot or head as inside, and not as over', () => {
    const readings = celsius([0, 60], [10, 60]);
    const on = readings[0]?.temperature ?? 0;
    expect(holdTime({ readings, low: on })).toBe(600);
    expect(holdTime({ readings, low: on - 5, high: on })).toBe(600);
    expect(timeAbove({ readings, limit: on })).toBe(0);
    expect(holdTime({ readings, low: on + 1e-9 })).toBe(0);
  });

  it('takes equal times as a step, which lasts nothing', () => {
    const readings = celsius([0, 20], [10, 20], [10, 80], [20, 80]);
    expect(holdTime({ readings, low: 340 })).toBe(600);
    expect(timeAbove({ readings, limit: 340 })).toBe(600);
  });

  it('is 0 with no reading, with one, and when the band is never reached', () => {
    expect(holdTime({ readings: [], low: 340 })).toBe(0);
    expect(holdTime({ readings: celsius([0, 80]), low: 340 })).toBe(0);
    expect(holdTime({ readings: celsius([0, 20], [60, 60]), low: 340 })).toBe(0);
  });

  it('wants its head no lower than its foot', () => {
    expect(() => holdTime({ readings: [], low: 340, high: 330 })).toThrow(
      'high must be at least 340 K, got 330',
    );
  });
});

describe('the highest read', () => {
  it('is in the readings and no reading is over it', () => {
    fc.assert(
      fc.property(history, (readings) => {
        const top = peak({ readings });
        expect(readings).toContainEqual(top);
        expect(timeAbove({ readings, limit: top.temperature })).toBe(0);
      }),
    );
  });

  it('is the first of equals, and no more than time and temperature of it', () => {
    const readings = celsius([0, 60], [10, 60]).map((reading) => ({ ...reading, channel: 'air' }));
    expect(peak({ readings })).toEqual({ time: 0, temperature: 333.15 });
  });
});

describe('the steepest between readings', () => {
  it('is told for both ways, and is 0 with nothing to compare', () => {
    expect(steepest({ readings: celsius([0, 20], [10, 40], [15, 35], [20, 20]) })).toEqual({
      up: expect.closeTo(20 / 600, 12),
      down: expect.closeTo(15 / 300, 12),
    });
    expect(steepest({ readings: [] })).toEqual({ up: 0, down: 0 });
    expect(steepest({ readings: celsius([0, 20]) })).toEqual({ up: 0, down: 0 });
  });

  it('passes over a step and one time written twice', () => {
    expect(steepest({ readings: celsius([0, 20], [10, 20], [10, 80], [20, 80]) })).toEqual({
      up: 0,
      down: 0,
    });
  });

  it('is never less than the ramp sustained over a window', () => {
    fc.assert(
      fc.property(history, fc.double({ min: 1, max: 7200, noNaN: true }), (readings, window) => {
        const apart = readings.filter(
          ({ time }, index) => index === 0 || time > (readings[index - 1]?.time ?? 0),
        );
        const most = steepest({ readings: apart });
        const sustained = rampRates({ readings: apart, window });
        expect(sustained.up).toBeLessThanOrEqual(most.up * (1 + 1e-6) + 1e-12);
        expect(sustained.down).toBeLessThanOrEqual(most.down * (1 + 1e-6) + 1e-12);
      }),
    );
  });
});

describe('ramp rates', () => {
  const every = (seconds: number, temperatures: number[]): Reading[] =>
    temperatures.map((degrees, index) => ({ time: index * seconds, temperature: degrees + 273.15 }));

  it('of a straight ramp are its slope, at any window that fits in it', () => {
    const readings = every(
      30,
      Array.from({ length: 121 }, (_, k) => 20 + k),
    );
    for (const window of [30, 45, 300, 3600]) {
      expect(rampRates({ readings, window }).up).toBeCloseTo(1 / 30, 12);
      expect(rampRates({ readings, window }).down).toBe(0);
    }
  });

  it('tell heating and cooling apart, both at least 0', () => {
    const up = Array.from({ length: 41 }, (_, k) => 20 + k);
    const down = Array.from({ length: 81 }, (_, k) => 60 - k / 2);
    const rates = rampRates({ readings: every(60, [...up, ...down]), window: 600 });
    expect(rates.up).toBeCloseTo(1 / 60, 12);
    expect(rates.down).toBeCloseTo(0.5 / 60, 12);
  });

  it('do not jump for one bad reading', () => {
    const flat = Array.from({ length: 61 }, (_, k) => (k === 30 ? 70 : 60));
    const readings = every(10, flat);
    expect(steepest({ readings }).up).toBeCloseTo(1, 12);
    expect(rampRates({ readings, window: 300 }).up).toBeLessThan(0.06);
  });

  it('see a rise over a gap longer than the window', () => {
    const readings = celsius([0, 20], [30, 80], [60, 80]);
    expect(rampRates({ readings, window: 300 }).up).toBeCloseTo(60 / 1800, 12);
  });

  it('never come from a run shorter than the window', () => {
    const close = [...celsius([0, 20], [30, 20]), { time: 1801, temperature: 294.15 }, ...celsius([60, 21])];
    expect(rampRates({ readings: close, window: 600 }).up).toBeLessThan(0.01);
  });

  it('take a record shorter than the window as a whole', () => {
    expect(rampRates({ readings: celsius([0, 20], [1, 21]), window: 600 }).up).toBeCloseTo(1 / 60, 12);
    expect(rampRates({ readings: celsius([0, 20]), window: 600 })).toEqual({ up: 0, down: 0 });
    expect(rampRates({ readings: celsius([0, 20], [0, 80]), window: 600 })).toEqual({ up: 0, down: 0 });
    expect(rampRates({ readings: [], window: 600 })).toEqual({ up: 0, down: 0 });
  });
});
