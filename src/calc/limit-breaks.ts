import { numberIn, positive } from './check.ts';
import { timeAbove } from './hold-time.ts';
import { checkReadings, type Reading } from './readings.ts';

/** How far, how long and between when a limit was gone over. `from` and `until` are absent where it never was. */
export type LimitBreak = { over: number; seconds: number; from?: number; until?: number };

/**
 * By how much, for how long and when a history, or the corners of a schedule, goes over what a material
 * bears. Straight between readings, so the crossings are interpolated; equal times are a step. Lying
 * exactly on the limit is not over it.
 *
 * @param readings in order of time, `time` s and `temperature` K; none is never over
 * @param highest what the material bears, K, greater than 0
 * @param margin K added to every reading: what a sensor reads too low and a hotter corner of the oven;
 *   below 0 for a sensor that reads too high; 0 without it
 * @returns `over` K at the most, `seconds` over it in all, `from` its first and `until` its last crossing, s
 * @throws RangeError naming the field; `margin` when it takes the limit to 0 K or below
 *
 * @example
 * // Release film good to 82 C; up from 22 to 92 C in 70 min, 30 min there, 70 min back. How far over, how long?
 * limitBreaks({
 *   readings: [
 *     { time: 0, temperature: 295.15 },
 *     { time: 4200, temperature: 365.15 },
 *     { time: 6000, temperature: 365.15 },
 *     { time: 10200, temperature: 295.15 },
 *   ],
 *   highest: 355.15,
 * })
 * // => { over: 10, seconds: 3000, from: 3600, until: 6600 }
 */
export function limitBreaks(input: {
  readings: readonly Reading[];
  highest: number;
  margin?: number | undefined;
}): LimitBreak {
  const highest = positive(input, 'highest', 'K');
  const margin = input.margin === undefined ? 0 : numberIn(input, 'margin', 'K', { below: highest });
  const readings = checkReadings(input);
  const limit = highest - margin;
  const over = readings.reduce((most, r) => Math.max(most, r.temperature - limit), 0);
  let first = -1;
  let last = -1;
  readings.forEach((r, index) => {
    if (r.temperature <= limit) return;
    if (first < 0) first = index;
    last = index;
  });
  const [hot, hotLast] = [readings[first], readings[last]];
  if (!hot || !hotLast) return { over: 0, seconds: 0 };
  return {
    over,
    seconds: timeAbove({ readings, limit }),
    from: crossing(readings[first - 1], hot, limit),
    until: crossing(readings[last + 1], hotLast, limit),
  };
}

/** When the straight line from a reading at or under the limit to one over it meets it. */
function crossing(under: Reading | undefined, over: Reading, limit: number): number {
  if (!under) return over.time;
  const share = (limit - under.temperature) / (over.temperature - under.temperature);
  return under.time + share * (over.time - under.time);
}
