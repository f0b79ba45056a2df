import { notNegative, numberIn, positive } from './check.ts';

const MOST_CUPS = 1000;

/**
 * Resin and hardener to mix so that the part keeps what it should.
 *
 * @param kept in the part, kg, greater than 0
 * @param squeezeOutShare of what is applied that the tape presses out, at least 0, less than 1
 * @param cups whole number, 1 to 1000
 * @param lossPerCup left in cup, stick, film and gloves, kg, at least 0
 * @returns kg of mixed resin
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: kept / (1 - s) + n loss.
 * Source: common practice, no source.
 *
 * @example
 * // The part keeps 139 g, the tape presses out 10 %, 3 cups lose 14 g each. How much to mix?
 * resinToMix({ kept: 0.139, squeezeOutShare: 0.1, cups: 3, lossPerCup: 0.014 })
 * // => 0.1964
 */
export function resinToMix(input: {
  kept: number;
  squeezeOutShare: number;
  cups: number;
  lossPerCup: number;
}): number {
  const cups = numberIn(input, 'cups', 'cups', { from: 1, to: MOST_CUPS });
  if (!Number.isInteger(cups)) throw new RangeError(`cups must be a whole number, got ${cups}`);
  return applied(input) + cups * notNegative(input, 'lossPerCup', 'kg');
}

/**
 * Fewest cups of one size that hold all that is to be mixed, none bigger than the largest cup allowed
 * or than can be worked in its usable life.
 *
 * @param kept in the part, kg, greater than 0
 * @param squeezeOutShare of what is applied that the tape presses out, at least 0, less than 1
 * @param lossPerCup kg, at least 0, less than a cup may hold
 * @param largestCup kg of mixed resin, greater than 0
 * @param workingRate mixed resin worked into cloth, kg/s, greater than 0; goes with usableLife
 * @param usableLife s, greater than 0; goes with workingRate
 * @returns `cups`, `each` in kg of mixed resin, `total` in kg
 * @throws RangeError naming the field; `lossPerCup` when a cup loses all it may hold;
 *   `largestCup` or `workingRate` when more than 1000 cups would be needed
 *
 * Formula: least n with kept/((1 - s) n) + loss <= min(largest cup, rate x life).
 * Source: common practice, no source.
 *
 * @example
 * // 139 g kept, 10 % pressed out, 14 g lost a cup, cups of 100 g at most. How many?
 * cupsFor({ kept: 0.139, squeezeOutShare: 0.1, lossPerCup: 0.014, largestCup: 0.1 })
 * // => { cups: 2, each: 0.09122, total: 0.1824 }
 */
export function cupsFor(input: {
  kept: number;
  squeezeOutShare: number;
  lossPerCup: number;
  largestCup: number;
  workingRate?: number | undefined;
  usableLife?: number | undefined;
}): { cups: number; each: number; total: number } {
  const toApply = applied(input);
  const { limit, field } = cupLimit(input);
  const loss = numberIn(input, 'lossPerCup', 'kg', { from: 0, below: limit });
  // A hair over a whole number is rounding, and must not cost the builder another cup.
  const cups = Math.max(1, Math.ceil((toApply / (limit - loss)) * (1 - 1e-9)));
  if (cups > MOST_CUPS) {
    throw new RangeError(`${field} must allow the job in ${MOST_CUPS} cups or fewer, got one for ${cups}`);
  }
  return { cups, each: Math.min(limit, toApply / cups + loss), total: toApply + cups * loss };
}

function applied(input: { kept: number; squeezeOutShare: number }): number {
  return positive(input, 'kept', 'kg') / (1 - numberIn(input, 'squeezeOutShare', '', { from: 0, below: 1 }));
}

function cupLimit(input: {
  largestCup: number;
  workingRate?: number | undefined;
  usableLife?: number | undefined;
}): { limit: number; field: 'largestCup' | 'workingRate' } {
  const largestCup = positive(input, 'largestCup', 'kg');
  if (input.workingRate === undefined && input.usableLife === undefined) {
    return { limit: largestCup, field: 'largestCup' };
  }
  const workable = positive(input, 'workingRate', 'kg/s') * positive(input, 'usableLife', 's');
  return workable < largestCup
    ? { limit: workable, field: 'workingRate' }
    : { limit: largestCup, field: 'largestCup' };
}
