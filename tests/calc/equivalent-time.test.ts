import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureTimeUsed, equivalentTime, timeAtTemperature } from '#calc';
import { celsius, history, type Reading } from './histories.ts';

const GAS = 8.31446261815324;
const SEED = 20;

/** Composite Simpson on a fine even grid: another rule and no adaption, to check the first by. */
function bySimpson(readings: readonly Reading[], reference: number, energy: number): number {
  const pieces = 1000;
  let total = 0;
  readings.slice(1).forEach((to, index) => {
    const from = readings[index] ?? to;
    const rate = (share: number): number => {
      const temperature = from.temperature + share * (to.temperature - from.temperature);
      return Math.exp((energy / GAS) * (1 / reference - 1 / temperature));
    };
    let sum = rate(0) + rate(1);
    for (let k = 1; k < pieces; k += 1) sum += rate(k / pieces) * (k % 2 === 0 ? 2 : 4);
    total += ((to.time - from.time) * sum) / (3 * pieces);
  });
  return total;
}

describe('equivalent time', () => {
  it(`agrees with another quadrature to 1e-8 on 1,000 histories (seed ${SEED})`, () => {
    let compared = 0;
    fc.assert(
      fc.property(
        history,
        fc.double({ min: 283.15, max: 423.15, noNaN: true }),
        fc.double({ min: 0, max: 130000, noNaN: true }),
        (readings, referenceTemperature, activationEnergy) => {
          const got = equivalentTime({ readings, referenceTemperature, activationEnergy });
          const wanted = bySimpson(readings, referenceTemperature, activationEnergy);
          expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-8 * wanted);
          compared += 1;
        },
      ),
      { numRuns: 1000, seed: SEED },
    );
    expect(compared).toBe(1000);
  });

  it('at the reference temperature is the time itself', () => {
    const readings = celsius([0, 60], [90, 60], [600, 60]);
    const input = { readings, referenceTemperature: 333.15, activationEnergy: 55000 };
    expect(equivalentTime(input)).toBeCloseTo(36000, 9);
  });

  it('with no activation energy is the time itself at any temperature', () => {
    const readings = celsius([0, 20], [30, 80], [600, 65]);
    const input = { readings, referenceTemperature: 298.15, activationEnergy: 0 };
    expect(equivalentTime(input)).toBeCloseTo(36000, 9);
  });

  it('does not change when a reading on the line is added, and adds up over parts', () => {
    fc.assert(
      fc.property(history, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (readings, share) => {
        const at = (given: Reading[]): number =>
          equivalentTime({ readings: given, referenceTemperature: 333.15, activationEnergy: 70000 });
        const [first, second, ...rest] = readings;
        if (!first || !second) return;
        const between = {
          time: first.time + share * (second.time - first.time),
          temperature: first.temperature + share * (second.temperature - first.temperature),
        };
        const whole = at(readings);
        expect(Math.abs(at([first, between, second, ...rest]) - whole)).toBeLessThanOrEqual(1e-8 * whole);
        expect(Math.abs(at([first, second]) + at([second, ...rest]) - whole)).toBeLessThanOrEqual(
          1e-9 * whole,
        );
      }),
    );
  });

  it('takes equal times as a step, which lasts nothing', () => {
    const step = celsius([0, 20], [60, 20], [60, 80], [120, 80]);
    const input = { referenceTemperature: 353.15, activationEnergy: 55000 };
    const cold = timeAtTemperature({ time: 3600, at: 293.15, temperature: 353.15, activationEnergy: 55000 });
    expect(equivalentTime({ readings: step, ...input })).toBeCloseTo(3600 + cold, 6);
  });

  it('of no reading or of one is 0', () => {
    const input = { referenceTemperature: 333.15, activationEnergy: 55000 };
    expect(equivalentTime({ readings: [], ...input })).toBe(0);
    expect(equivalentTime({ readings: celsius([5, 60]), ...input })).toBe(0);
  });

  it('comes to an end on a ramp from next to nothing, and refuses a result beyond any number', () => {
    const wild = [
      { time: 0, temperature: 1e-15 },
      { time: 1, temperature: 1e15 },
    ];
    const pull = { activationEnergy: 1e15 };
    expect(equivalentTime({ readings: wild, referenceTemperature: 1e15, ...pull })).toBeLessThan(1);
    expect(() => equivalentTime({ readings: wild, referenceTemperature: 1, ...pull })).toThrow(
      'referenceTemperature is too far',
    );
  });

  it('takes 100,000 readings', () => {
    const readings = Array.from({ length: 100_000 }, (_, index) => ({
      time: index * 10,
      temperature: 333.15 + 20 * Math.sin(index / 500),
    }));
    const input = { readings, referenceTemperature: 333.15, activationEnergy: 55000 };
    expect(equivalentTime(input) / bySimpson(readings.slice(0, 2), 333.15, 55000)).toBeGreaterThan(1e5);
  });
});

