import { listOf, numberIn, positive } from '../check.ts';
import { PINCHED } from './wall-section.ts';

/**
 * What a proof test says of a tube's stiffness.
 *
 * @param points two figures for each place that was measured: `expected` and `measured` deflection, m, at least one
 *   that is expected to move
 * @param plannedModulus along the tube, Pa, greater than 0
 * @returns `factor`, stiffness over what was planned; `modulus`, Pa; `scatter`, how far the places differ from one
 *   factor, as a share of the largest deflection
 * @throws RangeError naming the field; `measured` when the tube is told to have moved the wrong way
 *
 * Formula: factor = sum of expected^2 / sum of expected times measured: least squares on measured = expected/factor.
 *
 * @example
 * // 0.20 and 0.45 m were expected, 0.21 and 0.48 m came. What modulus, if 90 GPa were planned?
 * effectiveModulus({
 *   points: [{ expected: 0.2, measured: 0.21 }, { expected: 0.45, measured: 0.48 }],
 *   plannedModulus: 90e9,
 * }).modulus
 * // => 8.459e10
 */
export function effectiveModulus(input: {
  points: readonly { readonly expected: number; readonly measured: number }[];
  plannedModulus: number;
}): { factor: number; modulus: number; scatter: number } {
  const planned = positive(input, 'plannedModulus', 'Pa');
  const points = listOf('points', input.points, 1).map((point, k) => ({
    expected: numberIn(point, 'expected', 'm', {}, `points[${k}].`),
    measured: numberIn(point, 'measured', 'm', {}, `points[${k}].`),
  }));
  const sum = (of: (point: { expected: number; measured: number }) => number) =>
    points.reduce((total, point) => total + of(point), 0);
  const squares = sum(({ expected }) => expected * expected);
  if (!(squares > 0)) throw new RangeError('points[].expected must move somewhere, got nothing but 0 m');
  const both = sum(({ expected, measured }) => expected * measured);
  if (!(both > 0))
    throw new RangeError('points[].measured must go the way that is expected, got the other way');
  const factor = squares / both;
  const off = sum(({ expected, measured }) => (measured - expected / factor) ** 2);
  const largest = Math.max(...points.map(({ measured }) => Math.abs(measured)));
  return { factor, modulus: planned * factor, scatter: Math.sqrt(off / points.length) / largest };
}

/**
 * Ring stiffness of a thin end from squeezing a ring of it, or its end, between two fingers or jaws.
 *
 * @param force N, greater than 0
 * @param deflection by how much it gets flatter, m, greater than 0
 * @param width of the ring along the tube, m, greater than 0; of a tube that goes on, more than the jaws' width bears
 * @param radius to the middle of the wall, m, greater than 0
 * @returns `ringStiffness`, N/m2, as `wallSection` has it; `hoopBending`, the wall's D22, N m
 * @throws RangeError naming the field; `deflection` from a tenth of the diameter on, where a ring is no longer straight
 *   in its ways
 *
 * Formula: D22 = (pi/4 - 2/pi) (F/width) R^3/deflection.
 * Source: Roark, Formulas for Stress and Strain, circular rings.
 *
 * @example
 * // A ring 20 mm wide of 20 mm radius gets 1 mm flatter under 10 N. How stiff is it around?
 * squeezeTest({ force: 10, deflection: 0.001, width: 0.02, radius: 0.02 }).hoopBending
 * // => 0.5951
 */
export function squeezeTest(input: { force: number; deflection: number; width: number; radius: number }): {
  ringStiffness: number;
  hoopBending: number;
} {
  const force = positive(input, 'force', 'N');
  const width = positive(input, 'width', 'm');
  const radius = positive(input, 'radius', 'm');
  const deflection = numberIn(input, 'deflection', 'm', { above: 0, below: radius / 5 });
  const ringStiffness = force / width / deflection;
  return { ringStiffness, hoopBending: PINCHED * ringStiffness * radius ** 3 };
}
