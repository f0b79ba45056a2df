import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalsForScaleStep,
  type FormatOptions,
  formatNumber,
  formatQuantity,
  inUnits,
  splitQuantity,
} from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import {
  allQuantities,
  definitionOf,
  type Quantity,
  type UnitSystem,
  unitFor,
} from '#shared/units/quantity.ts';
import { findUnit, unitKey } from '#shared/units/unit-table.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const show = (si: number, quantity: Quantity, system: UnitSystem, more: Partial<FormatOptions> = {}) =>
  plain(formatQuantity(si, { quantity, system, ...more }));

describe('a value as it is shown', () => {
  test.each<[number, Quantity, string, string]>([
    [0.1161, 'mass', '116.1 g', '4.10 oz'],
    [0.116, 'mass', '116.0 g', '4.09 oz'],
    [12.345, 'mass', '12.35 kg', '27.22 lb'],
    [1.905, 'length', '1905 mm', '75 in'],
    [0.0381, 'diameter', '38.1 mm', '1.5 in'],
    [0.000314, 'thickness', '0.31 mm', '12.4 thou'],
    [0.193, 'arealWeight', '193 g/m²', '5.69 oz/yd²'],
    [1160, 'density', '1.16 g/cm³', '9.68 lb/gal'],
    [1780, 'fiberDensity', '1.78 g/cm³', '0.0643 lb/in³'],
    [339.15, 'temperature', '66 °C', '150.8 °F'],
    [268.15, 'temperature', '−5 °C', '23 °F'],
    [3, 'temperatureDifference', '3 °C', '5.4 °F'],
    [0.025, 'rampRate', '1.5 °C/min', '2.7 °F/min'],
    [0.542, 'fraction', '54.2 %', '54.2 %'],
    [0.0002, 'massRate', '12 g/min', '0.42 oz/min'],
    [4080, 'duration', '1 h 08', '1 h 08'],
    [Math.PI / 4, 'angle', '45°', '45°'],
    [3, 'count', '3', '3'],
  ])('%d as %s', (si, quantity, metric, inchPound) => {
    expect(show(si, quantity, 'metric')).toBe(metric);
    expect(show(si, quantity, 'inchPound')).toBe(inchPound);
  });

  test('figure and unit hold together on a line', () => {
    expect(formatQuantity(0.1161, { quantity: 'mass', system: 'metric' })).toBe('116.1\u00a0g');
  });

  test('asked for, another unit and a number of decimals', () => {
    expect(show(1.5, 'mass', 'metric', { unit: 'kg' })).toBe('1.5000 kg');
    expect(show(1.5, 'mass', 'metric', { unit: 'kg', digits: 1 })).toBe('1.5 kg');
    expect(show(1.905, 'length', 'metric', { unit: 'm', digits: 2 })).toBe('1.91 m');
    expect(show(90, 'duration', 'metric', { unit: 's' })).toBe('90 s');
    expect(show(0.35, 'fraction', 'metric', { digits: 2 })).toBe('35.00 %');
    expect(() => show(1, 'mass', 'metric', { unit: 'ft' })).toThrow('unit must be one for mass, got ft');
  });

  test('a figure for a field is always in the unit the field shows', () => {
    expect(show(12.345, 'mass', 'metric', { bare: true })).toBe('12345.0');
    expect(show(4080, 'duration', 'metric', { bare: true })).toBe('68');
    expect(show(0.35, 'fraction', 'metric', { bare: true })).toBe('35');
  });

  test('a share of one percent or less keeps its sign in a field, or it would be read back as a hundredfold', () => {
    expect(show(0.005, 'fraction', 'metric', { bare: true })).toBe('0.5 %');
    expect(show(0.01, 'fraction', 'metric', { bare: true })).toBe('1 %');
    expect(show(0, 'fraction', 'metric', { bare: true })).toBe('0');
  });

  test('rounding shows no noise and no minus zero', () => {
    expect(formatNumber(116.04999999999998, 1)).toBe('116.1');
    expect(formatNumber(-0.04, 1)).toBe('0.0');
    expect(formatNumber(-0.06, 1)).toBe('−0.1');
    expect(formatNumber(100, 0, true)).toBe('100');
    expect(formatNumber(100, 2, true)).toBe('100');
  });

  test('what is not known is a dash and never NaN', () => {
    for (const quantity of allQuantities) {
      for (const si of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        expect(show(si, quantity, 'metric')).toBe('–');
        expect(show(si, quantity, 'inchPound', { bare: true })).toBe('–');
      }
    }
  });

  test('the big figure and its small unit come apart', () => {
    const split = (si: number, quantity: Quantity) => splitQuantity(si, { quantity, system: 'metric' });
    expect(split(0.1161, 'mass')).toEqual({ figure: '116.1', unit: 'g' });
    expect(split(2520, 'duration')).toEqual({ figure: '42', unit: 'min' });
    expect(split(4080, 'duration')).toEqual({ figure: '1\u00a0h\u00a008', unit: '' });
    expect(split(0.005, 'fraction')).toEqual({ figure: '0.5', unit: '%' });
    expect(split(3, 'count')).toEqual({ figure: '3', unit: '' });
  });
});