describe('cure time used', () => {
  const curePoints = [
    { temperature: 298.15, time: 604800 },
    { temperature: 338.15, time: 14400 },
  ];
  const held = (degrees: number, seconds: number): Reading[] =>
    celsius([0, degrees], [seconds / 60, degrees]);

  it('is 1 after the time that the sheet asks for, at each of its temperatures', () => {
    expect(cureTimeUsed({ readings: held(25, 604800), curePoints })).toBeCloseTo(1, 9);
    expect(cureTimeUsed({ readings: held(65, 14400), curePoints })).toBeCloseTo(1, 9);
    expect(cureTimeUsed({ readings: held(65, 28800), curePoints })).toBeCloseTo(2, 9);
  });

  it('between two cure points lies between them', () => {
    const used = cureTimeUsed({ readings: held(45, 86400), curePoints });
    expect(used).toBeGreaterThan(86400 / 604800);
    expect(used).toBeLessThan(86400 / 14400);
  });

  it('with one cure point takes the activation energy as given, and the safe side without it', () => {
    const one = [{ temperature: 338.15, time: 14400 }];
    const readings = held(55, 14400);
    const used = cureTimeUsed({ readings, curePoints: one, activationEnergy: 55000 });
    const time = timeAtTemperature({ time: 14400, at: 338.15, temperature: 328.15, activationEnergy: 55000 });
    expect(used).toBeCloseTo(14400 / time, 9);
    expect(cureTimeUsed({ readings, curePoints: one })).toBeLessThan(used);
    expect(cureTimeUsed({ readings: held(65, 14400), curePoints: one })).toBeCloseTo(1, 12);
  });

  it('with an activation energy given goes through the middle of the cure points', () => {
    const energy = 60000;
    const ratio = (degrees: number, time: number): number =>
      cureTimeUsed({ readings: held(degrees, time), curePoints, activationEnergy: energy });
    expect(ratio(25, 604800) * ratio(65, 14400)).toBeCloseTo(1, 9);
  });

  it('is 0 before anything was read', () => {
    expect(cureTimeUsed({ readings: [], curePoints })).toBe(0);
  });

  it('refuses cure points that are no use', () => {
    const readings = held(60, 3600);
    const backward = [
      { temperature: 298.15, time: 14400 },
      { temperature: 338.15, time: 604800 },
    ];
    expect(() => cureTimeUsed({ readings, curePoints: backward })).toThrow('curePoints');
    const same = [
      { temperature: 298.15, time: 14400 },
      { temperature: 298.15, time: 604800 },
    ];
    expect(() => cureTimeUsed({ readings, curePoints: same })).toThrow('temperature');
    expect(() => cureTimeUsed({ readings, curePoints: [{ temperature: 298.15, time: 0 }] })).toThrow(
      'curePoints[0].time',
    );
  });
});
