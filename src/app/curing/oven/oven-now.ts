import type { OvenState } from '#shared/record/oven-state.ts';
import { lagLeft } from './oven-lag.ts';
import type { OvenResults } from './oven-results.ts';
import { coolsTo, warmsAt } from './oven-schedule.ts';
import { litOf } from './oven-series.ts';
import { nextReadingDue } from './reading-due.ts';

export type Phase = 'warming' | 'holding' | 'held' | 'cooling' | 'off' | 'out';

/** An oven load at a time of day. */
export interface OvenNow {
  phase: Phase;
  /** What it is warming to, holding at or cooling to, K */
  at: number;
  /** Lit and not off. */
  burning: boolean;
  /** s of the hold, with the time since the last reading while that is fresh */
  held: number;
  holdLeft: number;
  /** When the oven may go off, or went off, ms */
  offAt: number;
  /** When the next reading is due, ms; only while it burns */
  dueAt?: number;
  /** The hottest is over the head of the band as last read, K */
  tooHot?: number;
  /** Since when nobody read it, ms; only when that is too long */
  unreadSince?: number;
}

/** Below this a thermometer's last figure decides, K and s */
const hair = 1e-6;

function phaseOf(state: OvenState, results: OvenResults, holdLeft: number, last: number | undefined): Phase {
  const { schedule } = state.header;
  if (state.outAt !== undefined) return 'out';
  if (state.offAt !== undefined) {
    const to = coolsTo(schedule);
    return to !== undefined && last !== undefined && last > to + hair ? 'cooling' : 'off';
  }
  if (last === undefined) return results.hold.begins > 0 ? 'warming' : 'holding';
  const inBand = last >= schedule.holdLow - hair;
  if (inBand) return holdLeft > hair ? 'holding' : 'held';
  return holdLeft > hair ? 'warming' : 'cooling';
}

/** s from now until the hold is done, if it goes on as it should; negative when it was done before. */
function toGo({ header }: OvenState, holdLeft: number, last: number): number {
  const rate = warmsAt(header.schedule);
  if (rate === undefined || last >= header.schedule.holdLow - hair) return holdLeft;
  return (header.schedule.holdLow - last) / rate + holdLeft;
}

export function ovenNow(state: OvenState, results: OvenResults, now: number): OvenNow {
  const { series, hold, longest } = results;
  const { schedule } = state.header;
  const burning = state.litAt !== undefined && state.offAt === undefined && state.outAt === undefined;
  const newest = series.coldest.at(-1);
  const until = Math.min(now, state.offAt ?? now);
  const since = (until - series.from) / 1000 - (newest?.time ?? 0);
  const inBand = newest !== undefined && newest.temperature >= schedule.holdLow - hair;
  // A sensor that nobody reads any more holds the count back, or the others would speak for it.
  const silent = results.unread.some((gap) => gap.to >= (newest?.time ?? 0));
  const fresh = inBand && !silent && since > 0 && since <= longest;
  const wait = lagLeft(results.lag, (until - series.from) / 1000);
  // What passed since the last reading counts only from where the part had followed the air.
  const counted = results.lag
    ? Math.min(since, (until - series.from) / 1000 - (results.lag.countsFrom ?? Number.POSITIVE_INFINITY))
    : since;
  const held = results.held + (fresh ? Math.max(0, counted) : 0);
  const holdLeft = Math.max(0, hold.lasts - held);
  const phase = phaseOf(state, results, holdLeft, newest?.temperature);
  const hottest = series.hottest.at(-1)?.temperature;
  const { holdHigh } = schedule;
  const tooHot = burning && hottest !== undefined && holdHigh !== undefined && hottest > holdHigh + hair;
  const bySchedule = Math.max(series.from + hold.ends * 1000, now + (wait + holdLeft) * 1000);
  const byReadings = newest && now + (wait + toGo(state, hold.lasts - held, newest.temperature)) * 1000;
  const tooLong = burning && since > longest;
  return {
    phase,
    at: phase === 'cooling' || phase === 'off' ? (coolsTo(schedule) ?? schedule.start) : hold.temperature,
    burning,
    held,
    holdLeft,
    offAt: state.offAt ?? byReadings ?? bySchedule,
    ...(burning && { dueAt: nextReadingDue(state, litOf(state), phase === 'warming') }),
    ...(tooHot && { tooHot: hottest }),
    ...(tooLong && { unreadSince: series.from + (newest?.time ?? 0) * 1000 }),
  };
}
