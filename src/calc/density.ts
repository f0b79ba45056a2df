import { numberIn, positive } from './check.ts';

/**
 * Density of a laminate without voids.
 *
 * @param fiberVolumeFraction 0 to 1
 * @param fiberDensity kg/m3, greater than 0
 * @param resinDensity cured, kg/m3, greater than 0
 * @returns kg/m3
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: Vf rf + (1 - Vf) rr, the rule of mixtures.
 * Source: Agarwal and Broutman, Analysis and Performance of Fiber Composites.
 *
 * @example
 * // How dense is a carbon laminate at 35 % fiber?
 * compositeDensity({ fiberVolumeFraction: 0.35, fiberDensity: 1800, resinDensity: 1180 })
 * // => 1397
 */
export function compositeDensity(input: {
  fiberVolumeFraction: number;
  fiberDensity: number;
  resinDensity: number;
}): number {
  const volume = numberIn(input, 'fiberVolumeFraction', '', { from: 0, to: 1 });
  return (
    volume * positive(input, 'fiberDensity', 'kg/m3') +
    (1 - volume) * positive(input, 'resinDensity', 'kg/m3')
  );
}

/**
 * Share of the part's volume that is neither fiber nor resin. The difference of two nearly equal
 * densities: an error in the resin's density shows up whole, so a result a little below 0 is
 * possible and is not clamped.
 *
 * @param measuredDensity kg/m3, greater than 0, by weighing in air and in water
 * @param fiberMassFraction 0 to 1
 * @param fiberDensity kg/m3, greater than 0
 * @param resinDensity cured, kg/m3, greater than 0
 * @returns share of volume, at most 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 1 - measured (Wf/rf + (1 - Wf)/rr).
 * Source: ASTM D2734; Agarwal and Broutman.
 *
 * @example
 * // A coupon of glass at 71 % fiber by weight measures 1.86 g/cm3. How many voids?
 * voidFraction({ measuredDensity: 1860, fiberMassFraction: 0.71, fiberDensity: 2500, resinDensity: 1200 })
 * // => 0.02226
 */
export function voidFraction(input: {
  measuredDensity: number;
  fiberMassFraction: number;
  fiberDensity: number;
  resinDensity: number;
}): number {
  const mass = numberIn(input, 'fiberMassFraction', '', { from: 0, to: 1 });
  const volumePerMass =
    mass / positive(input, 'fiberDensity', 'kg/m3') + (1 - mass) / positive(input, 'resinDensity', 'kg/m3');
  return 1 - positive(input, 'measuredDensity', 'kg/m3') * volumePerMass;
}
