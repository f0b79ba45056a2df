// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { describe, expect, it } from 'vitest';
import { dewPoint } from '#calc';
import { psychrolib } from './packages.ts';

const dew = (celsius: number, relativeHumidity: number): number =>
  dewPoint({ temperature: celsius + 273.15, relativeHumidity }) - 273.15;

describe('the dew point', () => {
  // Saturation pressure of water, kPa, steam tables (from memory): measured, and not a Magnus form.
  const saturation = {
    5: 0.8726,
    10: 1.2282,
    15: 1.7058,
    20: 2.3393,
    25: 3.1699,
    30: 4.247,
    35: 5.629,
    40: 7.385,
  };

  it('measured: is where the steam tables say that the air is saturated, within 0.1 K', () => {
    const rows = Object.entries(saturation).map(([celsius, pressure]) => ({
      celsius: Number(celsius),
      pressure,
    }));
    let compared = 0;
    for (const air of rows) {
      for (const wet of rows.filter(({ celsius }) => celsius <= air.celsius)) {
        expect(Math.abs(dew(air.celsius, wet.pressure / air.pressure) - wet.celsius)).toBeLessThan(0.1);
        compared += 1;
      }
    }
    expect(compared).toBe(36);
  });

  // Dew-point table of DIN 4108 (from memory), which painters and laminators hang on the wall: to 0.1 C.
  it.each([
    [10, 0.1, 2.6, 4.8, 6.7],
    [15, 4.7, 7.3, 9.6, 11.6],
    [20, 9.3, 12.0, 14.4, 16.4],
    [25, 13.9, 16.7, 19.1, 21.3],
    [30, 18.4, 21.4, 23.9, 26.2],
  ])('prescribed: in air of %i C is as in the table, at 50 to 80 %% humidity', (celsius, ...row) => {
    row.forEach((wanted, index) => {
      expect(Math.abs(dew(celsius, 0.5 + index / 10) - wanted)).toBeLessThan(0.11);
    });
  });

  // ASHRAE Handbook, Fundamentals, 2017, ch. 1, by way of a public library. Above freezing only: below it, ASHRAE
  // gives the frost point, and this gives dew.
  it('prescribed: agrees with the vapor pressure of ASHRAE within 0.04 K, in any shop', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    let compared = 0;
    for (let celsius = 5; celsius <= 45; celsius += 1) {
      for (let humidity = 0.05; humidity < 1; humidity += 0.05) {
        const wanted = psychrolib.GetTDewPointFromRelHum(celsius, humidity);
        if (wanted < 0) continue;
        expect(Math.abs(dew(celsius, humidity) - wanted)).toBeLessThan(0.04);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(500);
  });
});
