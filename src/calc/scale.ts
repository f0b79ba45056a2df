import { positive } from './check.ts';

/**
 * Error of the mixing ratio that the scale alone can make: half a division wrong on the resin, half a
 * division wrong the other way on the hardener, to first order. It is the share by which hardener
 * to resin is off, so it compares with the tolerance on the resin's label.
 *
 * @param cup mixed resin in it, resin and hardener together, kg, greater than 0
 * @param scaleStep the scale's division, kg, greater than 0
 * @param hardenerPerResin by mass, greater than 0
 * @returns share, greater than 0
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (d/2)(1/r + 1/h) with r = cup/(1 + q), h = cup q/(1 + q), hence d (1 + q)^2 / (2 q cup).
 * Source: rounding of a digital indication, half a division, OIML R 76-1.
 *
 * @example
 * // A 100 g cup at 100:30 on a scale that shows whole grams. How far off can it be?
 * scaleRatioError({ cup: 0.1, scaleStep: 0.001, hardenerPerResin: 0.3 })
 * // => 0.02817
 */
export function scaleRatioError(input: { cup: number; scaleStep: number; hardenerPerResin: number }): number {
  return errorTimesCup(input) / positive(input, 'cup', 'kg');
}

/**
 * Smallest cup for which a scale can hold the mixing tolerance. The way back from `scaleRatioError`.
 *
 * @param scaleStep the scale's division, kg, greater than 0
 * @param hardenerPerResin by mass, greater than 0
 * @param tolerance on hardener to resin, as a share, greater than 0, less than 1
 * @returns kg of mixed resin, resin and hardener together
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: d (1 + q)^2 / (2 q tolerance).
 * Source: rounding of a digital indication, half a division, OIML R 76-1.
 *
 * @example
 * // A scale of whole grams, 100:30, tolerance 3 %. How big must a cup be?
 * smallestCupForScale({ scaleStep: 0.001, hardenerPerResin: 0.3, tolerance: 0.03 })
 * // => 0.09389
 */
export function smallestCupForScale(input: {
  scaleStep: number;
  hardenerPerResin: number;
  tolerance: number;
}): number {
  return errorTimesCup(input) / positive(input, 'tolerance', '');
}

function errorTimesCup(input: { scaleStep: number; hardenerPerResin: number }): number {
  const ratio = positive(input, 'hardenerPerResin', '');
  return (positive(input, 'scaleStep', 'kg') * (1 + ratio) ** 2) / (2 * ratio);
}
