import { finite, notNegative, positive } from './check.ts';
import {
  type CureCounting,
  type CureSheet,
  cureCounting,
  eachPart,
  shareOfStretch,
} from './cure-counting.ts';
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
  const curing = curingOf(input);
  const [first] = input.readings ?? [];
  let at = startOf(input.before);
  eachStretch(input, (lasts, from, to) => {
    at = after(curing, at, lasts, from, to);
  });
  if (input.readings.length === 1 && first) at = { ...at, hottest: Math.max(at.hottest, first.temperature) };
  return { share: finite(at.share, 'curePoints'), hottest: at.hottest };
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
  const curing = curingOf(input);
  let at = startOf(input.before);
  let time = input.readings?.[0]?.time ?? 0;
  let done: number | undefined = at.share >= 1 && input.readings?.length > 0 ? time : undefined;
  eachStretch(input, (lasts, from, to) => {
    if (done !== undefined) return;
    const next = after(curing, at, lasts, from, to);
    if (next.share >= 1) done = time + lasts * crossing(curing, at, lasts, from, to);
    at = next;
    time += lasts;
  });
  return done === undefined ? undefined : finite(done, 'readings');
}

interface Curing {
  counting: CureCounting;
  wanted: number | undefined;
  own: number | undefined;
  /** Hotter than this nothing stalls, K */
  enough: number;
}

function curingOf({ wanted, own, ...sheet }: CureHistory): Curing {
  const counting = cureCounting(sheet);
  if (own !== undefined) positive({ own }, 'own', 'K');
  return { counting, wanted, own, enough: wanted === undefined ? 0 : heatForTransition({ wanted, own }) };
}

function startOf(before: CureProgress | undefined): CureProgress {
  if (before === undefined) return { share: 0, hottest: 0 };
  return { share: notNegative(before, 'share', ''), hottest: notNegative(before, 'hottest', 'K') };
}

/** Where it stands after a straight stretch. */
function after(curing: Curing, at: CureProgress, lasts: number, from: number, to: number): CureProgress {
  const { counting, wanted, own, enough } = curing;
  let { share, hottest } = at;
  // What can be reached grows along the stretch only while it is hotter than ever: cut there, its ends decide.
  eachPart(lasts, from, to, [counting.temperature, counting.ceiling, hottest, enough], (part, begin, end) => {
    const top = counting.ceiling;
    const more = share + shareOfStretch(counting, part, Math.min(begin, top), Math.min(end, top));
    // What it is warm enough for only at the end of this part, it was not warm enough for within it.
    const isFree = Math.max(hottest, begin) >= enough;
    hottest = Math.max(hottest, begin, end);
    const most = wanted === undefined || isFree ? more : shareReachable({ hottest, wanted, own });
    share = Math.max(share, Math.min(more, most));
  });
  return { share, hottest };
}

/** The part of a stretch after which it is used up. */
function crossing(curing: Curing, at: CureProgress, lasts: number, from: number, to: number): number {
  let [low, high] = [0, 1];
  for (let k = 0; k < 50; k += 1) {
    const half = (low + high) / 2;
    const { share } = after(curing, at, lasts * half, from, from + half * (to - from));
    if (share >= 1) high = half;
    else low = half;
  }
  return high;
}
