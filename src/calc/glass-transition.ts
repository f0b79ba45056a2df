import { notNegative, numberIn, positive } from './check.ts';

/** How far above the hottest it has been a resin's glass transition is counted to end, K. */
const ABOVE_CURE = 15;

/** Glass transition of mixed resin before it cures, K: liquid bisphenol-A resin is near -20 C (from memory). */
const UNCURED = 253.15;

/**
 * Glass transition (Tg) that a resin reaches, however long it is held: it stops once that has risen so far
 * above the hottest it has been, and never passes the resin's own.
 *
 * @param hottest the hottest it has been, K, greater than 0
 * @param own the resin's own highest glass transition, K; without it the heat alone decides
 * @returns K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: min(own, hottest + 15).
 * Source: common practice, no source: it ends 5 to 25 K above the highest cure temperature.
 *
 * @example
 * // Cured at 66 C, a resin that reaches 90 C at best. Where does it soften?
 * glassTransitionReached({ hottest: 339.15, own: 363.15 })
 * // => 354.15
 */
export function glassTransitionReached(input: { hottest: number; own?: number | undefined }): number {
  const reached = positive(input, 'hottest', 'K') + ABOVE_CURE;
  return input.own === undefined ? reached : Math.min(positive(input, 'own', 'K'), reached);
}

/**
 * Heat that a wanted glass transition asks for: below it the resin stops short of what is wanted.
 *
 * @param wanted glass transition, K, more than 15
 * @param own the resin's own highest, K, more than 15; no heat brings it beyond that
 * @returns K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: min(wanted, own) - 15.
 * Source: common practice, no source.
 *
 * @example
 * // It should soften no sooner than at 60 C. How hot must it have been?
 * heatForTransition({ wanted: 333.15 })
 * // => 318.15
 */
export function heatForTransition(input: { wanted: number; own?: number | undefined }): number {
  const wanted = numberIn(input, 'wanted', 'K', { above: ABOVE_CURE });
  const own = input.own === undefined ? wanted : numberIn(input, 'own', 'K', { above: ABOVE_CURE });
  return Math.min(wanted, own) - ABOVE_CURE;
}

/**
 * Share of a cure that can be reached without more heat than it has had: 1 where that brings the wanted
 * glass transition, or all that the resin has.
 *
 * @param hottest the hottest it has been, K, at least 0
 * @param wanted glass transition, K, greater than 0
 * @param own the resin's own highest, K, greater than 0
 * @returns 0..1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (min(own, hottest + 15) - liquid)/(min(own, wanted) - liquid), liquid -20 C, kept in 0..1.
 * Source: common practice, no source. Straight from liquid to wanted is on the safe side: DiBenedetto's curve
 * (1987) lies below it, so that more is cured at the same glass transition.
 *
 * @example
 * // In a shop at 22 C, where 60 C is wanted. How far does it go?
 * shareReachable({ hottest: 295.15, wanted: 333.15 })
 * // => 0.7125
 */
export function shareReachable(input: { hottest: number; wanted: number; own?: number | undefined }): number {
  const wanted = positive(input, 'wanted', 'K');
  const own = input.own === undefined ? wanted : positive(input, 'own', 'K');
  const target = Math.min(wanted, own);
  const reached = Math.min(target, notNegative(input, 'hottest', 'K') + ABOVE_CURE);
  if (reached >= target) return 1;
  return reached <= UNCURED ? 0 : (reached - UNCURED) / (target - UNCURED);
}
