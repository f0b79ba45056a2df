import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatRatio, parseRatio } from '#shared/units/ratio.ts';

describe('a ratio of two parts', () => {
  test.each<[string, number, number]>([
    ['55:45', 55, 45],
    ['55 : 45', 55, 45],
    ['55 to 45', 55, 45],
    ['100/28', 100, 28],
    ['100 / 28.5', 100, 28.5],
    ['1,5:2', 1.5, 2],
    ['1 1/2:3', 1.5, 3],
    ['５５：４５', 55, 45],
    ['\u200b55∶45'.replace('∶', ':'), 55, 45],
  ])('%s', (text, first, second) => {
    const parsed = parseRatio(text);
    expect(parsed.ok && [parsed.first, parsed.second]).toEqual([first, second]);
    expect(parsed.ok && parsed.firstShare).toBeCloseTo(first / (first + second), 12);
  });

  test.each<[string, string]>([
    ['', 'empty'],
    ['55', 'notANumber'],
    ['55:', 'notANumber'],
    [':45', 'notANumber'],
    ['55:45:10', 'notANumber'],
    ['resin 55:45', 'notANumber'],
    ['1/0:3', 'notANumber'],
    [`55:${'4'.repeat(40)}`, 'notANumber'],
    ['1,500:45', 'ambiguousComma'],
    ['0:45', 'zero'],
    ['55:0', 'zero'],
    ['−55:45', 'negative'],
  ])('%j says why not', (text, reason) => {
    const parsed = parseRatio(text);
    expect(parsed.ok ? parsed : parsed.reason).toBe(reason);
  });

  test('is shown with parts that add up to 100, and is read back within the digits shown', () => {
    expect(formatRatio(0.55)).toBe('55:45');
    expect(formatRatio(0.5464, 1)).toBe('54.6:45.4');
    expect(formatRatio(Number.NaN)).toBe('–');
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.integer({ min: 0, max: 3 }),
        (share, digits) => {
          const text = formatRatio(share, digits);
          const parsed = parseRatio(text);
          expect(parsed.ok, text).toBe(true);
          if (!parsed.ok) return;
          expect(parsed.first + parsed.second).toBeCloseTo(100, 9);
          expect(Math.abs(parsed.firstShare - share)).toBeLessThanOrEqual(0.0050001 / 10 ** digits);
        },
      ),
    );
  });

  test('is never a throw or a NaN', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.string({ unit: fc.constantFrom(...'0159.,:/- to½'), maxLength: 12 }),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const parsed = parseRatio(typed);
        if (parsed.ok) {
          expect(parsed.firstShare).toBeGreaterThanOrEqual(0);
          expect(parsed.firstShare).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 5000 },
    );
  });
});
