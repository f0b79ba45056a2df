import { finite, listOf, numberIn, positive } from './check.ts';

export interface PlacedMass {
  /** kg */
  mass: number;
  /** Where its own center lies along the axis, m */
  position: number;
}

/**
 * Where a structure balances along an axis.
 *
 * @param parts at least one; each `mass` in kg, greater than 0, and the `position` of its own center in m, of any
 *   sign, all from the same zero
 * @returns m from that zero; never outside the parts
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: x = sum m x / sum m.
 * Source: mean weighted by mass; any text on statics.
 *
 * @example
 * // A mast of 480 g with its center at 1.9 m and a foot of 60 g at 0 m. Where does it balance?
 * centerOfGravity({ parts: [{ mass: 0.48, position: 1.9 }, { mass: 0.06, position: 0 }] })
 * // => 1.689
 */
export function centerOfGravity(input: { parts: readonly PlacedMass[] }): number {
  const parts = listOf('parts', input?.parts, 1).map((part, i) => ({
    mass: positive(part, 'mass', 'kg', `parts[${i}].`),
    position: numberIn(part, 'position', 'm', {}, `parts[${i}].`),
  }));
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const mean = parts.reduce((sum, part) => sum + (part.mass / mass) * part.position, 0);
  const positions = parts.map((part) => part.position);
  // Rounding must not put the balance of equal places beside them.
  return finite(Math.min(Math.max(mean, Math.min(...positions)), Math.max(...positions)), 'position');
}
