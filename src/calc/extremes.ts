import { checkReadings, eachStretch, type Reading } from './readings.ts';

/**
 * The highest read, and when it was first read. What happened between readings is not in it.
 *
 * @param readings in order of time, at least one
 * @returns `time` s, `temperature` K
 * @throws RangeError naming the field; `readings` when there are none
 *
 * @example
 * // 60, 72 and 71 C were read. What was the highest?
 * peak({
 *   readings: [
 *     { time: 0, temperature: 333.15 },
 *     { time: 600, temperature: 345.15 },
 *     { time: 1200, temperature: 344.15 },
 *   ],
 * })
 * // => { time: 600, temperature: 345.15 }
 */
export function peak(input: { readings: readonly Reading[] }): Reading {
  const { time, temperature } = checkReadings(input, 1).reduce((highest, reading) =>
    reading.temperature > highest.temperature ? reading : highest,
  );
  return { time, temperature };
}

/**
 * Steepest rise and fall between one reading and the next. Readings at equal times are a step, which
 * has no rate and is passed over.
 *
 * @param readings in order of time; none or one gives 0 both ways
 * @returns `up` and `down`, K/s, both at least 0
 * @throws RangeError naming the field that is missing or out of range
 *
 * @example
 * // 20 C, 10 min later 45 C, 10 min later 40 C. What was the steepest each way?
 * steepest({
 *   readings: [
 *     { time: 0, temperature: 293.15 },
 *     { time: 600, temperature: 318.15 },
 *     { time: 1200, temperature: 313.15 },
 *   ],
 * })
 * // => { up: 0.04167, down: 0.008333 }
 */
export function steepest(input: { readings: readonly Reading[] }): { up: number; down: number } {
  let up = 0;
  let down = 0;
  eachStretch(input, (lasts, from, to) => {
    up = Math.max(up, (to - from) / lasts);
    down = Math.max(down, (from - to) / lasts);
  });
  return { up, down };
}
