import { activationEnergy, middlePoint, type TimePoint } from './arrhenius.ts';
import { notNegative } from './check.ts';
import { type StretchWorth, stretchWorth } from './equivalent-time.ts';

/** What a data sheet says of cure times. */
export type CureSheet = {
  curePoints: readonly TimePoint[];
  activationEnergy?: number | undefined;
};

/** How heat is counted as cure time. K, s and J/mol. */
export type CureCounting = {
  /** So long at such a temperature is one. */
  temperature: number;
  time: number;
  /** Energy below that temperature, and above it. */
  below: number;
  above: number;
  /** Hotter than this counts as this. */
  ceiling: number;
  /** How far the worst cure point lies off the line, as a share of its time. */
  misfit: number;
};

// Epoxy with amine lies between: where nothing better is known, cold counts less and heat counts less.
const SAFE_BELOW = 65000;
const SAFE_ABOVE = 45000;

/** No sheet speaks for more heat than this above its hottest point, K (common practice, no source). */
const CREDIT = 15;

/**
 * How a resin's cure time is counted. With two cure points or more the energy is fitted to them; two
 * always fit, which proves nothing. With one point and no energy it is the safe side: 65 kJ/mol below
 * the point and 45 above, so that less is counted on either side than most epoxies do.
 *
 * @param curePoints from the data sheet, one or more: so many s at so many K, both greater than 0
 * @param activationEnergy J/mol, at least 0; known better than from the points
 * @returns K, s, J/mol; `misfit` 0 with one point or two
 * @throws RangeError naming the field; `curePoints` when they say that hotter takes longer
 *
 * Formula: ln t straight in 1/T; ceiling 15 K above the hottest point.
 * Source: ASTM C1074 for the fit. Sbirrazzuoli 2006 and Barral 1995 measured 44 to 60 kJ/mol on epoxy with
 * amine; 45 and 65 and the ceiling are common practice, no source.
 *
 * @example
 * // The sheet gives 4 hours at 65 C and nothing else. How is other heat counted?
 * cureCounting({ curePoints: [{ temperature: 338.15, time: 14400 }] })
 * // => { temperature: 338.15, time: 14400, below: 65000, above: 45000, ceiling: 353.15, misfit: 0 }
 */
export function cureCounting(input: CureSheet): CureCounting {
  const { temperature, time } = middlePoint(input.curePoints, 'curePoints');
  const [below, above] = energiesOf(input);
  const ceiling = input.curePoints.reduce((most, p) => Math.max(most, p.temperature), 0) + CREDIT;
  const counting = { temperature, time, below, above, ceiling, misfit: 0 };
  if (input.curePoints.length < 3) return counting;
  const count = shareCounter(counting);
  const off = input.curePoints.map((p) => Math.abs(count(p.time, p.temperature, p.temperature) - 1));
  return { ...counting, misfit: off.reduce((a, b) => Math.max(a, b), 0) };
}

function energiesOf({ curePoints, ...given }: CureSheet): [below: number, above: number] {
  if (given.activationEnergy !== undefined) {
    const energy = notNegative(given, 'activationEnergy', 'J/mol');
    return [energy, energy];
  }
  if (curePoints.length < 2) return [SAFE_BELOW, SAFE_ABOVE];
  const fitted = activationEnergy(curePoints);
  if (fitted >= 0) return [fitted, fitted];
  throw new RangeError('curePoints must take less time where they are hotter, got more');
}

/** Share used over a straight stretch that does not cross the counting's temperature, without the ceiling. */
export function shareCounter({
  temperature,
  time,
  below,
  above,
}: Omit<CureCounting, 'misfit'>): StretchWorth {
  const cooler = stretchWorth(temperature, below);
  const hotter = stretchWorth(temperature, above);
  return (lasts, from, to) => (from + to < 2 * temperature ? cooler : hotter)(lasts, from, to) / time;
}

/** Visits the parts of a straight stretch between the levels that it crosses. */
export function eachPart(
  lasts: number,
  from: number,
  to: number,
  levels: readonly number[],
  visit: (lasts: number, from: number, to: number) => void,
): void {
  const [low, high] = from < to ? [from, to] : [to, from];
  if (!levels.some((level) => level > low && level < high)) {
    visit(lasts, from, to);
    return;
  }
  const crossed = levels.filter((level) => level > low && level < high);
  crossed.sort((a, b) => (from < to ? a - b : b - a));
  let begin = from;
  for (const end of [...crossed, to]) {
    if (end !== begin) visit(lasts * ((end - begin) / (to - from)), begin, end);
    begin = end;
  }
}
