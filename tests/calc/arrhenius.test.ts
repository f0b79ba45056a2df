import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activationEnergy, timeAtTemperature } from '#calc';

const kelvin = fc.double({ min: 263.15, max: 473.15, noNaN: true });
const energy = fc.double({ min: 1000, max: 150000, noNaN: true });

describe('time at another temperature', () => {
  it('returns to the same time by way of any temperature', () => {
    fc.assert(
      fc.property(kelvin, kelvin, energy, (at, temperature, given) => {
        const there = timeAtTemperature({ time: 3600, at, temperature, activationEnergy: given });
        const back = timeAtTemperature({
          time: there,
          at: temperature,
          temperature: at,
          activationEnergy: given,
        });
        expect(back).toBeCloseTo(3600, 6);
      }),
    );
  });

  it('is shorter where it is hotter, and the same at the same temperature', () => {
    const life = { time: 1500, at: 298.15, activationEnergy: 55000 };
    expect(timeAtTemperature({ ...life, temperature: 308.15 })).toBeLessThan(1500);
    expect(timeAtTemperature({ ...life, temperature: 298.15 })).toBe(1500);
    expect(timeAtTemperature({ ...life, time: 0, temperature: 1 })).toBe(0);
    expect(() => timeAtTemperature({ ...life, temperature: 1 })).toThrow('temperature is too far');
  });
});

describe('activation energy', () => {
  it('is found again from the times that it makes', () => {
    fc.assert(
      fc.property(
        energy,
        fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 2 }),
        (given, steps) => {
          const points = steps.map((step) => {
            const temperature = 288.15 + 5 * step;
            return {
              temperature,
              time: timeAtTemperature({ time: 604800, at: 298.15, temperature, activationEnergy: given }),
            };
          });
          expect(activationEnergy(points) / given).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('does not depend on the order of the points', () => {
    const points = [
      { temperature: 296.15, time: 700000 },
      { temperature: 313.15, time: 90000 },
      { temperature: 333.15, time: 20000 },
    ];
    expect(activationEnergy([...points].reverse())).toBeCloseTo(activationEnergy(points), 6);
  });

  it('is below 0 when hotter takes longer, and nothing when all is at one temperature', () => {
    const hot = { temperature: 333.15, time: 7200 };
    expect(activationEnergy([{ temperature: 298.15, time: 3600 }, hot])).toBeLessThan(0);
    expect(() => activationEnergy([hot, { ...hot, time: 3600 }])).toThrow('temperature must differ');
    expect(() => activationEnergy([hot])).toThrow('points must be a list of at least 2, got 1');
  });
});
