import { notNegative, numberIn, positive } from './check.ts';

/**
 * Resin that stays in the part with a given mass of dry cloth.
 *
 * @param clothMass kg, at least 0
 * @param resinMassFraction resin as a share of resin and cloth together, at least 0, less than 1
 * @returns kg
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: m r / (1 - r).
 * Source: ASTM D3171, the resin content by weight turned round.
 *
 * @example
 * // 113.4 g of cloth at 55:45 resin to fabric. How much resin does the part keep?
 * resinForCloth({ clothMass: 0.1134, resinMassFraction: 0.55 })
 * // => 0.1386
 */
export function resinForCloth(input: { clothMass: number; resinMassFraction: number }): number {
  const share = numberIn(input, 'resinMassFraction', '', { from: 0, below: 1 });
  return (notNegative(input, 'clothMass', 'kg') * share) / (1 - share);
}

/**
 * Resin share by weight of a finished part. Weigh it dry and before its ends are trimmed, or with
 * the offcuts on the scale: cloth that is gone counts as resin otherwise.
 *
 * @param clothMass dry, as cut, kg, greater than 0
 * @param partMass kg, no less than the cloth and the film left in it
 * @param filmLeft kg of release film still inside, at least 0; 0 when not given
 * @returns at least 0, less than 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 1 - cloth / (part - film).
 * Source: ASTM D3171, resin content by weight.
 *
 * @example
 * // 113 g of cloth became a tube of 252.5 g with 2 g of film left in it. What share is resin?
 * resinMassFraction({ clothMass: 0.113, partMass: 0.2525, filmLeft: 0.002 })
 * // => 0.5489
 */
export function resinMassFraction(input: {
  clothMass: number;
  partMass: number;
  filmLeft?: number | undefined;
}): number {
  const clothMass = positive(input, 'clothMass', 'kg');
  const filmLeft = input.filmLeft === undefined ? 0 : notNegative(input, 'filmLeft', 'kg');
  const partMass = numberIn(input, 'partMass', 'kg', { from: clothMass + filmLeft });
  return atLeastZero(1 - clothMass / (partMass - filmLeft));
}

/**
 * Resin share by weight of wet cloth still between its films, while it can be corrected.
 *
 * @param clothMass dry, as cut, kg, greater than 0
 * @param wetMass cloth, resin and films together, kg, no less than the cloth and the films
 * @param filmMass of all the films on the scale, kg, at least 0
 * @returns at least 0, less than 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 1 - cloth / (wet - films).
 *
 * @example
 * // 113 g of cloth between 40 g of film weighs 291 g wet. What share is resin?
 * wetResinFraction({ clothMass: 0.113, wetMass: 0.291, filmMass: 0.04 })
 * // => 0.5498
 */
export function wetResinFraction(input: { clothMass: number; wetMass: number; filmMass: number }): number {
  const clothMass = positive(input, 'clothMass', 'kg');
  const filmMass = notNegative(input, 'filmMass', 'kg');
  const wetMass = numberIn(input, 'wetMass', 'kg', { from: clothMass + filmMass });
  return atLeastZero(1 - clothMass / (wetMass - filmMass));
}

// (cloth + film) - film can come out a hair under cloth, and the share a hair under 0.
function atLeastZero(share: number): number {
  return Math.max(0, share);
}
