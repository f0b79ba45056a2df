// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { activationEnergy, cureTimeUsed, equivalentTime, rampRates, timeAtTemperature } from '#calc';
import { celsius, type Reading } from '../calc/histories.ts';
import { odex } from './packages.ts';

const GAS = 8.31446261815324;
const kelvin = (degrees: number): number => degrees + 273.15;
const fahrenheit = (degrees: number): number => kelvin((degrees - 32) / 1.8);

describe('equivalent age', () => {
  // ASTM C1074 (formula from memory, values derived): te = sum of exp(-Q(1/Ta - 1/Ts)) dt, Q 5,000 K, Ts 20 C.
  it.each([
    [10, 0.5475],
    [20, 1],
    [30, 1.7553],
    [40, 2.9723],
  ])('arithmetic: an hour at %i C is %f h at 20 C', (degrees, factor) => {
    const age = equivalentTime({
      readings: celsius([0, degrees], [60, degrees]),
      referenceTemperature: kelvin(20),
      activationEnergy: 5000 * GAS,
    });
    expect(age / 3600).toBeCloseTo(factor, 4);
  });

  // USP <1160>: mean kinetic temperature, dH/R = 10,000 K. A month each at four temperatures.
  it('arithmetic: at the mean kinetic temperature, all the time counts as itself', () => {
    const months = [21, 24, 29, 26];
    const mean = months.reduce((sum, degrees) => sum + Math.exp(-10000 / kelvin(degrees)), 0) / months.length;
    const kinetic = 10000 / -Math.log(mean);
    const readings = months.flatMap((degrees, index) =>
      celsius([index * 43200, degrees], [(index + 1) * 43200, degrees]),
    );
    const time = equivalentTime({ readings, referenceTemperature: kinetic, activationEnergy: 10000 * GAS });
    expect(time / (4 * 43200 * 60)).toBeCloseTo(1, 9);
    expect(kinetic).toBeGreaterThan(kelvin(25));
  });

  // ASTM F1980 (from memory): factor Q10^((T - Tref)/10); Q10 of 2, 55 C against 25 C is 8. Q10 is not Arrhenius:
  // the same doubling from 25 to 35 C gives less over 30 degrees.
  it('arithmetic: doubling for 10 degrees is 8 over 30 by the rule and 7.05 by Arrhenius', () => {
    const doubling = activationEnergy([
      { temperature: kelvin(25), time: 2 },
      { temperature: kelvin(35), time: 1 },
    ]);
    const factor =
      1 / timeAtTemperature({ time: 1, at: kelvin(25), temperature: kelvin(55), activationEnergy: doubling });
    expect(2 ** ((55 - 25) / 10)).toBe(8);
    expect(factor).toBeCloseTo(7.05, 2);
  });

  it('agrees with an ODE solver that knows nothing of readings', () => {
    const cure = celsius([0, 20], [60, 80], [300, 80], [420, 30]);
    const energy = 65000;
    cure.slice(1).forEach((to, index) => {
      const from = cure[index] ?? to;
      const solver = new odex.Solver(1);
      solver.relativeTolerance = 1e-10;
      solver.absoluteTolerance = 1e-10;
      const slope = (to.temperature - from.temperature) / (to.time - from.time);
      const rate = (time: number): number[] => {
        const temperature = from.temperature + slope * (time - from.time);
        return [Math.exp((energy / GAS) * (1 / kelvin(60) - 1 / temperature))];
      };
      const wanted = solver.solve(rate, from.time, [0], to.time).y[0] ?? 0;
      const got = equivalentTime({
        readings: [from, to],
        referenceTemperature: kelvin(60),
        activationEnergy: energy,
      });
      expect(wanted).toBeGreaterThan(0);
      expect(Math.abs(got / wanted - 1)).toBeLessThan(1e-7);
    });
  });
});

