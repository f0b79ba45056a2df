import { notNegative, numberIn, positive } from './check.ts';

/**
 * Share of a cup's usable life that is gone: in the cup at full pace, then on the film more slowly.
 *
 * @param inCup from first contact of resin and hardener to the cup being emptied, s, at least 0
 * @param onFilm since then, s, at least 0
 * @param usableLife in the cup, s, greater than 0
 * @param filmFactor how much longer it lasts in a thin film, at least 1
 * @returns share, 1 when used up, more when past it
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: in cup / L + on film / (k L).
 * Source: common practice, no source: a film lasts at least twice as long as a cup.
 *
 * @example
 * // 6 min in the cup, 20 min on the film, 30 min of usable life, twice that on film. How much is gone?
 * potLifeUsed({ inCup: 360, onFilm: 1200, usableLife: 1800, filmFactor: 2 })
 * // => 0.5333
 */
export function potLifeUsed(input: {
  inCup: number;
  onFilm: number;
  usableLife: number;
  filmFactor: number;
}): number {
  const life = positive(input, 'usableLife', 's');
  const onFilm = notNegative(input, 'onFilm', 's') / (factor(input) * life);
  return notNegative(input, 'inCup', 's') / life + onFilm;
}

/**
 * When the film is used up, counted from first contact. Emptying the cup sooner puts it off; a cup
 * kept to the end of its life is used up then and there.
 *
 * @param inCup from first contact to the cup being emptied, s, at least 0
 * @param usableLife in the cup, s, greater than 0
 * @param filmFactor how much longer it lasts in a thin film, at least 1
 * @returns s after first contact, from usableLife to filmFactor times that
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: in cup + (1 - in cup / L) k L; L when in cup is L or more.
 * Source: common practice, no source.
 *
 * @example
 * // Emptied after 6 min of a usable life of 30 min, twice that on film. When must tape be on?
 * filmDeadline({ inCup: 360, usableLife: 1800, filmFactor: 2 })
 * // => 3240
 */
export function filmDeadline(input: { inCup: number; usableLife: number; filmFactor: number }): number {
  const life = positive(input, 'usableLife', 's');
  const inCup = Math.min(notNegative(input, 'inCup', 's'), life);
  return inCup + (life - inCup) * factor(input);
}

function factor(input: { filmFactor: number }): number {
  return numberIn(input, 'filmFactor', '', { from: 1 });
}
