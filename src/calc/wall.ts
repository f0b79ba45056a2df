import { numberIn, positive } from './check.ts';

/**
 * Wall of a tube from its two diameters, as a mean round the tube.
 *
 * @param outsideDiameter m, greater than innerDiameter
 * @param innerDiameter m, greater than 0: the mandrel with its release on
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (Do - Di) / 2.
 *
 * @example
 * // 40.6 mm outside on a 38.1 mm mandrel: what wall?
 * wallFromOutside({ outsideDiameter: 0.0406, innerDiameter: 0.0381 })
 * // => 0.00125
 */
export function wallFromOutside(input: { outsideDiameter: number; innerDiameter: number }): number {
  const innerDiameter = positive(input, 'innerDiameter', 'm');
  return (numberIn(input, 'outsideDiameter', 'm', { above: innerDiameter }) - innerDiameter) / 2;
}

/**
 * Diameter from a tape laid round the tube. Takes the tube as round; an oval one of the same
 * circumference is narrower one way and wider the other.
 *
 * @param circumference m, greater than 0
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: c / pi.
 *
 * @example
 * // The tape reads 127.5 mm round. How thick is the tube?
 * diameterFromCircumference({ circumference: 0.1275 })
 * // => 0.04058
 */
export function diameterFromCircumference(input: { circumference: number }): number {
  return positive(input, 'circumference', 'm') / Math.PI;
}
