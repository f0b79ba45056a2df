import { finite, positive } from './check.ts';

/**
 * How much warmer a resin would get if all of its heat of reaction stayed in it.
 *
 * @param reactionHeat of the mixed resin, J/kg, greater than 0
 * @param specificHeat J/(kg K), greater than 0
 * @returns K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: H / c.
 * Source: heat balance. Epoxide and amine give 100 to 110 kJ to an equivalent (Horie 1970, from memory),
 * about 490 J/g for a resin of equivalent 190 with TETA.
 *
 * @example
 * // 490 J/g of heat in a resin of 2.0 J/(g K). How far would it rise?
 * adiabaticRise({ reactionHeat: 490000, specificHeat: 2000 })
 * // => 245
 */
export function adiabaticRise(input: { reactionHeat: number; specificHeat: number }): number {
  const heat = positive(input, 'reactionHeat', 'J/kg');
  return finite(heat / positive(input, 'specificHeat', 'J/(kg K)'), 'specificHeat');
}
