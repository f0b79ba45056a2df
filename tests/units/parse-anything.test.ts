import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '#shared/units/parse.ts';
import { allQuantities, type UnitSystem } from '#shared/units/quantity.ts';

const quantityAndSystem = {
  quantity: fc.constantFrom(...allQuantities),
  system: fc.constantFrom<UnitSystem>('metric', 'inchPound'),
};

describe('anything at all can be pasted', () => {
  const pieces = fc.constantFrom(
    ...[
      '1',
      '12.5',
      '1,500',
      '3/8',
      '-',
      '−',
      ' ',
      '\u00a0',
      'g',
      'oz',
      'ft',
      '"',
      "'",
      'h',
      ':',
      '30',
      '%',
      '°',
      'C',
      'F',
    ],
    ...['/', 'm', '²', '½', '１', '\ud800', '\u0000', 'İ', '٣', '👍', '1e999', 'NaN', 'Infinity', '#', '\n'],
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.string({ unit: 'grapheme', maxLength: 200 }),
    fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
  );

  test('and is never a throw, a NaN or an infinite value', () => {
    fc.assert(
      fc.property(fc.record({ text, ...quantityAndSystem }), ({ text, quantity, system }) => {
        const parsed = parseQuantity(text, { quantity, system });
        if (parsed.ok) {
          expect(Number.isFinite(parsed.si)).toBe(true);
          expect(Object.is(parsed.si, -0)).toBe(false);
          expect(parsed.typed.length).toBeGreaterThan(0);
        } else {
          expect(parsed.reason).toBeTruthy();
        }
      }),
      { numRuns: 6000 },
    );
  });
});