describe('the decimals of a scale', () => {
  test.each<[number, number, number]>([
    [1e-3, 0, 2],
    [5e-3, 0, 1],
    [1e-4, 1, 3],
    [5e-4, 1, 2],
    [1e-5, 2, 4],
    [0, 1, 2],
    [Number.NaN, 1, 2],
  ])('a step of %d kg', (step, metric, inchPound) => {
    expect(decimalsForScaleStep(step, 'metric')).toBe(metric);
    expect(decimalsForScaleStep(step, 'inchPound')).toBe(inchPound);
  });
});

describe('what is shown can be typed back', () => {
  const systems: UnitSystem[] = ['metric', 'inchPound'];

  function largestIn(quantity: Quantity): number {
    return quantity === 'temperature' ? 900 : definitionOf(quantity).dimension === 'pressure' ? 1e12 : 1e5;
  }

  test.each(allQuantities)(
    '%s, in either system, into a field of either system, within the digits shown',
    (quantity) => {
      const values = fc.double({
        min: quantity === 'temperature' ? 1 : -50,
        max: largestIn(quantity),
        noNaN: true,
      });
      const both = fc.constantFrom(...systems);
      fc.assert(
        fc.property(values, both, both, fc.boolean(), (value, system, into, bare) => {
          const si = quantity === 'count' ? Math.round(value) : value;
          const text = formatQuantity(si, { quantity, system, bare });
          const back = parseQuantity(text, { quantity, system: bare ? system : into, min: -1e15 });
          expect(back.ok, text).toBe(true);
          if (!back.ok) return;
          const { unit, decimals } = inUnits(si, { quantity, system, bare });
          const factor = findUnit(definitionOf(quantity).dimension, unitKey(unit))?.factor ?? Number.NaN;
          const step = quantity === 'duration' && !bare ? 60 : 10 ** -decimals * factor;
          expect(Math.abs(back.si - si)).toBeLessThanOrEqual(step * 0.5001 + Math.abs(si) * 1e-9 + 1e-12);
        }),
        { numRuns: 300 },
      );
    },
  );

  test('every quantity shows in its field the unit that a bare figure is read in', () => {
    for (const quantity of allQuantities) {
      for (const system of systems) {
        const unit = unitFor(quantity, system);
        const written = parseQuantity(`7 ${unit}`, { quantity, system });
        expect(written.ok && written.si).toBe(
          (parseQuantity('7', { quantity, system }) as { si?: number }).si,
        );
      }
    }
  });

  test('the example that a sentence gives is itself read', () => {
    for (const quantity of allQuantities) {
      for (const system of systems) {
        const { example } = definitionOf(quantity)[system];
        expect(parseQuantity(example, { quantity, system, positive: true }).ok, example).toBe(true);
      }
    }
  });
});
