import { describe, expect, it } from 'vitest';
import { followingReadings, mandrelTimeConstant } from '#calc';
import { mandrelHeat } from '#shared/reference/mandrel-heat.ts';
import { celsius } from './histories.ts';

const heat = (material: 'aluminum' | 'steel') => mandrelHeat[material] ?? { density: 0, specificHeat: 0 };
const minutes = (seconds: number) => seconds / 60;

describe('the time constant of a mandrel', () => {
  // Common practice, no source: three of them are 5 to 9 min for a thin aluminum tube, 20 to 40 for a 25 mm steel bar.
  it.each([0.0013, 0.00165, 0.0021])(
    'of an aluminum tube with a wall of %f m: three are 5 to 9 min',
    (wall) => {
      const three = 3 * mandrelTimeConstant({ diameter: 0.038, wall, ...heat('aluminum') });
      expect(minutes(three)).toBeGreaterThan(5);
      expect(minutes(three)).toBeLessThan(9);
    },
  );

  it.each([30, 60])(
    'of a 25 mm steel bar in air that moves: three are 20 to 40 min (h %i)',
    (heatTransfer) => {
      const three = 3 * mandrelTimeConstant({ diameter: 0.025, ...heat('steel'), heatTransfer });
      expect(minutes(three)).toBeGreaterThanOrEqual(19);
      expect(minutes(three)).toBeLessThanOrEqual(40);
    },
  );

  it('of a tube whose wall is half its diameter is that of a bar', () => {
    const bar = mandrelTimeConstant({ diameter: 0.025, ...heat('steel') });
    expect(mandrelTimeConstant({ diameter: 0.025, wall: 0.0125, ...heat('steel') })).toBe(bar);
    expect(() => mandrelTimeConstant({ diameter: 0.025, wall: 0.013, ...heat('steel') })).toThrow('wall');
  });
});

describe('what a part was at by the air', () => {
  it('has come 63 % of the way after one time constant and 95 % after three', () => {
    const cameTo = (times: number) =>
      followingReadings({
        readings: celsius([0, 100], [times * 5, 100]),
        timeConstant: 300,
        start: 273.15,
      }).at(-1)?.temperature;
    expect(cameTo(1)).toBeCloseTo(273.15 + 63.212, 2);
    expect(cameTo(3)).toBeCloseTo(273.15 + 95.021, 2);
  });

  it('lags a steady ramp by the time constant, in the end', () => {
    const part = followingReadings({
      readings: celsius([0, 20], [100, 120]),
      timeConstant: 300,
      start: 293.15,
    });
    expect(part.at(-1)?.temperature).toBeCloseTo(273.15 + 115, 4);
  });

  it('agrees with small steps in time over an uneven history', () => {
    const readings = celsius([0, 20], [10, 66], [40, 66], [41, 90], [70, 30]);
    const parts = followingReadings({ readings, timeConstant: 420, start: 290 });
    let [part, air] = [290, readings[0]];
    for (const next of readings.slice(1)) {
      const steps = 20000;
      const from = air ?? next;
      const dt = (next.time - from.time) / steps;
      for (let s = 0; s < steps; s += 1) {
        const t = from.temperature + ((s + 0.5) / steps) * (next.temperature - from.temperature);
        part += ((t - part) * dt) / 420;
      }
      expect(parts.find((p) => p.time === next.time)?.temperature).toBeCloseTo(part, 2);
      air = next;
    }
    expect(parts.map((p) => p.time)).toEqual(parts.map((p) => p.time).sort((a, b) => a - b));
  });
});
