import type { Logged } from '#app/curing/oven/merged.ts';
import type { Tube } from '#app/curing/oven/oven-cure.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import type { OvenSeries, Series } from '#app/curing/oven/oven-series.ts';
import { thinned } from '#app/curing/oven/thinned.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { derive } from './derive.ts';
import { openKnown } from './open-file.ts';
import type { LoggedFile, LoggedResults } from './protocol.ts';
import { readColumns } from './read-columns.ts';

/** px columns of the picture of a series on a page, each with up to four readings */
const widest = 250;

/** All readings of a file as its entry says they are to be read. */
export function loggedOf({ bytes, entry }: LoggedFile): Logged[] {
  const { dialect, columns, clockZone: zone, startsAt = 0, shift = 0, repairs } = entry;
  const table = openKnown(new Uint8Array(bytes), dialect);
  return derive(readColumns(table, dialect, columns, { zone, startsAt, shift }), repairs);
}

/** What decides the readings of a file; the same key gives the same readings. */
export const loggedKey = ({
  hash,
  dialect,
  columns,
  clockZone,
  startsAt,
  shift,
  repairs,
}: EntryOf<'loggerFile'>) => JSON.stringify([hash, dialect, columns, clockZone, startsAt, shift, repairs]);

/** A page draws no more than this, and passing it on costs less than a frame. */
function pictured(series: OvenSeries): OvenSeries {
  const one = (s: Series): Series => ({ ...s, readings: [...thinned(s.readings, widest)] });
  const parts = series.parts.map(one);
  const air = series.air.map(one);
  const elements = series.elements.map(one);
  const ids = new Set(series.judged.map((s) => s.channel.id));
  return {
    ...series,
    parts,
    air,
    elements,
    judged: [...parts, ...air].filter((s) => ids.has(s.channel.id)),
    coldest: [...thinned(series.coldest, widest)],
    hottest: [...thinned(series.hottest, widest)],
  };
}

/** Results over every reading; their series come thinned, each with its peaks. */
export function loggedResults(
  state: OvenState,
  tubes: readonly Tube[],
  logged: readonly Logged[],
): LoggedResults {
  const results = ovenResults(state, tubes, logged);
  const { series } = results;
  const traces = [...series.air, ...series.parts, ...series.elements].map(
    ({ channel, readings }): Logged => ({
      channel: channel.id,
      at: Float64Array.from(readings, (r) => series.from + r.time * 1000),
      temperature: Float64Array.from(readings, (r) => r.temperature),
    }),
  );
  return {
    results: { ...results, part: [...thinned(results.part, widest)], series: pictured(series) },
    traces,
  };
}
