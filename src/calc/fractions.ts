import { notNegative, numberIn, positive } from './check.ts';

/**
 * Share of the laminate's volume that is fiber, as if it had no voids.
 *
 * @param fiberMass kg, at least 0; not 0 together with resinMass
 * @param resinMass kg, at least 0
 * @param fiberDensity kg/m3, greater than 0
 * @param resinDensity cured, kg/m3, greater than 0
 * @returns 0 to 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (mf/rf) / (mf/rf + mr/rr), the rule of mixtures.
 * Source: Agarwal and Broutman, Analysis and Performance of Fiber Composites; ASTM D3171.
 *
 * @example
 * // 100 g of carbon cloth and 122 g of resin, 55:45 by weight. How much of it is fiber?
 * fiberVolumeFraction({ fiberMass: 0.1, resinMass: 0.1222, fiberDensity: 1800, resinDensity: 1180 })
 * // => 0.3491
 */
export function fiberVolumeFraction(input: {
  fiberMass: number;
  resinMass: number;
  fiberDensity: number;
  resinDensity: number;
}): number {
  const resinMass = notNegative(input, 'resinMass', 'kg');
  const fiberMass =
    resinMass > 0 ? notNegative(input, 'fiberMass', 'kg') : positive(input, 'fiberMass', 'kg');
  const fiber = fiberMass / positive(input, 'fiberDensity', 'kg/m3');
  const resin = resinMass / positive(input, 'resinDensity', 'kg/m3');
  return fiber / (fiber + resin);
}

/**
 * Share of the laminate's mass that is fiber, from the share of its volume. One less this is the
 * resin share by weight.
 *
 * @param fiberVolumeFraction 0 to 1
 * @param fiberDensity kg/m3, greater than 0
 * @param resinDensity cured, kg/m3, greater than 0
 * @returns 0 to 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: Vf rf / (Vf rf + (1 - Vf) rr).
 * Source: Agarwal and Broutman.
 *
 * @example
 * // Carbon at 35 % fiber by volume: what share of the weight is cloth?
 * fiberMassFraction({ fiberVolumeFraction: 0.35, fiberDensity: 1800, resinDensity: 1180 })
 * // => 0.451
 */
export function fiberMassFraction(input: {
  fiberVolumeFraction: number;
  fiberDensity: number;
  resinDensity: number;
}): number {
  const volume = numberIn(input, 'fiberVolumeFraction', '', { from: 0, to: 1 });
  const fiber = volume * positive(input, 'fiberDensity', 'kg/m3');
  const resin = (1 - volume) * positive(input, 'resinDensity', 'kg/m3');
  return fiber / (fiber + resin);
}

/**
 * Share of the laminate's volume that is fiber, from the share of its mass. The way back from
 * `fiberMassFraction`.
 *
 * @param fiberMassFraction 0 to 1
 * @param fiberDensity kg/m3, greater than 0
 * @param resinDensity cured, kg/m3, greater than 0
 * @returns 0 to 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (Wf/rf) / (Wf/rf + (1 - Wf)/rr).
 * Source: Agarwal and Broutman.
 *
 * @example
 * // Glass at 54 % cloth by weight: how much of the volume is fiber?
 * fiberVolumeFractionFromMass({ fiberMassFraction: 0.54, fiberDensity: 2540, resinDensity: 1180 })
 * // => 0.3529
 */
export function fiberVolumeFractionFromMass(input: {
  fiberMassFraction: number;
  fiberDensity: number;
  resinDensity: number;
}): number {
  const mass = numberIn(input, 'fiberMassFraction', '', { from: 0, to: 1 });
  const fiber = mass / positive(input, 'fiberDensity', 'kg/m3');
  const resin = (1 - mass) / positive(input, 'resinDensity', 'kg/m3');
  return fiber / (fiber + resin);
}
