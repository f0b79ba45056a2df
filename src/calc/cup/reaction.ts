import { positive } from '../check.ts';
import { gasConstant } from '../constants.ts';

/**
 * How epoxide and amine react: autocatalytic, the hydroxyl that forms speeding it up.
 * Form: d(alpha)/dt = k (c + alpha)(1 - alpha)^2, Horie and others 1970, from memory (equal equivalents).
 */
export interface Reaction {
  /** k at 25 C, 1/s */
  rate: number;
  /** J/mol */
  activationEnergy: number;
}

/** 25 C, what the rates are stated at, K */
export const rateTemperature = 298.15;

/**
 * c, the share of the reaction that needs no hydroxyl of its own. Laminating hardeners carry accelerators,
 * so it is well above the 0.01 to 0.1 of pure amines; chosen with the loss below (common practice, no source).
 */
export const uncatalyzed = 0.3;

/** Gel of a four-functional amine with a two-functional epoxide: 1/sqrt(3). */
export const gelShare = 1 / Math.sqrt(3);

/**
 * Conversion at which an epoxy network gels.
 *
 * @param amineFunctionality active hydrogens on a molecule of the hardener, greater than 2
 * @returns share of the groups reacted, less than 1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 1/sqrt(f - 1), equal equivalents, two-functional epoxide.
 * Source: Flory and Stockmayer, from memory.
 *
 * @example
 * // A diamine has four active hydrogens. At what conversion does it gel?
 * gelConversion({ amineFunctionality: 4 })
 * // => 0.5774
 */
export function gelConversion(input: { amineFunctionality: number }): number {
  const functionality = positive(input, 'amineFunctionality', 'hydrogens');
  if (functionality > 2) return 1 / Math.sqrt(functionality - 1);
  throw new RangeError(
    `amineFunctionality must be greater than 2 for a network to form, got ${functionality}`,
  );
}

// A solver tries steps that lead nowhere: without these an overflow there would poison the steps beside them.
const coldest = 150;
const nearlyAll = 1 - 1e-6;

/** d(alpha)/dt, 1/s */
export function reactionRate({ rate, activationEnergy }: Reaction, reacted: number, kelvin: number): number {
  const share = Math.min(nearlyAll, Math.max(0, reacted));
  const temperature = Math.max(coldest, kelvin);
  const speed = rate * Math.exp((activationEnergy / gasConstant) * (1 / rateTemperature - 1 / temperature));
  return speed * (uncatalyzed + share) * (1 - share) ** 2;
}
