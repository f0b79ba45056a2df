import { positive } from './check.ts';

/** Height of a digit for each unit of distance it is read from. */
const share = 1 / 200;

/**
 * How tall a digit has to be to be read from a distance: 1/200 of it, which is 17 minutes of arc.
 *
 * @param input.distance m, greater than 0
 * @returns height of the digit itself, m
 * @throws RangeError naming the field when it is missing, not finite or out of range
 *
 * Source: common practice for displays; ISO 9241-303 asks for 16 minutes of arc at least (from memory).
 *
 * @example
 * // How tall is a digit that is read from 4 m?
 * digitHeight({ distance: 4 })
 * // => 0.02
 */
export function digitHeight(input: { distance: number }): number {
  return positive(input, 'distance', 'm') * share;
}

/**
 * From how far a digit can be read; the inverse of `digitHeight`.
 *
 * @param input.height of the digit itself, m, greater than 0
 * @returns m
 * @throws RangeError naming the field when it is missing, not finite or out of range
 *
 * Source: as `digitHeight`.
 *
 * @example
 * // From how far is a digit of 13 mm read?
 * readableFrom({ height: 0.013 })
 * // => 2.6
 */
export function readableFrom(input: { height: number }): number {
  return positive(input, 'height', 'm') / share;
}
