import { finite, listOf, notNegative, numberIn, positive } from './check.ts';

/** One cup in its turn, s from when the first may be begun. */
export interface CupTime {
  /** Hardener goes in. */
  mixAt: number;
  /** All of it is on the cloth. */
  emptyAt: number;
}

/**
 * When each cup is mixed, by one pair of hands: stirred, worked into the cloth, then the next.
 *
 * @param cups in order, `mass` of mixed resin in each, kg, greater than 0; none gives none
 * @param workingRate mixed resin worked into cloth, kg/s, greater than 0
 * @param stir from first contact until it is poured out, s, at least 0
 * @param begin when hardener may go into the first, s; may be below 0
 * @returns `mixAt` and `emptyAt` of each, s
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: empty = mix + stir + m / rate; the next is mixed when the one before is empty.
 * Source: common practice, no source.
 *
 * @example
 * // Two cups of 100 g at 10 g a minute, 3 min of stirring each. When is which mixed?
 * cupTimes({ cups: [{ mass: 0.1 }, { mass: 0.1 }], workingRate: 0.01 / 60, stir: 180, begin: 0 })
 * // => [{ mixAt: 0, emptyAt: 780 }, { mixAt: 780, emptyAt: 1560 }]
 */
export function cupTimes(input: {
  cups: readonly { mass: number }[];
  workingRate: number;
  stir: number;
  begin: number;
}): CupTime[] {
  const rate = positive(input, 'workingRate', 'kg/s');
  const stir = notNegative(input, 'stir', 's');
  let at = numberIn(input, 'begin', 's');
  return listOf('cups', input.cups, 0).map((cup, index) => {
    const mixAt = at;
    at += stir + positive(cup, 'mass', 'kg', `cups[${index}].`) / rate;
    return { mixAt, emptyAt: finite(at, 'workingRate') };
  });
}
