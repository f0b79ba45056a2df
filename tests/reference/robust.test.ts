// Source: the libraries simple-statistics (median, median absolute deviation), d3-array and mathjs (quartiles, linear
// between the two nearest: Hyndman and Fan 1996, definition 7, from memory). They know nothing of ours.

import { quantile as d3Quantile } from 'd3-array';
import fc from 'fast-check';
import { quantileSeq } from 'mathjs';
import { median, medianAbsoluteDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { spread } from '#calc';

const figures = fc.array(fc.double({ min: -1000, max: 1000, noNaN: true, noDefaultInfinity: true }), {
  minLength: 1,
  maxLength: 60,
});
const close = (got: number, wanted: number) => expect(Math.abs(got - wanted)).toBeLessThan(1e-9);

describe('the spread of a shop', () => {
  it('agrees with simple-statistics, d3-array and mathjs on any figures', () => {
    fc.assert(
      fc.property(figures, (values) => {
        const { count, median: middle, lower, upper, deviation } = spread({ values });
        expect(count).toBe(values.length);
        close(middle, median(values));
        close(deviation, medianAbsoluteDeviation(values));
        for (const [got, share] of [
          [lower, 0.25],
          [upper, 0.75],
        ] as const) {
          close(got, d3Quantile(values, share) ?? Number.NaN);
          close(got, Number(quantileSeq([...values], share)));
        }
      }),
    );
  });

  // NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.6: the median absolute deviation is not moved by the tails.
  it('is not moved by one bad build, however bad', () => {
    const good = [11, 12, 12, 13];
    const [spilled, lost] = [60, 6000].map((bad) => spread({ values: [...good, bad] }));
    expect(spilled).toEqual(lost);
    expect(spilled?.median).toBe(12);
  });

  it('of one figure is that figure', () => {
    expect(spread({ values: [7] })).toEqual({ count: 1, median: 7, lower: 7, upper: 7, deviation: 0 });
  });

  it('leaves what it was given as it was', () => {
    const values = [3, 1, 2];
    spread({ values });
    expect(values).toEqual([3, 1, 2]);
  });
});
