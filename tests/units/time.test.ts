import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '#shared/units/parse.ts';
import {
  formatAgo,
  formatClockTime,
  formatCountdown,
  formatDay,
  formatDuration,
} from '#shared/units/time.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const hour = 3600;

describe('a duration', () => {
  test.each<[number, string]>([
    [0, '0 s'],
    [13, '13 s'],
    [59.4, '59 s'],
    [59.6, '1 min'],
    [90, '1 min 30 s'],
    [599.6, '10 min'],
    [600, '10 min'],
    [2520, '42 min'],
    [59 * 60 + 29, '59 min'],
    [59 * 60 + 40, '1 h'],
    [4080, '1 h 08'],
    [8 * hour, '8 h'],
    [30 * hour, '30 h'],
    [-4080, '−1 h 08'],
    [-0.2, '0 s'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('%d s', (seconds, expected) => {
    expect(plain(formatDuration(seconds))).toBe(expected);
  });

  test('is read back to within half of its last unit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 400 * hour, noNaN: true }), (seconds) => {
        const back = parseQuantity(formatDuration(seconds), { quantity: 'duration', system: 'metric' });
        expect(back.ok && Math.abs(back.si - seconds)).toBeLessThanOrEqual(seconds < 599 ? 0.5 : 30);
      }),
    );
  });
});

describe('time left', () => {
  test.each<[number, string]>([
    [822, '13:42'],
    [4085, '1:08:05'],
    [3600, '1:00:00'],
    [3599.2, '1:00:00'],
    [59, '0:59'],
    [0.2, '0:01'],
    [0, '0:00'],
    [-0.5, '0:00'],
    [-13, '0:13'],
    [-822.9, '13:42'],
    [Number.NaN, '–'],
  ])('%d s', (seconds, expected) => {
    expect(formatCountdown(seconds)).toBe(expected);
  });

  test('shows 0:00 only when none is left', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (seconds) => {
        expect(formatCountdown(seconds)).not.toBe('0:00');
      }),
    );
  });
});

describe('a time of day', () => {
  const at = Date.UTC(2025, 10, 3, 15, 52);

  test('is shown as it was lived, at the offset of the place', () => {
    expect(formatClockTime(at, -300)).toBe('10:52\u00a0AM');
    expect(formatClockTime(at, 60)).toBe('4:52\u00a0PM');
    expect(formatClockTime(at, 330)).toBe('9:22\u00a0PM');
    expect(formatClockTime(Date.UTC(2025, 10, 3, 0, 5), 0)).toBe('12:05\u00a0AM');
  });

  test('with 24 hours does not look like time left', () => {
    expect(formatClockTime(at, 60, { hour12: false })).toBe('16:52\u00a0hrs');
    expect(formatClockTime(Date.UTC(2025, 10, 3, 0, 5), 0, { hour12: false })).toBe('00:05\u00a0hrs');
  });

  test('without an offset is the time on this phone', () => {
    const here = -new Date(at).getTimezoneOffset();
    expect(formatClockTime(at)).toBe(formatClockTime(at, here));
  });

  test('that is not a time is a dash', () => {
    expect(formatClockTime(Number.NaN, 0)).toBe('–');
    expect(formatClockTime(Number.POSITIVE_INFINITY)).toBe('–');
    expect(formatDay(Number.NaN, 0, at)).toBe('–');
  });

  test('never looks like a duration or like time left', () => {
    const shapes = [/^\d+:\d\d [AP]M$/, /^\d\d:\d\d hrs$/, /^[\d:]+$/, /^\d+ (h|min|s)( \d\d| \d+ s)?$/];
    const shapeOf = (text: string) => shapes.map((shape) => shape.test(plain(text))).indexOf(true);
    const onlyOne = (text: string) => shapes.filter((shape) => shape.test(plain(text))).length === 1;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.integer({ min: -720, max: 840 }),
        (seconds, offset) => {
          const texts = [
            formatClockTime(seconds * 1000, offset),
            formatClockTime(seconds * 1000, offset, { hour12: false }),
            formatCountdown(seconds),
            formatDuration(seconds),
          ];
          expect(texts.map(shapeOf)).toEqual([0, 1, 2, 3]);
          expect(texts.every(onlyOne)).toBe(true);
        },
      ),
    );
  });
});

describe('a day', () => {
  const now = Date.UTC(2025, 10, 3, 2, 0);

  test.each<[string, number, number, string]>([
    ['the same day', Date.UTC(2025, 10, 3, 23, 59), 0, 'Today'],
    ['two hours and a minute back, past midnight', Date.UTC(2025, 10, 2, 23, 59), 0, 'Yesterday'],
    ['the same instant where it was still the evening before', Date.UTC(2025, 10, 2, 23, 59), -300, 'Today'],
    ['a deadline after midnight', Date.UTC(2025, 10, 4, 0, 0), 0, 'Tomorrow'],
    ['two days ago', Date.UTC(2025, 10, 1, 12), 0, 'Nov 1'],
    ['two days ahead', Date.UTC(2025, 10, 5, 12), 0, 'Nov 5'],
    ['another year', Date.UTC(2024, 10, 3, 12), 0, 'Nov 3, 2024'],
  ])('%s', (_, at, offset, expected) => {
    expect(formatDay(at, offset, now)).toBe(expected);
  });
});

describe('how long ago', () => {
  test.each<[number, string]>([
    [0, 'just now'],
    [59, 'just now'],
    [60, '1 min ago'],
    [3599, '59 min ago'],
    [6 * hour + 1800, '6 h ago'],
    [24 * hour, '1 day ago'],
    [50 * hour, '2 days ago'],
    [-300, 'in 5 min'],
    [Number.NaN, '–'],
  ])('%d s', (seconds, expected) => {
    expect(plain(formatAgo(seconds))).toBe(expected);
  });
});
