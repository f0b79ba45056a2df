import { numberIn, positive } from './check.ts';
import { eachStretch, type Reading, shareAbove } from './readings.ts';

/**
 * Time spent inside a band of temperature. Temperature is taken as straight between readings, so the
 * crossings are interpolated; readings at equal times are a step. A level stretch exactly on the foot
 * or the head of the band counts as inside.
 *
 * @param readings in order of time; none or one gives 0
 * @param low foot of the band, K, greater than 0
 * @param high head of the band, K, at least low; without it the band is open above
 * @returns s
 * @throws RangeError naming the field that is missing or out of range
 *
 * @example
 * // Up from 20 to 80 C in an hour, an hour at 80. How long at 65 C or more?
 * holdTime({
 *   readings: [
 *     { time: 0, temperature: 293.15 },
 *     { time: 3600, temperature: 353.15 },
 *     { time: 7200, temperature: 353.15 },
 *   ],
 *   low: 338.15,
 * })
 * // => 4500
 */
export function holdTime(input: {
  readings: readonly Reading[];
  low: number;
  high?: number | undefined;
}): number {
  const low = positive(input, 'low', 'K');
  const high = input.high === undefined ? undefined : numberIn(input, 'high', 'K', { from: low });
  let held = 0;
  eachStretch(input, (lasts, from, to) => {
    const over = high === undefined ? 0 : shareAbove(from, to, high, false);
    held += lasts * (shareAbove(from, to, low, true) - over);
  });
  return held;
}

/**
 * Time spent over a limit, the crossings interpolated. Lying exactly on the limit is not over it.
 *
 * @param readings in order of time; none or one gives 0
 * @param limit K, greater than 0
 * @returns s
 * @throws RangeError naming the field that is missing or out of range
 *
 * @example
 * // Release film good to 80 C; part went from 70 to 90 C and back, 10 min each way. How long over?
 * timeAbove({
 *   readings: [
 *     { time: 0, temperature: 343.15 },
 *     { time: 600, temperature: 363.15 },
 *     { time: 1200, temperature: 343.15 },
 *   ],
 *   limit: 353.15,
 * })
 * // => 600
 */
export function timeAbove(input: { readings: readonly Reading[]; limit: number }): number {
  const limit = positive(input, 'limit', 'K');
  let over = 0;
  eachStretch(input, (lasts, from, to) => {
    over += lasts * shareAbove(from, to, limit, false);
  });
  return over;
}
