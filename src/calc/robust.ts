import { finite, listOf, numberIn } from './check.ts';

export interface Spread {
  count: number;
  median: number;
  /** Between these lies the middle half. */
  lower: number;
  upper: number;
  /** Median distance from the median. */
  deviation: number;
}

/** Linear between the two that the place falls between; `sorted` holds one at least. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? 0;
  const high = sorted[below + 1] ?? low;
  return low + (high - low) * (place - below);
}

/**
 * The middle of a handful of figures and how far they lie apart, hardly moved by one bad one.
 *
 * @param values any finite numbers, at least one
 * @returns `count`, `median`, the quartiles `lower` and `upper`, and `deviation`, the median absolute deviation
 * @throws RangeError naming the value; `values` when there are none
 *
 * Formula: quartiles linear between order statistics at p (n - 1); deviation = median |x - median|, unscaled.
 * Source: Hyndman and Fan, The American Statistician 50 (1996), definition 7; NIST/SEMATECH e-Handbook 1.3.5.6.
 *
 * @example
 * // Cups lost 11, 12, 12, 13 and, once knocked over, 60 g. What does a cup lose here?
 * spread({ values: [0.011, 0.012, 0.06, 0.012, 0.013] })
 * // => { count: 5, median: 0.012, lower: 0.012, upper: 0.013, deviation: 0.001 }
 */
export function spread(input: { values: readonly number[] }): Spread {
  const given = listOf('values', input.values, 1);
  const values = given.map((value, i) => numberIn({ [`values[${i}]`]: value }, `values[${i}]`, ''));
  const sorted = values.sort((a, b) => a - b);
  const median = quantile(sorted, 0.5);
  const away = sorted.map((value) => Math.abs(value - median)).sort((a, b) => a - b);
  return {
    count: sorted.length,
    median: finite(median, 'values'),
    lower: quantile(sorted, 0.25),
    upper: quantile(sorted, 0.75),
    deviation: quantile(away, 0.5),
  };
}
