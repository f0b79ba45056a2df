import { notNegative, positive } from '../check.ts';
import { reserveOf } from './reserve.ts';

/** One side of a bond: `e` along the force, Pa (for a torque its shear modulus); `thickness`, m. */
export type Adherend = { readonly e: number; readonly thickness: number };

/** A bond is as good as endless when its peak is this near what it would be then. */
const NEAR_ENDLESS = 1.01;

export type BondPeak = {
  /** Shear in the bond, Pa; `peak` at the end of the stiffer side's partner */
  readonly average: number;
  readonly peak: number;
  readonly peakOverAverage: number;
  /** Beyond this length the peak falls by no more than 1 %: more adds nothing, m */
  readonly usefulLength: number;
  /** Of the shear strength over the peak, without a safety factor, 1e6 at most */
  readonly reserve: number;
};

/**
 * Shear in the bond of a fitting or a joint, stiff sides that stretch and a bond that only shears.
 *
 * @param force along the lap, N, at least 0; for a torque the force round the bond, torque over its radius
 * @param width of the bond across the force, m, greater than 0; round a tube its circumference
 * @param length of the lap along the force, m, greater than 0
 * @param inner `e`, Pa, and `thickness`, m, of one side, greater than 0
 * @param outer the same of the other
 * @param bondThickness m, greater than 0
 * @param bondShearModulus Pa, greater than 0
 * @param shearStrength of the bond, Pa, greater than 0
 * @returns see `BondPeak`
 * @throws RangeError naming the field
 *
 * Formula: b^2 = (G/ta)(1/(E1 t1) + 1/(E2 t2)), peak/average = (b L/2)(coth(b L/2) + s tanh(b L/2)),
 * s = |E1 t1 - E2 t2|/(E1 t1 + E2 t2).
 * Source: Volkersen 1938, as in every text on bonded lap joints. No peel, no yielding: the peak is on the safe side for
 * a tough adhesive, and blind to peel.
 *
 * @example
 * // Two sides of 1 mm at 50 GPa, 0.3 mm of epoxy at 1 GPa, 50 mm. Peak over average?
 * bondPeak({
 *   force: 5000,
 *   width: 0.12,
 *   length: 0.05,
 *   inner: { e: 50e9, thickness: 0.001 },
 *   outer: { e: 50e9, thickness: 0.001 },
 *   bondThickness: 0.0003,
 *   bondShearModulus: 1e9,
 *   shearStrength: 20e6,
 * }).peakOverAverage
 * // => 9.129
 */
export function bondPeak(input: {
  force: number;
  width: number;
  length: number;
  inner: Adherend;
  outer: Adherend;
  bondThickness: number;
  bondShearModulus: number;
  shearStrength: number;
}): BondPeak {
  const force = notNegative(input, 'force', 'N');
  const width = positive(input, 'width', 'm');
  const length = positive(input, 'length', 'm');
  const one = stretchOf(input.inner, 'inner.');
  const two = stretchOf(input.outer, 'outer.');
  const soft = positive(input, 'bondThickness', 'm') / positive(input, 'bondShearModulus', 'Pa');
  const strength = positive(input, 'shearStrength', 'Pa');
  const decay = Math.sqrt((1 / one + 1 / two) / soft);
  const uneven = Math.abs(one - two) / (one + two);
  const half = (decay * length) / 2;
  const steep = Math.tanh(half);
  const peakOverAverage = half * (1 / steep + uneven * steep);
  const average = force / width / length;
  const peak = average * peakOverAverage;
  const limit = NEAR_ENDLESS * (1 + uneven);
  const enough = Math.atanh(2 / (limit + Math.sqrt(limit * limit - 4 * uneven)));
  const usefulLength = (2 * enough) / decay;
  return { average, peak, peakOverAverage, usefulLength, reserve: reserveOf(strength, peak) };
}

function stretchOf(side: Adherend, path: string): number {
  return positive(side, 'e', 'Pa', path) * positive(side, 'thickness', 'm', path);
}
