import { finite, notNegative, positive } from './check.ts';
import { type CureSheet, cureCounting, eachPart, shareCounter } from './cure-counting.ts';
import { heatForTransition, shareReachable } from './glass-transition.ts';
import { eachStretch, type Reading } from './readings.ts';

/** How far a cure has come. */
export type CureProgress = {
  /** Of the data sheet's cure time, at least 0 */
  share: number;
  /** The hottest it has been, K; 0 before anything was read */
  hottest: number;
};

export type CureHistory = CureSheet & {
  readings: readonly Reading[];
  /** Glass transition wanted, K; without it nothing stalls */
  wanted?: number | undefined;
  /** The resin's own highest glass transition, K */
  own?: number | undefined;
  /** Where it stood before the first reading. */
  before?: CureProgress | undefined;
};

/**
 * Share of the data sheet's cure time used, counted with care: nothing for heat more than 15 K beyond the
 * sheet, the safe side where the sheet gives one time only, and no further than the hottest it has been
 * can bring it. A cold resin stalls there, however long it waits, and goes on when it is warmed.
 *
 * @param readings in order of time, s and K
 * @param curePoints from the data sheet, one or more, s and K
 * @param activationEnergy J/mol, at least 0, where it is known
 * @param wanted glass transition, K, more than 15; without it nothing stalls
 * @param own the resin's own highest glass transition, K, more than 15
 * @param before `share` at least 0 and `hottest` K, at least 0: an earlier cure of the same resin
 * @returns `share`, at least 0, and `hottest`, K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: integral of dt / t(T), at every moment at most `shareReachable` while that is below 1.
 * Source: ASTM C1074 for the integral; the glass-transition rule is common practice, no source.
 *
 * @example
 * // Two weeks at 22 C, where the sheet asks for 2 days at 25 and the tube should soften no sooner than at 60 C?
 * cureProgress({
 *   readings: [{ time: 0, temperature: 295.15 }, { time: 1209600, temperature: 295.15 }],
 *   curePoints: [{ temperature: 298.15, time: 172800 }, { temperature: 339.15, time: 10800 }],
 *   wanted: 333.15,
 * })
 * // => { share: 0.7125, hottest: 295.15 }
 */
export function cureProgress(input: CureHistory): CureProgress {
  const walk = walkFrom(input, input.before);
  const [first] = input.readings ?? [];
  eachStretch(input, walk.along);
  const { share, hottest } = walk.at();
  const highest = input.readings.length === 1 && first ? Math.max(hottest, first.temperature) : hottest;
  return { share: finite(share, 'curePoints'), hottest: highest };
}

/**
 * When the cure time will be used up, if what is to come goes as it should.
 *
 * @param readings what is to come, in order of time, s and K; the rest as for `cureProgress`
 * @returns s, on the clock of the readings; undefined when they end before it is used up
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: the time at which `cureProgress` comes to 1, by halving.
 * Source: as for `cureProgress`.
 *
 * @example
 * // Half used up, and 66 C from now on, of which the sheet asks 3 hours. When is it done?
 * cureFinish({
 *   readings: [{ time: 0, temperature: 339.15 }, { time: 86400, temperature: 339.15 }],
 *   curePoints: [{ temperature: 298.15, time: 172800 }, { temperature: 339.15, time: 10800 }],
 *   before: { share: 0.5, hottest: 339.15 },
 * })
 * // => 5400
 */
export function cureFinish(input: CureHistory): number | undefined {
  const walk = walkFrom(input, input.before);
  let time = input.readings?.[0]?.time ?? 0;
  let done: number | undefined = walk.at().share >= 1 && input.readings?.length > 0 ? time : undefined;
  eachStretch(input, (lasts, from, to) => {
    if (done !== undefined) return;
    const before = walk.at();
    walk.along(lasts, from, to);
    if (walk.at().share >= 1) done = time + lasts * crossing(input, before, lasts, from, to);
    time += lasts;
  });
  return done === undefined ? undefined : finite(done, 'readings');
}

interface Walk {
  at: () => CureProgress;
  along: (lasts: number, from: number, to: number) => void;
}

/** Counts stretch by stretch from where it stood. */
function walkFrom({ wanted, own, ...sheet }: CureHistory, before: CureProgress | undefined): Walk {
  const counting = cureCounting(sheet);
  const top = counting.ceiling;
  if (own !== undefined) positive({ own }, 'own', 'K');
  // Hotter than this nothing stalls.
  const enough = wanted === undefined ? 0 : heatForTransition({ wanted, own });
  const count = shareCounter(counting);
  let share = before === undefined ? 0 : notNegative(before, 'share', '');
  let hottest = before === undefined ? 0 : notNegative(before, 'hottest', 'K');
  const levels = [counting.temperature, top, hottest, enough];
  const part = (lasts: number, begin: number, end: number): void => {
    const more = share + count(lasts, Math.min(begin, top), Math.min(end, top));
    // What it is warm enough for only at the end of this part, it was not warm enough for within it.
    const isFree = begin >= enough || hottest >= enough;
    if (begin > hottest) hottest = begin;
    if (end > hottest) hottest = end;
    const most = wanted === undefined || isFree ? more : shareReachable({ hottest, wanted, own });
    share = Math.max(share, Math.min(more, most));
  };
  return {
    at: () => ({ share, hottest }),
    along: (lasts, from, to) => {
      // What can be reached grows along a stretch only while it is hotter than ever: cut there, its ends decide.
      levels[2] = hottest;
      eachPart(lasts, from, to, levels, part);
    },
  };
}

/** The part of a stretch after which it is used up. */
function crossing(input: CureHistory, before: CureProgress, lasts: number, from: number, to: number): number {
  let [low, high] = [0, 1];
  for (let k = 0; k < 50; k += 1) {
    const half = (low + high) / 2;
    const walk = walkFrom(input, before);
    walk.along(lasts * half, from, from + half * (to - from));
    if (walk.at().share >= 1) high = half;
    else low = half;
  }
  return high;
}
