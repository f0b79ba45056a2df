import { cureFinish, cureProgress, type Reading } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type Asked, heatNeeded, reachableAt, type TubeCure } from './oven-cure.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { corners, hottestOf, scheduledAt, warmsAt } from './oven-schedule.ts';

/** When the cure time is used up, if it goes on like this. Times in ms. */
export interface Finish {
  /** What the part is at, K */
  temperature: number;
  /** At the present temperature; undefined where that takes more than a year, or stalls */
  atThis?: number;
  /** The present temperature is too little heat, however long it lasts */
  tooCool: boolean;
  /** On what is left of the schedule, while the oven burns */
  onSchedule?: { at?: number; share: number };
  stall?: Stall;
}

/** No further without more heat. */
export interface Stall {
  /** The share it stops at */
  share: number;
  isNow: boolean;
  /** The hottest it has been, or will be by the schedule, K */
  hottest: number;
  /** What it needs, and the glass transition that asks for it, K */
  needs: number;
  wanted: number;
  /** More is wanted than the resin has: it is its own best that asks. */
  isOwn: boolean;
}

/** Nobody waits longer, s */
const longest = 365 * 86_400;
/** Rounding must not hide that it stands still. */
const hair = 1e-6;

/** Where on its schedule a load is: by its hold once it is in the band, by its temperature before. */
function placeOn({ header }: OvenState, { held, hold }: OvenResults, last: Reading): number {
  const { schedule } = header;
  if (last.temperature >= schedule.holdLow) return hold.begins + Math.min(held, hold.lasts);
  const passed = Math.max(0, last.time);
  if (scheduledAt(schedule, passed) <= last.temperature) return passed;
  const all = corners(schedule);
  for (let k = all.length - 1; k > 0; k -= 1) {
    const [from, to] = [all[k - 1], all[k]];
    if (!from || !to || from.time > passed) continue;
    if (from.temperature <= last.temperature && to.temperature > from.temperature) {
      const part = (last.temperature - from.temperature) / (to.temperature - from.temperature);
      return Math.min(passed, from.time + part * (to.time - from.time));
    }
  }
  return 0;
}

/** What is still to come by the schedule, from the last reading on. */
export function toCome(schedule: CureSchedule, place: number, last: Reading): Reading[] {
  const asked = scheduledAt(schedule, place);
  const rate = warmsAt(schedule);
  const warms = asked > last.temperature && rate !== undefined ? (asked - last.temperature) / rate : 0;
  const rest = corners(schedule).filter((c) => c.time > place);
  return [
    { time: 0, temperature: last.temperature },
    { time: warms, temperature: asked },
    ...rest.map((c) => ({ time: warms + c.time - place, temperature: c.temperature })),
  ];
}

/** s until the last tube is done; undefined where one never is */
function lastDone(all: readonly TubeCure[], readings: readonly Reading[]): number | undefined {
  const each = all.map(({ asked, progress }) => cureFinish({ readings, ...asked, before: progress }));
  const known = each.filter((t) => t !== undefined);
  return known.length === each.length ? Math.max(...known) : undefined;
}

function stallOf(asked: Asked, share: number, past: number, ahead: number): Stall | undefined {
  const needs = heatNeeded(asked);
  if (needs === undefined || asked.wanted === undefined) return undefined;
  const stalls = (hottest: number, isNow: boolean): Stall | undefined => {
    const most = reachableAt(hottest, asked);
    if (most >= 1 || (isNow && share < most * (1 - hair))) return undefined;
    const wanted = Math.min(asked.wanted ?? 0, asked.own ?? Number.POSITIVE_INFINITY);
    const isOwn = asked.own !== undefined && asked.own < (asked.wanted ?? 0);
    return { share: Math.max(share, most), isNow, hottest, needs, wanted, isOwn };
  };
  return stalls(past, true) ?? stalls(Math.max(past, ahead), false);
}

export function finishOf(
  state: OvenState,
  results: OvenResults,
  at: OvenNow,
  now: number,
): Finish | undefined {
  const { cure, series, part, longest: unread } = results;
  const last = part.at(-1);
  if (!cure.known || !last || cure.share >= 1 || at.phase === 'out') return undefined;
  const read = series.from + last.time * 1000;
  // What nobody read for too long does not count, so that it goes on from now only.
  const base = now - read <= unread * 1000 ? read : now;
  const held = [0, longest].map((time) => ({ time, temperature: last.temperature }));
  const atThis = lastDone(cure.all, held);
  const { schedule } = state.header;
  const rest = at.burning ? toCome(schedule, placeOn(state, results, last), last) : [];
  const onSchedule = rest.length > 0 ? lastDone(cure.all, rest) : undefined;
  const share = Math.min(
    ...cure.all.map(
      ({ asked, progress }) => cureProgress({ readings: rest, ...asked, before: progress }).share,
    ),
  );
  const { asked, progress } = cure.slowest;
  const ahead = at.burning ? Math.max(last.temperature, hottestOf(schedule)) : last.temperature;
  const stall = stallOf(asked, cure.share, progress.hottest, ahead);
  return {
    temperature: last.temperature,
    tooCool: cure.all.some((one) => {
      const hottest = Math.max(one.progress.hottest, last.temperature);
      return reachableAt(hottest, one.asked) < 1;
    }),
    ...(atThis !== undefined && { atThis: base + atThis * 1000 }),
    ...(at.burning && {
      onSchedule: { share, ...(onSchedule !== undefined && { at: base + onSchedule * 1000 }) },
    }),
    ...(stall && { stall }),
  };
}
