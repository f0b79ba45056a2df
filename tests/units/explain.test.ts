import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explainFailure, explainRatioFailure } from '#shared/units/explain.ts';
import { type ParseFailure, type ParseOptions, parseQuantity } from '#shared/units/parse.ts';
import { allQuantities, type Quantity, type UnitSystem } from '#shared/units/quantity.ts';
import { parseRatio } from '#shared/units/ratio.ts';

function said(text: string, options: ParseOptions & { label?: string }): string {
  const parsed = parseQuantity(text, options);
  return parsed.ok ? `read as ${parsed.si}` : explainFailure(parsed, options).replaceAll('\u00a0', ' ');
}

const mass = { quantity: 'mass', system: 'metric', positive: true, min: 0.0001, max: 50 } as const;

describe('one sentence says what is wrong and what would be right', () => {
  test.each<[string, string]>([
    ['', 'Write a mass like 116.1 g or 4.1 oz.'],
    ['about a cup', 'about a cup is not a number: write a mass like 116.1 g or 4.1 oz.'],
    ['1.5.2', '1.5.2 is not a number: write a mass like 116.1 g or 4.1 oz.'],
    ['1,500', '1,500 could be 1.5 or 1500: write 1.5 or 1500.'],
    ['12 apples', '12 apples is not a mass: g, kg, oz or lb.'],
    ['66 °C', '66 °C is not a mass: g, kg, oz or lb.'],
    ['12 g 13 g', '12 g 13 g has two numbers: write one, like 116.1 g.'],
    ['-5', 'This mass cannot be below zero: write it without the minus.'],
    ['0', 'Zero will not do here: write a mass like 116.1 g or 4.1 oz.'],
    ['10000 kg', 'That is more than 50 kg: check the figure.'],
    ['0.05 g', 'That is less than 0.1 g: check the figure.'],
  ])('%j in a mass', (text, expected) => {
    expect(said(text, mass)).toBe(expected);
  });

  test('in the units of whoever reads it', () => {
    const inchPound = { ...mass, system: 'inchPound' } as const;
    expect(said('', inchPound)).toBe('Write a mass like 4.1 oz or 116.1 g.');
    expect(said('10000 kg', inchPound)).toBe('That is more than 110.23 lb: check the figure.');
    const oven = { quantity: 'temperature', min: 253.15, max: 473.15 } as const;
    expect(said('500', { ...oven, system: 'metric' })).toBe('That is more than 200 °C: check the figure.');
    expect(said('-50', { ...oven, system: 'inchPound' })).toBe('That is less than −4 °F: check the figure.');
    expect(said('100 h', { quantity: 'duration', system: 'metric', max: 172_800 })).toBe(
      'That is more than 48 h: check the figure.',
    );
  });

  test('for shares, counts and names of fields', () => {
    expect(said('1', { quantity: 'fraction', system: 'metric' })).toBe(
      '1 could be 1 % or 100 %: write it with its % sign.',
    );
    expect(said('5 g', { quantity: 'fraction', system: 'metric' })).toBe(
      '5 g is not a share: write it like 10 %.',
    );
    expect(said('2.5', { quantity: 'count', system: 'metric' })).toBe(
      '2.5 is not a whole number: write one like 3.',
    );
    expect(said('', { ...mass, label: 'Cut cloth' })).toBe('Cut cloth: write a mass like 116.1 g or 4.1 oz.');
    expect(said('12 Apples', { ...mass, label: 'Cut cloth' })).toBe(
      'Cut cloth: 12 Apples is not a mass: g, kg, oz or lb.',
    );
    expect(said('Two', { ...mass, label: 'Cut cloth' })).toBe(
      'Cut cloth: Two is not a number: write a mass like 116.1 g or 4.1 oz.',
    );
  });

  test('a long paste is quoted short', () => {
    expect(said(`12 ${'apples and pears '.repeat(5)}`, mass)).toBe(
      '12 apples and pears apples a… is not a mass: g, kg, oz or lb.',
    );
  });

  test('every failure of every quantity ends as one sentence without a hole in it', () => {
    const reasons: ParseFailure[] = [
      ...(['empty', 'notANumber', 'unknownUnit', 'wrongKind', 'ambiguousComma', 'ambiguousPercent'] as const),
      ...(['notWhole', 'twoNumbers', 'negative', 'zero', 'tooBig', 'tooSmall'] as const),
    ];
    for (const quantity of allQuantities) {
      for (const reason of reasons) {
        for (const bound of [{}, { min: 1, max: 2 }]) {
          const failure = { ok: false, reason, detail: '1,234' } as const;
          const text = explainFailure(failure, { quantity, system: 'inchPound', ...bound });
          expect(text).toMatch(/^\S.*[.]$/u);
          expect(text).not.toMatch(/undefined|NaN|Infinity| {2}/);
        }
      }
    }
  });
});

describe('the bound that a sentence names', () => {
  const bounded = allQuantities.filter((quantity) => quantity !== 'count' && quantity !== 'duration');

  function named(text: string): string {
    return /than (.*): check/.exec(text)?.[1] ?? '';
  }

  test('is itself accepted', () => {
    const any = fc.record({
      quantity: fc.constantFrom<Quantity>(...bounded),
      system: fc.constantFrom<UnitSystem>('metric', 'inchPound'),
      bound: fc.double({ min: 0.002, max: 500, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ quantity, system, bound: above }) => {
        const bound = above + (quantity === 'temperature' ? 200 : 0);
        const tooBig = { ok: false, reason: 'tooBig' } as const;
        const most = named(explainFailure(tooBig, { quantity, system, max: bound }));
        expect(parseQuantity(most, { quantity, system, max: bound }).ok, most).toBe(true);
        const tooSmall = { ok: false, reason: 'tooSmall' } as const;
        const least = named(explainFailure(tooSmall, { quantity, system, min: bound }));
        expect(parseQuantity(least, { quantity, system, min: bound }).ok, least).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a ratio', () => {
  test('that cannot be read says how to write one', () => {
    for (const text of ['', '55', 'rich', '1,500:2']) {
      const parsed = parseRatio(text);
      expect(parsed.ok).toBe(false);
      if (!parsed.ok) {
        expect(explainRatioFailure(parsed)).toBe(
          'Write a ratio like 55:45: the parts by weight, with a colon between.',
        );
      }
    }
    for (const text of ['0:45', '-55:45']) {
      const parsed = parseRatio(text);
      expect(!parsed.ok && explainRatioFailure(parsed)).toBe(
        'Both parts of a ratio are above zero: write it like 55:45.',
      );
    }
  });
});
