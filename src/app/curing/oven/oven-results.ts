import { peak, type Reading, rampRates, steepest, timeAbove } from '#calc';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Logged } from './merged.ts';
import { type Cure, cureOf, type Heat, heatOf, type Tube } from './oven-cure.ts';
import { heldIn, type Lag, lagOf, partByAir } from './oven-lag.ts';
import { type Hold, holdOf } from './oven-schedule.ts';
import { type Gap, gapsOf, type OvenSeries, ovenSeries, readRuns, type Series } from './oven-series.ts';
import { type OverLimit, overLimits } from './over-limits.ts';

/** A stretch without a reading for this many times the due interval is unread. */
const unreadAfter = 2;

export interface OvenResults {
  series: OvenSeries;
  hold: Hold;
  /** s at or above the foot of the band, by the coldest, without unread stretches */
  held: number;
  /** s above the head of the band, by the hottest */
  aboveHead: number;
  /** s; longer than this without a reading is unread */
  longest: number;
  unread: Gap[];
  /** What the coldest part was at: read, or reckoned from the air where its mandrel is known */
  part: Reading[];
  /** Where no part was read and the mandrel is known. */
  lag?: Lag;
  cure: Cure;
  heat?: Heat;
  /** Steepest rise of one sensor, K/s: between two readings, over five minutes where a logger read it */
  steepest: number;
  highestPart?: Reading;
  highestAir?: Reading;
  over: OverLimit[];
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function highestOf(series: readonly Series[]): Reading | undefined {
  const peaks = series.filter((s) => s.readings.length > 0).map(peak);
  return peaks.reduce<Reading | undefined>(
    (most, next) => (most && most.temperature >= next.temperature ? most : next),
    undefined,
  );
}

/** Between two readings of a logger a last figure that flickers would be the steepest, s */
const rampWindow = 300;

const steepestOf = ({ readings, byHand }: Series): number =>
  byHand ? rampRates({ readings, window: rampWindow }).up : steepest({ readings }).up;

/** What a load's coldest part was at, read or reckoned, without what nobody read. */
export function partRuns(
  state: OvenState,
  tubes: readonly Tube[],
  logged: readonly Logged[] = [],
): Reading[][] {
  const series = ovenSeries(state, logged);
  const { schedule } = state.header;
  const lag = series.by === 'air' ? lagOf(tubes, series.coldest, schedule.holdLow) : undefined;
  const part = lag ? partByAir(series.coldest, lag, schedule.start) : series.coldest;
  const end = series.coldest.at(-1)?.time ?? 0;
  return readRuns(part, gapsOf(series.judged, unreadAfter * schedule.readEvery, end));
}

/**
 * What the readings say, and nothing that depends on the time of day.
 *
 * @param logged what the files of loggers say beside the readings by hand
 */
export function ovenResults(
  state: OvenState,
  tubes: readonly Tube[],
  logged: readonly Logged[] = [],
): OvenResults {
  const { schedule, limits } = state.header;
  const series = ovenSeries(state, logged);
  const longest = unreadAfter * schedule.readEvery;
  const lastRead = series.coldest.at(-1)?.time ?? 0;
  const off = state.offAt === undefined ? lastRead : (state.offAt - series.from) / 1000;
  const unread = gapsOf(series.judged, longest, off);
  const runs = readRuns(series.coldest, unread);
  const lag = series.by === 'air' ? lagOf(tubes, series.coldest, schedule.holdLow) : undefined;
  const part = lag ? partByAir(series.coldest, lag, schedule.start) : series.coldest;
  const partRuns = lag ? readRuns(part, unread) : runs;
  const heat = heatOf(tubes, partRuns);
  const highestPart = highestOf(series.parts);
  const highestAir = highestOf(series.air);
  const { holdLow, holdHigh } = schedule;
  return {
    series,
    hold: holdOf(schedule),
    held: sum(runs.map((readings) => heldIn(readings, holdLow, lag))),
    aboveHead: holdHigh === undefined ? 0 : timeAbove({ readings: series.hottest, limit: holdHigh }),
    longest,
    unread,
    part,
    ...(lag && { lag }),
    cure: cureOf(tubes, partRuns),
    ...(heat && { heat }),
    steepest: series.judged.reduce((most, s) => Math.max(most, steepestOf(s)), 0),
    ...(highestPart && { highestPart }),
    ...(highestAir && { highestAir }),
    over: overLimits(limits, series, state.header.unevenness),
  };
}
