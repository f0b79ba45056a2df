import type { OvenState } from '#shared/record/oven-state.ts';
import type { ChartContent, ChartLine } from './chart-draw.ts';
import type { Logged } from './merged.ts';
import type { OvenResults } from './oven-results.ts';
import { corners } from './oven-schedule.ts';
import type { OvenSeries, Series } from './oven-series.ts';
import type { Window } from './window.ts';

/** By hand there may be half an hour between readings; a logger that is silent that long is a gap. */
const longestByLogger = 10 * 60_000;

const allSeries = ({ air, parts, elements }: OvenSeries): Series[] => [...air, ...parts, ...elements];

function traceOf({ channel, readings }: Series, from: number): Logged {
  return {
    channel: channel.id,
    at: Float64Array.from(readings, (r) => from + r.time * 1000),
    temperature: Float64Array.from(readings, (r) => r.temperature),
  };
}

/** Every series that was read, with all its readings where a logger's file was read for it. */
export function chartContent(
  state: OvenState,
  results: OvenResults,
  traces: readonly Logged[] = [],
): ChartContent {
  const { series, longest } = results;
  const lines = allSeries(series)
    .filter((s) => s.readings.length > 0)
    .map((s, style): ChartLine => {
      const trace = traces.find((t) => t.channel === s.channel.id) ?? traceOf(s, series.from);
      return { name: s.channel.name, sees: s.channel.sees, style, trace };
    });
  const isLogged = allSeries(series).some((s) => s.byHand);
  return {
    lines,
    schedule: corners(state.header.schedule),
    byHand: allSeries(series)
      .flatMap((s) => s.byHand ?? [])
      .sort((a, b) => a.time - b.time),
    limits: state.header.limits,
    lit: series.from,
    zone: state.header.zone,
    longest: isLogged ? Math.max(longestByLogger, 0) : longest * 1000,
  };
}

/** From the first reading or the lighting to the last, or to where the schedule ends. */
export function wholeOf({ lines, schedule, lit }: ChartContent): Window {
  const begins = lines.reduce((least, l) => Math.min(least, l.trace.at[0] ?? least), lit);
  const scheduled = lit + (schedule.at(-1)?.time ?? 0) * 1000;
  const ends = lines.reduce((most, l) => Math.max(most, l.trace.at.at(-1) ?? most), scheduled);
  return { from: begins, to: Math.max(ends, begins + 60_000) };
}
