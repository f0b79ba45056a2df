import { listOf, notNegative, numberIn, positive } from './check.ts';

/** Pull of a tape for each m of its width, N/m, at a temperature, K. */
export type PullPoint = { readonly temperature: number; readonly force: number };

/**
 * What a shrink tape pulls at a temperature, by its measured points.
 *
 * @param points at least one; `temperature` K, from low to high and no two the same; `force` N/m, at least 0
 * @param temperature K, greater than 0
 * @returns N/m: straight between points, none below the first, as the last above it
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: linear interpolation.
 * Source: points by whoever measured them.
 *
 * @example
 * // None at 65 C and 400 N/m at 100 C: what at 80 C?
 * tapePull({
 *   points: [{ temperature: 338.15, force: 0 }, { temperature: 373.15, force: 400 }],
 *   temperature: 353.15,
 * })
 * // => 171.4
 */
export function tapePull(input: { points: readonly PullPoint[]; temperature: number }): number {
  const temperature = positive(input, 'temperature', 'K');
  let before: PullPoint | undefined;
  let pull = 0;
  listOf('points', input.points, 1).forEach((given, index) => {
    const path = `points[${index}].`;
    const bounds = before ? { above: before.temperature } : { above: 0 };
    const point = {
      temperature: numberIn(given, 'temperature', 'K', bounds, path),
      force: notNegative(given, 'force', 'N/m', path),
    };
    if (temperature >= point.temperature) pull = point.force;
    else if (before && temperature > before.temperature) pull = between(before, point, temperature);
    before = point;
  });
  return pull;
}

function between(low: PullPoint, high: PullPoint, temperature: number): number {
  const share = (temperature - low.temperature) / (high.temperature - low.temperature);
  return low.force + share * (high.force - low.force);
}
