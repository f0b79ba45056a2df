import { cureTimeUsed, holdTime, peak, type Reading, rampRates, steepest, timeAbove } from '#calc';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { Logged } from './merged.ts';
import { type Hold, holdOf } from './oven-schedule.ts';
import { type Gap, gapsOf, type OvenSeries, ovenSeries, readRuns, type Series } from './oven-series.ts';
import { type OverLimit, overLimits } from './over-limits.ts';

/** Counted on where a data sheet gives one cure time only, J/mol (common practice, no source). */
export const assumedEnergy = 55_000;
/** A stretch without a reading for this many times the due interval is unread. */
const unreadAfter = 2;

export type Cure =
  /** `assumed`: the sheet gives one time only, so how heat speeds it up is taken to be usual. */
  | { known: true; share: number; resin: string; assumed: boolean }
  | { known: false; why: 'noCurePoints' | 'curePointsDisagree' | 'noTube' };

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
  cure: Cure;
  /** Steepest rise of one sensor, K/s: between two readings, over five minutes where a logger read it */
  steepest: number;
  highestPart?: Reading;
  highestAir?: Reading;
  over: OverLimit[];
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function cureOf(resins: readonly ResinSystem[], runs: readonly Reading[][]): Cure {
  let slowest: Cure = { known: false, why: 'noTube' };
  for (const { name, curePoints } of resins) {
    if (curePoints.length === 0) return { known: false, why: 'noCurePoints' };
    const assumed = curePoints.length === 1;
    const activationEnergy = assumed ? assumedEnergy : undefined;
    try {
      const share = sum(runs.map((readings) => cureTimeUsed({ readings, curePoints, activationEnergy })));
      if (!slowest.known || share < slowest.share) slowest = { known: true, share, resin: name, assumed };
    } catch (error) {
      // Times on a data sheet that no one energy fits: hotter that takes longer, or one temperature twice.
      if (error instanceof RangeError) return { known: false, why: 'curePointsDisagree' };
      throw error;
    }
  }
  return slowest;
}

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

/**
 * What the readings say, and nothing that depends on the time of day.
 *
 * @param logged what the files of loggers say beside the readings by hand
 */
export function ovenResults(
  state: OvenState,
  resins: readonly ResinSystem[],
  logged: readonly Logged[] = [],
): OvenResults {
  const { schedule, limits } = state.header;
  const series = ovenSeries(state, logged);
  const longest = unreadAfter * schedule.readEvery;
  const lastRead = series.coldest.at(-1)?.time ?? 0;
  const off = state.offAt === undefined ? lastRead : (state.offAt - series.from) / 1000;
  const unread = gapsOf(series.judged, longest, off);
  const runs = readRuns(series.coldest, unread);
  const highestPart = highestOf(series.parts);
  const highestAir = highestOf(series.air);
  const { holdLow, holdHigh } = schedule;
  return {
    series,
    hold: holdOf(schedule),
    held: sum(runs.map((readings) => holdTime({ readings, low: holdLow }))),
    aboveHead: holdHigh === undefined ? 0 : timeAbove({ readings: series.hottest, limit: holdHigh }),
    longest,
    unread,
    cure: cureOf(resins, runs),
    steepest: series.judged.reduce((most, s) => Math.max(most, steepestOf(s)), 0),
    ...(highestPart && { highestPart }),
    ...(highestAir && { highestAir }),
    over: overLimits(limits, series, state.header.unevenness),
  };
}
