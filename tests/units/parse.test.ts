import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ParseOptions, parseQuantity } from '#shared/units/parse.ts';
import { allQuantities, type Quantity, type UnitSystem } from '#shared/units/quantity.ts';

function si(text: string, quantity: Quantity, system: UnitSystem = 'metric'): number {
  const parsed = parseQuantity(text, { quantity, system });
  if (!parsed.ok) throw new Error(`${text}: ${parsed.reason}`);
  return parsed.si;
}

function reason(text: string, quantity: Quantity, more: Partial<ParseOptions> = {}): string {
  const parsed = parseQuantity(text, { quantity, system: 'metric', ...more });
  return parsed.ok ? `read as ${parsed.si}` : parsed.reason;
}

const quantityAndSystem = {
  quantity: fc.constantFrom(...allQuantities),
  system: fc.constantFrom<UnitSystem>('metric', 'inchPound'),
};

describe('a figure with its unit is read the same in either system', () => {
  test.each<[string, Quantity, number]>([
    ['116.1 g', 'mass', 0.1161],
    ['4.1oz', 'mass', 0.1162330448125],
    ['2 lb 3 oz', 'mass', 0.992233309375],
    ['2 lb 3', 'mass', 0.992233309375],
    ['1.2 KG', 'mass', 1.2],
    ['3 lbs.', 'mass', 1.36077711],
    ['6 ft 3 in', 'length', 1.905],
    ['6 ft, 3 in', 'length', 1.905],
    ['6ft3in', 'length', 1.905],
    ['6\' 3 1/2"', 'length', 1.9177],
    ['6’-3”', 'length', 1.905],
    ["6'3", 'length', 1.905],
    ['1 3/8"', 'diameter', 0.034925],
    ['1-3/8″', 'diameter', 0.034925],
    ['1⅜ in', 'diameter', 0.034925],
    ['3/8 in', 'diameter', 0.009525],
    ['½ inch', 'length', 0.0127],
    ['2.4 m', 'length', 2.4],
    ['1 m 20 cm', 'length', 1.2],
    ['32 thou', 'thickness', 0.0008128],
    ['10 mil', 'thickness', 0.000254],
    ['23 µm', 'thickness', 0.000023],
    ['200 gsm', 'arealWeight', 0.2],
    ['193 g/m^2', 'arealWeight', 0.193],
    ['5.7 oz/yd2', 'arealWeight', 0.193262760606829],
    ['5.7 oz. per sq. yd.', 'arealWeight', 0.193262760606829],
    ['5.7 oz/sqyd', 'arealWeight', 0.193262760606829],
    ['5.7 oz', 'arealWeight', 0.193262760606829],
    ['1.16 g/cc', 'density', 1160],
    ['1160 kg/m³', 'density', 1160],
    ['72 lb/ft3', 'density', 1153.32936292513],
    ['1.16 g per cubic cm', 'density', 1160],
    ['1.16 g/cu. cm', 'density', 1160],
    ['3 cups', 'count', 3],
    ['140 F', 'temperature', 333.15],
    ['140 deg F', 'temperature', 333.15],
    ['66 C', 'temperature', 339.15],
    ['66 ºC', 'temperature', 339.15],
    ['66℃', 'temperature', 339.15],
    ['-5 C', 'temperature', 268.15],
    ['9 F', 'temperatureDifference', 5],
    ['2 deg C per min', 'rampRate', 0.0333333333333333],
    ['90 K/h', 'rampRate', 0.025],
    ['50 %', 'humidity', 0.5],
    ['45°', 'angle', 0.785398163397448],
    ['55 kJ/mol', 'activationEnergy', 55000],
    ['189 g/eq', 'equivalentWeight', 0.189],
    ['12 in-lb', 'moment', 1.3558179483314],
    ['850 N m2', 'stiffness', 850],
  ])('%s as %s', (text, quantity, expected) => {
    expect(si(text, quantity, 'metric')).toBe(expected);
    expect(si(text, quantity, 'inchPound')).toBe(expected);
  });
});

