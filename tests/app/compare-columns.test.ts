import { describe, expect, it } from 'vitest';
import { columnsInView, linesOf } from '#app/made/compare/in-view.ts';

const phone = { width: 360, count: 50 };

describe('the columns that are drawn', () => {
  it('are those in sight and three more, from the first one on', () => {
    expect(columnsInView({ ...phone, left: 0 })).toEqual({ from: 0, to: 6 });
    expect(columnsInView({ ...phone, left: 1120 })).toEqual({ from: 7, to: 16 });
  });

  it('end with the last build when the table is slid to its end', () => {
    const whole = 108 + 50 * 112;
    expect(columnsInView({ ...phone, left: whole - 360 }).to).toBe(50);
  });

  it('are all of them on a wide screen, and none that are not there', () => {
    expect(columnsInView({ left: 0, width: 1440, count: 5 })).toEqual({ from: 0, to: 5 });
    // A thumb pulls past the end for a moment.
    expect(columnsInView({ left: 9000, width: 360, count: 5 })).toEqual({ from: 5, to: 5 });
    expect(columnsInView({ left: -40, width: 360, count: 5 })).toEqual({ from: 0, to: 5 });
  });
});

it('a cell takes a line for what fits beside each other, and a long word never more than its own', () => {
  expect(linesOf('412 g')).toBe(1);
  expect(linesOf('Polyester film sleeve')).toBe(2);
  expect(linesOf('+0.4 %, +1.0 %, -0.2 %')).toBe(2);
  expect(linesOf('unpronounceablename')).toBe(1);
});
