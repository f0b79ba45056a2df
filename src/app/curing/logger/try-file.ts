import { thinned } from '#app/curing/oven/thinned.ts';
import { derive } from './derive.ts';
import { repairsOf } from './fault.ts';
import { usualStep } from './fault-clock.ts';
import { faultsOf, isRepaired } from './faults.ts';
import type { Table } from './layout.ts';
import type { Trial, Tried, TriedSeries } from './protocol.ts';
import { readColumns } from './read-columns.ts';

/** px columns of the small picture, each with up to four readings */
const pictured = 160;

/** What a file gives with this dialect and these choices, for the builder to look over. */
export function tryFile(table: Table, { dialect, columns, clocked, span, choices }: Trial): Tried {
  const raw = readColumns(table, dialect, columns, clocked);
  const faults = faultsOf(raw, span, clocked.zone, choices);
  const repairs = repairsOf(faults.filter((f) => isRepaired(f, choices)));
  const derived = derive(raw, repairs);
  const series = derived.map(({ column, channel, at, temperature }): TriedSeries => {
    const readings = Array.from(at, (ms, i) => ({
      time: (ms - span.lit) / 1000,
      temperature: temperature[i] ?? Number.NaN,
    }));
    const highest = temperature.reduce((a, b) => Math.max(a, b), 0);
    return {
      column,
      channel,
      readings: at.length,
      ...(highest > 0 && { highest }),
      picture: [...thinned(readings, pictured)],
    };
  });
  const taken = derived.filter((d) => d.at.length > 0);
  const from = taken.reduce((least, d) => Math.min(least, d.at[0] ?? least), Number.POSITIVE_INFINITY);
  const until = taken.reduce((most, d) => Math.max(most, d.at.at(-1) ?? most), Number.NEGATIVE_INFINITY);
  const first = raw.at.find((ms) => !Number.isNaN(ms));
  return {
    faults,
    repairs,
    series,
    ...(first !== undefined && { first }),
    ...(taken.length > 0 && { from, until }),
    step: usualStep(raw.at) / 1000,
    rows: raw.at.length,
  };
}
