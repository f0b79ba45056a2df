import { gelledAt } from '#app/curing/oven/oven-acts.ts';
import { litOf, type OvenSeries } from '#app/curing/oven/oven-series.ts';
import type { Reading } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState } from '#shared/record/oven-state.ts';

/** A reading this far from gel still says what the part was at, s */
const nearGel = 1800;
/** A shop where nobody wrote it down (common practice, no source), K */
const usualShop = 296.15;

/** An oven load, and what was read in it by hand and by loggers. */
export interface OvenLog {
  load: OvenState;
  series: OvenSeries;
}

/** Where the wall took its size on the mandrel. */
export type SetAt =
  /** Gel was seen, and the part was read around then. */
  | { by: 'gel'; temperature: number; at: number; sees: 'part' | 'air' }
  /** The first hold of the schedule. */
  | { by: 'schedule'; temperature: number }
  /** No oven: the shop it stood in. */
  | { by: 'shop'; temperature: number };

/** The readings of this tube's own sensor, else of the coldest part, else of the air. */
function ownReadings(
  series: OvenSeries,
  build: string,
): { readings: readonly Reading[]; sees: 'part' | 'air' } {
  const own = series.parts.find((s) => s.channel.build === build && s.readings.length > 0);
  return { readings: own?.readings ?? series.coldest, sees: own ? 'part' : series.by };
}

/** Straight between the readings on either side; the nearest where there is only one side. */
function readAt(readings: readonly Reading[], time: number): number | undefined {
  const before = readings.filter((r) => r.time <= time).at(-1);
  const after = readings.find((r) => r.time >= time);
  if (before && after) {
    const long = after.time - before.time;
    const share = long > 0 ? (time - before.time) / long : 0;
    return before.temperature + share * (after.temperature - before.temperature);
  }
  const near = before ?? after;
  return near && Math.abs(near.time - time) <= nearGel ? near.temperature : undefined;
}

/** The first temperature that a schedule holds: there most resins gel. */
function firstHold({ start, stages }: CureSchedule): number {
  let temperature = start;
  for (const stage of stages) {
    if (stage.kind === 'hold') return temperature;
    temperature = stage.to;
  }
  return temperature;
}

/** By the oven load in which the wall next to the mandrel set: the first that the build joined. */
export function setAt(build: BuildState, log: OvenLog | undefined): SetAt {
  const { header } = build;
  const gel = gelledAt(build, header.startedAt);
  if (gel !== undefined && log) {
    const { series } = log;
    const { readings, sees } = ownReadings(series, header.id);
    const temperature = readAt(readings, (gel - series.from) / 1000);
    if (temperature !== undefined) return { by: 'gel', temperature, at: gel, sees };
  }
  const inShop = gel !== undefined && log !== undefined && gel < litOf(log.load);
  const schedule = log?.load.header.schedule ?? header.schedule;
  if (schedule && !inShop) return { by: 'schedule', temperature: firstHold(schedule) };
  const read = build.surroundings?.entry;
  return { by: 'shop', temperature: read?.mandrel ?? read?.air ?? usualShop };
}

export interface ReadLast {
  temperature: number;
  /** ms */
  at: number;
  sees: 'part' | 'air';
}

/** What the tube was last read at in its oven. */
export function lastRead(build: BuildState, log: OvenLog | undefined): ReadLast | undefined {
  if (!log) return undefined;
  const { series } = log;
  const { readings, sees } = ownReadings(series, build.header.id);
  const last = readings.at(-1);
  return last && { temperature: last.temperature, at: series.from + last.time * 1000, sees };
}