describe('activation energy', () => {
  // US Army TM 1-1500-204-23-11: above 90 F take half off the pot life. Pot lives are quoted for 23 C.
  it('prescribed: half the pot life at 90 F is 56.5 kJ/mol', () => {
    const energy = activationEnergy([
      { temperature: kelvin(23), time: 2 },
      { temperature: fahrenheit(90), time: 1 },
    ]);
    expect(energy / 1000).toBeCloseTo(56.5, 1);
  });

  // Epoxy with amine, from abstracts: Sbirrazzuoli 2006, 55 to 60 kJ/mol; Barral 1995, 44 to 57 kJ/mol.
  it('measured: what the bench says of pot life lies in the range of epoxy with amine, 44 to 60', () => {
    const rules = [
      // Common practice, no source: ten degrees warmer halves it.
      [kelvin(20), kelvin(30)],
      [kelvin(25), kelvin(35)],
      [kelvin(23), fahrenheit(90)],
    ] as const;
    for (const [cool, warm] of rules) {
      const energy = activationEnergy([
        { temperature: cool, time: 2 },
        { temperature: warm, time: 1 },
      ]);
      expect(energy).toBeGreaterThan(44000);
      expect(energy).toBeLessThan(60000);
    }
  });

  it('measured: over that range of 44 to 60, ten degrees leave 43 to 57 % of a pot life', () => {
    for (const energy of [44000, 55000, 57000, 60000]) {
      const left = timeAtTemperature({
        time: 1,
        at: kelvin(25),
        temperature: kelvin(35),
        activationEnergy: energy,
      });
      expect(left).toBeGreaterThan(0.43);
      expect(left).toBeLessThan(0.57);
    }
  });

  it('agrees with a statistics package on scattered points', () => {
    const points = [
      [15, 1.1e6],
      [25, 5.2e5],
      [40, 1.3e5],
      [60, 3.1e4],
      [65, 2.0e4],
      [80, 9.5e3],
    ].map(([degrees = 0, time = 1]) => ({ temperature: kelvin(degrees), time }));
    const { m } = linearRegression(points.map(({ temperature, time }) => [1 / temperature, Math.log(time)]));
    expect(activationEnergy(points) / (m * GAS)).toBeCloseTo(1, 9);
  });
});

describe('cure time used', () => {
  // Common practice, no source: a week at room temperature, or a night of 8 h at 60 C, for a hand-layup epoxy.
  it('practice: a week on the bench or 8 h at 60 C is one, and half of each together is one', () => {
    const curePoints = [
      { temperature: kelvin(23), time: 7 * 86400 },
      { temperature: kelvin(60), time: 8 * 3600 },
    ];
    const week = 7 * 1440;
    expect(cureTimeUsed({ readings: celsius([0, 23], [week, 23]), curePoints })).toBeCloseTo(1, 9);
    expect(cureTimeUsed({ readings: celsius([0, 60], [480, 60]), curePoints })).toBeCloseTo(1, 9);
    const both = celsius([0, 23], [week / 2, 23], [week / 2, 60], [week / 2 + 240, 60]);
    expect(cureTimeUsed({ readings: both, curePoints })).toBeCloseTo(1, 9);
  });
});

describe('ramp rates', () => {
  // US Army TM 1-1500-204-23-11: heat-up and cool-down at most 10 F a minute (for drying).
  it('arithmetic: 10 F a minute is 0.0926 K/s, up and down', () => {
    const degrees = (f: number): number => (f - 32) / 1.8;
    const readings = celsius(
      ...Array.from(
        { length: 41 },
        (_, minute) => [minute, degrees(minute <= 20 ? 70 + 10 * minute : 470 - 10 * minute)] as const,
      ),
    );
    const { up, down } = rampRates({ readings, window: 300 });
    expect(up).toBeCloseTo(0.0926, 4);
    expect(down).toBeCloseTo(0.0926, 4);
  });

  it('agree with a statistics package, window by window, on a noisy log of 3,000 readings', () => {
    let noise = 1;
    const readings: Reading[] = Array.from({ length: 3000 }, (_, index) => {
      noise = (noise * 48271) % 2147483647;
      const wave = 333.15 + 25 * Math.sin(index / 300);
      return { time: 1.7e9 + index * 10, temperature: wave + noise / 2147483647 };
    });
    const slopes = readings.slice(30).map((_, index) => {
      const run = readings.slice(index, index + 31);
      const start = run[0]?.time ?? 0;
      return linearRegression(run.map(({ time, temperature }) => [time - start, temperature - 333])).m;
    });
    expect(slopes).toHaveLength(2970);
    const { up, down } = rampRates({ readings, window: 300 });
    expect(up).toBeCloseTo(Math.max(...slopes), 9);
    expect(down).toBeCloseTo(-Math.min(...slopes), 9);
  });
});
