import type { TimePoint } from './arrhenius.ts';
import { finite } from './check.ts';
import { cureCounting, eachPart, shareCounter } from './cure-counting.ts';
import { eachStretch, type Reading } from './readings.ts';

/**
 * Share of the data sheet's cure time that a history has used: 1 is a full cure by the sheet. It counts
 * time by its temperature and nothing else. It is not a degree of cure: cure times on a sheet are not
 * equal conversions, and an off-ratio cup never cures. `cureProgress` counts with more care.
 *
 * @param readings in order of time, `time` s and `temperature` K; none or one gives 0
 * @param curePoints from the data sheet, one or more: so many s at so many K, both greater than 0
 * @param activationEnergy J/mol, at least 0; without it two cure points at different temperatures give
 *   it, and one is counted on the safe side, as `cureCounting` says
 * @returns share, at least 0; more than 1 when cured longer
 * @throws RangeError naming the field; `curePoints` when they say that hotter takes longer
 *
 * Formula: integral of dt / t(T), ln t straight in 1/T through the cure points.
 * Source: ASTM C1074, maturity by equivalent age.
 *
 * @example
 * // The sheet asks for 7 days at 25 C or 4 hours at 65 C. It had 2 hours at 65 C: what share?
 * cureTimeUsed({
 *   readings: [{ time: 0, temperature: 338.15 }, { time: 7200, temperature: 338.15 }],
 *   curePoints: [{ temperature: 298.15, time: 604800 }, { temperature: 338.15, time: 14400 }],
 * })
 * // => 0.5
 */
export function cureTimeUsed(input: {
  readings: readonly Reading[];
  curePoints: readonly TimePoint[];
  activationEnergy?: number | undefined;
}): number {
  const counting = cureCounting(input);
  const count = shareCounter(counting);
  const levels = [counting.temperature];
  let used = 0;
  const add = (lasts: number, from: number, to: number): void => {
    used += count(lasts, from, to);
  };
  eachStretch(input, (lasts, from, to) => eachPart(lasts, from, to, levels, add));
  return finite(used, 'curePoints');
}