describe('a figure without a unit has the unit that the field shows', () => {
  test.each<[string, Quantity, UnitSystem, number]>([
    ['116.1', 'mass', 'metric', 0.1161],
    ['4', 'mass', 'inchPound', 0.1133980925],
    ['66', 'temperature', 'metric', 339.15],
    ['140°', 'temperature', 'inchPound', 333.15],
    ['1 3/8', 'diameter', 'inchPound', 0.034925],
    ['12', 'thickness', 'inchPound', 0.0003048],
    ['45', 'duration', 'inchPound', 2700],
  ])('%s as %s in %s', (text, quantity, system, expected) => {
    expect(si(text, quantity, system)).toBe(expected);
  });

  test('and what is kept as typed says that unit, so that it means the same in the other system', () => {
    expect(parseQuantity('116.1', { quantity: 'mass', system: 'metric' })).toEqual({
      ok: true,
      si: 0.1161,
      typed: '116.1 g',
    });
    const typedAnywhere = fc.string({
      unit: fc.constantFrom(...'0123456789.,/- :°"\'%ghmincft'),
      maxLength: 9,
    });
    fc.assert(
      fc.property(fc.record({ text: typedAnywhere, ...quantityAndSystem }), ({ text, quantity, system }) => {
        const first = parseQuantity(text, { quantity, system });
        if (!first.ok) return;
        const other = system === 'metric' ? 'inchPound' : 'metric';
        expect(parseQuantity(first.typed, { quantity, system: other })).toEqual(first);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('lengths of time', () => {
  test.each<[string, number]>([
    ['1h 08', 4080],
    ['1h08', 4080],
    ['1 h 20 min', 4800],
    ['1 h 20 min 5 s', 4805],
    ['90 min', 5400],
    ['1.5 hrs', 5400],
    ['5 m', 300],
    ['13 s', 13],
    ['2 days', 172_800],
    ['0:30', 1800],
    ['1:08', 4080],
    ['1:08:05', 4085],
    ['0:30 min', 30],
  ])('%s', (text, expected) => {
    expect(si(text, 'duration')).toBe(expected);
  });

  test('minutes past 59 and single digits after a colon are asked again', () => {
    expect(reason('0:75', 'duration')).toBe('twoNumbers');
    expect(reason('1:8', 'duration')).toBe('twoNumbers');
    expect(reason('10:52 AM', 'duration')).toBe('twoNumbers');
    expect(reason('5 ms', 'duration')).toBe('unknownUnit');
  });
});

describe('shares', () => {
  test.each<[string, number]>([
    ['35', 0.35],
    ['0.35', 0.35],
    ['35 %', 0.35],
    ['1,5', 0.015],
    ['0.5 %', 0.005],
    ['1 %', 0.01],
    ['100', 1],
    ['1/2', 0.5],
    ['0', 0],
  ])('%s', (text, expected) => {
    expect(si(text, 'fraction')).toBe(expected);
  });

  test('a bare 1 could be all of it or a hundredth, so it is asked', () => {
    expect(reason('1', 'fraction')).toBe('ambiguousPercent');
    expect(reason('1.0', 'humidity')).toBe('ambiguousPercent');
  });

  test('a minus is not lost on the way', () => {
    expect(reason('-5', 'fraction')).toBe('negative');
    expect(reason('-0.3', 'fraction', { min: -0.1 })).toBe('tooSmall');
    expect(reason('-5', 'fraction', { min: -0.1 })).toBe('read as -0.05');
  });
});

describe('commas, digits and marks from anywhere', () => {
  test.each<[string, number]>([
    ['1,5', 0.0015],
    ['0,500', 0.0005],
    ['1234,567', 1.234567],
    ['1,500.5', 1.5005],
    ['1.500,5', 1.5005],
    ['1,500,000', 1500],
    ['1.500', 0.0015],
    ['.5', 0.0005],
    ['12.', 0.012],
    ['+12', 0.012],
    ['１２．５ ｇ', 0.0125],
    ['12\u00a0g', 0.012],
    ['12\u202fg', 0.012],
    ['\u200b12 g\ufeff', 0.012],
    ['5㎏', 5],
  ])('%j', (text, expected) => {
    expect(si(text, 'mass')).toBe(expected);
  });

  test('every kind of minus is a minus', () => {
    for (const minus of ['-', '−', '–', '—', '‐', '﹣', '－']) {
      expect(si(`${minus}5 °C`, 'temperature')).toBe(268.15);
      expect(reason(`${minus} 5 g`, 'mass')).toBe('negative');
    }
  });
});

describe('what cannot be read says why', () => {
  test.each<[string, Quantity, string]>([
    ['', 'mass', 'empty'],
    [' \u00a0\u200b', 'mass', 'empty'],
    ['1,500', 'mass', 'ambiguousComma'],
    ['10,000 kg', 'mass', 'ambiguousComma'],
    ['1.5.2', 'mass', 'notANumber'],
    ['.', 'mass', 'notANumber'],
    ['3/0 in', 'length', 'notANumber'],
    ['1/2/3', 'length', 'notANumber'],
    ['cut cloth weighed 116.1 g', 'mass', 'notANumber'],
    ['~12 g', 'mass', 'notANumber'],
    [`12 g ${'and so on '.repeat(20)}`, 'mass', 'notANumber'],
    ['12 apples', 'mass', 'unknownUnit'],
    ['1e5', 'mass', 'unknownUnit'],
    ['10²', 'mass', 'unknownUnit'],
    ['5 gr', 'mass', 'unknownUnit'],
    ['5 °C', 'mass', 'wrongKind'],
    ['5.7 oz/yd2', 'mass', 'wrongKind'],
    ['5 ft²', 'length', 'wrongKind'],
    ['5 min', 'length', 'wrongKind'],
    ['5 mm', 'duration', 'wrongKind'],
    ['66 C', 'rampRate', 'wrongKind'],
    ['12 34', 'mass', 'twoNumbers'],
    ['3-5 g', 'mass', 'twoNumbers'],
    ['12 g 13 g', 'mass', 'twoNumbers'],
    ['3 in 6 ft', 'length', 'twoNumbers'],
    ['2025-11-03', 'mass', 'twoNumbers'],
    ['2.5', 'count', 'notWhole'],
    ['-300', 'temperature', 'tooSmall'],
    ['9'.repeat(100), 'mass', 'tooBig'],
  ])('%s as %s', (text, quantity, expected) => {
    expect(reason(text, quantity)).toBe(expected);
  });

  test('zero is refused only where the field wants more than nothing', () => {
    expect(reason('0', 'mass')).toBe('read as 0');
    expect(reason('-0', 'mass')).toBe('read as 0');
    expect(reason('0 g', 'mass', { positive: true })).toBe('zero');
    expect(reason('-1 g', 'mass', { positive: true })).toBe('negative');
    expect(reason('-1', 'rampRate', { positive: true })).toBe('negative');
    expect(reason('-1', 'length', { min: -0.01 })).toBe('read as -0.001');
  });
});

describe('bounds', () => {
  test('are inclusive, also where the unit has to be converted', () => {
    expect(reason('50 kg', 'mass', { max: 50 })).toBe('read as 50');
    expect(reason('50.1 kg', 'mass', { max: 50 })).toBe('tooBig');
    expect(reason('5 g', 'mass', { min: 0.005 })).toBe('read as 0.005');
    expect(reason('4.9 g', 'mass', { min: 0.005 })).toBe('tooSmall');
    expect(reason('122 F', 'temperature', { max: 323.15 })).toBe('read as 323.15');
  });

  test('never let a value past themselves', () => {
    const bounds = fc.tuple(
      fc.double({ min: 0, max: 10, noNaN: true }),
      fc.double({ min: 0, max: 10, noNaN: true }),
    );
    fc.assert(
      fc.property(bounds, fc.double({ min: 0, max: 12, noNaN: true }), ([a, b], value) => {
        const [min, max] = [Math.min(a, b), Math.max(a, b)];
        const parsed = parseQuantity(`${value.toFixed(6)} kg`, {
          quantity: 'mass',
          system: 'metric',
          min,
          max,
        });
        if (parsed.ok) {
          expect(parsed.si).toBeGreaterThanOrEqual(min);
          expect(parsed.si).toBeLessThanOrEqual(max);
        } else {
          expect(['tooSmall', 'tooBig']).toContain(parsed.reason);
        }
      }),
    );
  });
});
