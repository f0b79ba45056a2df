import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '#shared/units/parse.ts';
import { allQuantities, definitionOf, type Quantity } from '#shared/units/quantity.ts';
import { findUnit, unitKey, unitLabels } from '#shared/units/unit-table.ts';

function si(text: string, quantity: Quantity): number {
  const parsed = parseQuantity(text, { quantity, system: 'metric' });
  return parsed.ok ? parsed.si : Number.NaN;
}

describe('exact values of the international agreement on the yard and pound, 1959 (Federal Register 24 FR 5348)', () => {
  test('one yard is 0.9144 m, one pound 0.45359237 kg', () => {
    expect(si('1 yd', 'length')).toBe(0.9144);
    expect(si('1 lb', 'mass')).toBe(0.45359237);
    expect(si('1 ft', 'length')).toBe(0.3048);
    expect(si('1 in', 'length')).toBe(0.0254);
    expect(si('16 oz', 'mass')).toBe(0.45359237);
  });
});

// Printed there to seven digits; the published figures are from memory.
describe('conversion factors of NIST Special Publication 811 (2008), appendix B.8', () => {
  test.each<[string, Quantity, number]>([
    ['1 oz', 'mass', 2.834952e-2],
    ['1 oz/yd2', 'arealWeight', 3.390575e-2],
    ['1 oz/ft2', 'arealWeight', 3.051517e-1],
    ['1 lb/ft2', 'arealWeight', 4.882428],
    ['1 lb/ft3', 'density', 1.601846e1],
    ['1 lb/in3', 'density', 2.76799e4],
    ['1 lb/gal', 'density', 1.198264e2],
    ['1 gal', 'volume', 3.785412e-3],
    ['1 fl oz', 'volume', 2.957353e-5],
    ['1 ft2', 'area', 9.290304e-2],
    ['1 in2', 'area', 6.4516e-4],
    ['1 yd2', 'area', 8.361274e-1],
    ['1 mil', 'thickness', 2.54e-5],
    ['1 lbf', 'force', 4.448222],
    ['1 psi', 'stress', 6.894757e3],
    ['1 ksi', 'stress', 6.894757e6],
    ['1 lbf·in', 'moment', 1.129848e-1],
    ['1 lbf·ft', 'moment', 1.355818],
    ['1 kcal/mol', 'activationEnergy', 4184],
    ['1 °', 'angle', 1.745329e-2],
  ])('%s', (text, quantity, published) => {
    expect(Math.abs(si(text, quantity) / published - 1)).toBeLessThan(3e-7);
  });

  test('the fixed points of the Fahrenheit scale', () => {
    expect(si('32 F', 'temperature')).toBe(273.15);
    expect(si('212 F', 'temperature')).toBe(373.15);
    expect(si('-40 F', 'temperature')).toBe(si('-40 C', 'temperature'));
    expect(si('-459.67 F', 'temperature')).toBe(0);
  });
});

describe('the units of mathjs, a general-purpose library', () => {
  const inSi: Partial<Record<string, string>> = {
    mass: 'kg',
    length: 'm',
    area: 'm^2',
    arealWeight: 'kg/m^2',
    density: 'kg/m^3',
    volume: 'm^3',
    duration: 's',
    massRate: 'kg/s',
    linearDensity: 'kg/m',
    specificEnergy: 'J/kg',
    specificHeat: 'J/(kg K)',
    force: 'N',
    pressure: 'Pa',
    lineForce: 'N/m',
    stiffness: 'N m^2',
    moment: 'N m',
    angle: 'rad',
  };
  const names = new Map([
    ['thou', 'mil'],
    ['µm', 'um'],
    ['mL', 'ml'],
    ['fl oz', 'floz'],
    ['h', 'hour'],
    ['d', 'day'],
    ['min', 'minute'],
    ['°', 'deg'],
    ['J/(g·K)', '1 J/(g K)'],
    ['Btu/lb', '1 BTU/lbm'],
    ['Btu/(lb·°F)', '1 BTU/(lbm degF)'],
    ['ksi', '1000 psi'],
    ['Msi', '1000000 psi'],
  ]);

  function theirs(label: string, to: string): number {
    const spelled = (names.get(label) ?? label)
      .replace('²', '^2')
      .replace('³', '^3')
      .replace('·', ' ')
      .replace(/\/(min|h)$/, (_, time) => `/${names.get(time)}`)
      .replace(/^lb\b/, 'lbm')
      .replace('lb/', 'lbm/')
      .replace('gal', 'gallon');
    return unit(/^\d/.test(spelled) ? spelled : `1 ${spelled}`).toNumber(to);
  }

  const checked = [...new Set(allQuantities.map((quantity) => definitionOf(quantity).dimension))].flatMap(
    (dimension) => {
      const to = inSi[dimension];
      return to === undefined ? [] : unitLabels(dimension).map((label) => ({ dimension, label, to }));
    },
  );

  // mathjs carries pounds-force and psi to a dozen digits; 1e-9 is far inside any scale or caliper.
  test.each(checked)('$label of $dimension', ({ dimension, label, to }) => {
    const ours = findUnit(dimension, unitKey(label))?.factor ?? Number.NaN;
    expect(Math.abs(ours / theirs(label, to) - 1)).toBeLessThan(1e-9);
  });

  test('leave out only what has no unit there', () => {
    const left = [...new Set(allQuantities.map((quantity) => definitionOf(quantity).dimension))].filter(
      (dimension) => !(dimension in inSi),
    );
    expect(left.sort()).toEqual([
      'activationEnergy',
      'count',
      'equivalentWeight',
      'fraction',
      'number',
      'phr',
      'rampRate',
      'temperature',
      'temperatureDifference',
    ]);
  });

  test('agree on temperatures', () => {
    for (const degrees of [-40, 0, 60.5, 140, 250]) {
      expect(si(`${degrees} F`, 'temperature')).toBeCloseTo(unit(degrees, 'degF').toNumber('K'), 9);
      expect(si(`${degrees} C`, 'temperature')).toBeCloseTo(unit(degrees, 'degC').toNumber('K'), 9);
    }
  });
});
