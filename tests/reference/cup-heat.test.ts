import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  activationEnergy,
  adiabaticRise,
  fitActivation,
  gelConversion,
  potLifeNow,
  timeAtTemperature,
} from '#calc';
import { timeInCup } from '../../src/calc/cup/heat.ts';
import { uncatalyzed } from '../../src/calc/cup/reaction.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const fahrenheit = (degrees: number) => ((degrees - 32) * 5) / 9 + 273.15;

describe('heat of reaction', () => {
  // Horie 1970, from memory: 100 to 110 kJ to an equivalent; equivalent 190 with 13 parts of TETA to 100.
  it('of equivalent 190 with TETA is about 490 J/g and would lift it by about 245 K', () => {
    const kilogramsAnEquivalent = 0.19 * 1.13;
    const heat = 105_000 / kilogramsAnEquivalent;
    expect(heat / 1000).toBeGreaterThan(465);
    expect(heat / 1000).toBeLessThan(515);
    expect(adiabaticRise({ reactionHeat: 490_000, specificHeat: 2000 })).toBe(245);
  });
});

describe('gel', () => {
  // Flory and Stockmayer, from memory.
  it('of a four-functional amine comes at 0.577', () => {
    expect(gelConversion({ amineFunctionality: 4 })).toBeCloseTo(0.577, 3);
  });

  // DETA has five active hydrogens (Handbook of Adhesive Technology).
  it('comes sooner with more hydrogens, and two make no network', () => {
    expect(gelConversion({ amineFunctionality: 5 })).toBe(0.5);
    expect(() => gelConversion({ amineFunctionality: 2 })).toThrow('amineFunctionality');
  });
});

describe('pot life above 90 F', () => {
  // US Army TM 1-1500-204-23-11: above 90 F take half off the pot life. Measured practice, not our formula:
  // it can prove the model wrong. A rule of thumb in whole halves is taken as 0.4 to 0.6.
  it.each(['gel', 'peakExotherm', 'viscosityDoubled'] as const)(
    'is about halved from 23 C, ending by %s',
    (ends) => {
      const at = (temperature: number) =>
        potLifeNow({
          potLife: { time: 1500, mass: 0.1, temperature: kelvin(23), ends },
          activationEnergy: 55_000,
          mass: 0.1,
          resinTemperature: temperature,
          shopTemperature: temperature,
        }).time;
      expect(at(kelvin(23))).toBeCloseTo(1500, 0);
      const share = at(fahrenheit(90)) / 1500;
      expect(share).toBeGreaterThan(0.4);
      expect(share).toBeLessThan(0.6);
    },
  );

  it('halved from 23 C is 56.5 kJ/mol, inside what epoxy and amine show', () => {
    const energy = activationEnergy([
      { temperature: kelvin(23), time: 2 },
      { temperature: fahrenheit(90), time: 1 },
    ]);
    expect(energy / 1000).toBeCloseTo(56.5, 0);
  });
});

describe('equivalent age', () => {
  // ASTM C1074, formula from memory: Q = 5,000 K, 20 C; factors derived. Tests arithmetic, not epoxy.
  it.each([
    [10, 0.5475],
    [30, 1.7553],
    [40, 2.9723],
  ])('runs at %i C by the factor of ASTM C1074', (celsius, factor) => {
    const energy = 5000 * 8.314462618;
    const time = timeAtTemperature({
      time: 1,
      at: kelvin(20),
      temperature: kelvin(celsius),
      activationEnergy: energy,
    });
    expect(1 / time).toBeCloseTo(factor, 3);
    const { energy: fitted } = fitActivation([
      { temperature: kelvin(20), time: 1 },
      { temperature: kelvin(celsius), time: 1 / factor },
    ]);
    expect(fitted / energy).toBeCloseTo(1, 3);
  });
});

describe('a second mass of the data sheet', () => {
  // Typical of quick laminating epoxies: 100 g in 20 min, 500 g in 12 (common practice, no source). Not used
  // for the fit, so it can prove the heat balance wrong.
  it.each(['gel', 'peakExotherm'] as const)('comes out within 25 %%, ending by %s', (ends) => {
    const { time } = potLifeNow({
      potLife: { time: 1200, mass: 0.1, temperature: kelvin(25), ends },
      activationEnergy: 55_000,
      mass: 0.5,
      resinTemperature: kelvin(25),
      shopTemperature: kelvin(25),
    });
    expect(Math.abs(time / 720 - 1)).toBeLessThan(0.25);
  });
});

describe('the reaction in a cup', () => {
  // Its types do not know it yet.
  const { solveODE } = create(all ?? {}) as unknown as {
    solveODE: (
      slope: (time: number, y: number[]) => number[],
      span: number[],
      start: number[],
      options: { method: string; tol: number },
    ) => { y: number[][] };
  };
  const cup = {
    activationEnergy: 60_000,
    rate: 6e-4,
    mass: 0.2,
    resinTemperature: kelvin(25),
    shopTemperature: kelvin(22),
    reactionHeat: 400_000,
    specificHeat: 2000,
  };
  // Horie 1970, from memory: d(alpha)/dt = k(c + alpha)(1 - alpha)^2, the autocatalytic form.
  const rate = (share: number, temperature: number) =>
    cup.rate *
    Math.exp((-cup.activationEnergy / 8.314462618) * (1 / temperature - 1 / kelvin(25))) *
    (uncatalyzed + share) *
    (1 - share) ** 2;

  /** What has reacted at a time, by the Runge-Kutta solver of mathjs; [share, temperature] runs in time there. */
  function reactedBy(time: number, cooling: number, rise: number): number {
    const solved = solveODE(
      (_t: number, [share = 0, temperature = 0]: number[]) => {
        const r = rate(share, temperature);
        return [r, rise * r - cooling * (temperature - cup.shopTemperature)];
      },
      [0, time],
      [0, cup.resinTemperature],
      { method: 'RK45', tol: 1e-8 },
    );
    return solved.y.at(-1)?.[0] ?? Number.NaN;
  }

  it('kept at one temperature follows the autocatalytic law as an independent solver runs it', () => {
    const held = { ...cup, reactionHeat: 1e-6, shopTemperature: cup.resinTemperature };
    for (const until of [0.2, 0.4, 0.577]) {
      expect(reactedBy(timeInCup(held, until), 0, 0)).toBeCloseTo(until, 5);
    }
  });

  it('kept at one temperature takes the time of the integral in closed form', () => {
    const held = { ...cup, reactionHeat: 1e-6, shopTemperature: cup.resinTemperature };
    const [a, c] = [0.577, uncatalyzed];
    const integral = (Math.log((c + a) / (c * (1 - a))) + ((1 + c) * a) / (1 - a)) / (1 + c) ** 2;
    expect(timeInCup(held, a) / (integral / cup.rate)).toBeCloseTo(1, 7);
  });

  it('heating itself and losing to the shop, reacts as an independent solver runs it', () => {
    // 5 k / R over m c / A, as the docstring says, for a cylinder as tall as it is wide.
    const radius = (cup.mass / 1100 / (2 * Math.PI)) ** (1 / 3);
    const cooling = ((5 * 0.2) / radius) * ((6 * Math.PI * radius ** 2) / (cup.mass * 2000));
    for (const until of [0.2, 0.577]) {
      expect(reactedBy(timeInCup(cup, until), cooling, 200)).toBeCloseTo(until, 4);
    }
  });
});
