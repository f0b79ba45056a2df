import { finite, notNegative, numberIn, positive } from './check.ts';
import { poissonBounds } from './lamina.ts';
import { expansionIn } from './laminate-expansion.ts';

/**
 * How a wall of balanced 0/90 cloth grows around the hoop with heat.
 *
 * @param e1 of one ply along its fibers, Pa, greater than 0
 * @param e2 across them, Pa, greater than 0
 * @param nu12 its size less than sqrt(e1/e2)
 * @param alpha1 along the fibers, 1/K, from -0.01 to 0.01
 * @param alpha2 across them, the same
 * @returns 1/K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (E1 a1 + E2 a2 + nu12 E2 (a1 + a2))/(E1 + E2 + 2 nu12 E2).
 * Source: classical lamination theory, Kaw, Mechanics of Composite Materials, section 4.5.
 *
 * @example
 * // Carbon cloth and epoxy by hand: how does it grow?
 * hoopExpansion({ e1: 105e9, e2: 7.5e9, nu12: 0.3, alpha1: 4e-7, alpha2: 4.5e-5 })
 * // => 4.117e-6
 */
export function hoopExpansion(input: {
  e1: number;
  e2: number;
  nu12: number;
  alpha1: number;
  alpha2: number;
}): number {
  const e1 = positive(input, 'e1', 'Pa');
  const e2 = positive(input, 'e2', 'Pa');
  const cross = e2 * numberIn(input, 'nu12', '', poissonBounds(e1, e2));
  const [along, across] = [expansionIn(input, 'alpha1'), expansionIn(input, 'alpha2')];
  const push = e1 * along + e2 * across + cross * (along + across);
  return finite(push / (e1 + e2 + 2 * cross), 'nu12');
}

interface Fit {
  mandrelExpansion: number;
  laminateHoopExpansion: number;
  setTemperature: number;
  cureShrinkage?: number | undefined;
}

function fitIn(input: Fit) {
  const { cureShrinkage } = input;
  return {
    apart: expansionIn(input, 'mandrelExpansion') - expansionIn(input, 'laminateHoopExpansion'),
    set: positive(input, 'setTemperature', 'K'),
    shrinkage: cureShrinkage === undefined ? 0 : numberIn(input, 'cureShrinkage', '', { from: 0, below: 1 }),
  };
}

/**
 * Room between a mandrel and the tube cured on it, on the diameter.
 *
 * @param diameter of the mandrel, m, greater than 0
 * @param mandrelExpansion 1/K, from -0.01 to 0.01
 * @param laminateHoopExpansion of the wall around the hoop, 1/K, the same
 * @param setTemperature at which the resin gelled and the wall took its size, K, greater than 0
 * @param temperature now, K, greater than 0
 * @param cureShrinkage of the wall around the hoop after gel, as a share, at least 0; 0 when not given
 * @returns m; positive is loose, negative is gripped
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: D ((am - al)(Tset - T) - es).
 * Source: linear thermal expansion; shrinkage after gel taken off as a strain.
 *
 * @example
 * // Carbon on 38.1 mm of aluminum, set at 60 C, now at 20 C: how much room?
 * demoldClearance({
 *   diameter: 0.0381, mandrelExpansion: 23.6e-6, laminateHoopExpansion: 4.1e-6,
 *   setTemperature: 333.15, temperature: 293.15, cureShrinkage: 3e-4,
 * })
 * // => 1.829e-5
 */
export function demoldClearance(input: Fit & { diameter: number; temperature: number }): number {
  const { apart, set, shrinkage } = fitIn(input);
  const cooled = set - positive(input, 'temperature', 'K');
  return positive(input, 'diameter', 'm') * (apart * cooled - shrinkage);
}

/**
 * The temperature below which a tube comes loose from its mandrel. The way back from `demoldClearance`.
 *
 * @param mandrelExpansion 1/K, from -0.01 to 0.01
 * @param laminateHoopExpansion of the wall around the hoop, 1/K, the same
 * @param setTemperature K, greater than 0
 * @param cureShrinkage as a share, at least 0; 0 when not given
 * @param clearance wanted, as a share of the diameter, at least 0; 0 when not given
 * @returns K, or null where the mandrel does not shrink away from the wall at any temperature
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: Tset - (es + c)/(am - al).
 * Source: linear thermal expansion.
 *
 * @example
 * // Carbon on aluminum, set at 60 C, 0.03 % of cure shrinkage: loose below what?
 * looseTemperature({
 *   mandrelExpansion: 23.6e-6, laminateHoopExpansion: 4.1e-6, setTemperature: 333.15, cureShrinkage: 3e-4,
 * })
 * // => 317.8
 */
export function looseTemperature(input: Fit & { clearance?: number | undefined }): number | null {
  const { apart, set, shrinkage } = fitIn(input);
  const wanted = input.clearance === undefined ? 0 : notNegative(input, 'clearance', '');
  if (apart <= 0) return null;
  const loose = set - (shrinkage + wanted) / apart;
  return loose > 0 ? loose : null;
}
