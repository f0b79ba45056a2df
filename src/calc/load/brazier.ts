import { positive } from '../check.ts';

/**
 * The bending moment at which a long tube flattens until it gives.
 *
 * @param radius to the middle of the wall, m, greater than 0
 * @param axialStiffness of the wall along the tube, free to narrow, N/m, greater than 0: 1/(A^-1)11
 * @param hoopBending D22, N m, greater than 0
 * @returns N m
 * @throws RangeError naming the field
 *
 * Formula: (2 sqrt 2/9) pi R sqrt(12 E t D22); for one metal (2 sqrt 2/9) pi E R t^2/sqrt(1 - nu^2).
 * Source: Brazier, On the Flexure of Thin Cylindrical Shells, Proc. R. Soc. A 116 (1927), from memory; with the
 * stiffness along and around each in its place.
 *
 * @example
 * // A wall of 1 MN/m along and 1 N m around, on a radius of 20 mm. What moment flattens it?
 * brazierMoment({ radius: 0.02, axialStiffness: 1e6, hoopBending: 1 })
 * // => 68.4
 */
export function brazierMoment(input: {
  radius: number;
  axialStiffness: number;
  hoopBending: number;
}): number {
  const radius = positive(input, 'radius', 'm');
  const along = positive(input, 'axialStiffness', 'N/m');
  const around = positive(input, 'hoopBending', 'N m');
  return ((2 * Math.SQRT2) / 9) * Math.PI * radius * Math.sqrt(12 * along) * Math.sqrt(around);
}
