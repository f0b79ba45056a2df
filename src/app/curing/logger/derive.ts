import type { LoggerRepairs } from '#shared/record/logger-file.ts';
import type { RawFile } from './read-columns.ts';

/** What a file gives for one channel. */
export interface Derived {
  column: number;
  channel: string;
  /** ms, each later than the one before */
  at: Float64Array;
  /** K */
  temperature: Float64Array;
}

/** Times with what was put right; NaN for rows that are left out. */
export function repairedTimes(at: Float64Array, repairs: LoggerRepairs): Float64Array {
  const times = Float64Array.from(at);
  let next = 0;
  let shift = 0;
  for (let i = 0; i < times.length; i++) {
    for (let s = repairs.shifts[next]; s && s.row <= i; s = repairs.shifts[next]) {
      shift += s.by * 1000;
      next += 1;
    }
    times[i] = (times[i] ?? Number.NaN) + shift;
  }
  for (const { first, last, column } of repairs.cuts)
    if (column === undefined) times.fill(Number.NaN, first, last + 1);
  if (repairs.repeats === 'spread') spreadRepeats(times);
  return times;
}

/** Rows with one stamp lie evenly until the next stamp; the last ones as close as those before. */
function spreadRepeats(times: Float64Array): void {
  let usual = 0;
  for (let i = 0; i < times.length; ) {
    let end = i + 1;
    while (end < times.length && times[end] === times[i]) end += 1;
    const count = end - i;
    const until = (times[end] ?? Number.NaN) - (times[i] ?? 0);
    // After a gap the rows were as close as ever, not spread over it.
    const step = until > 0 && (usual === 0 || until / count <= 3 * usual) ? until / count : usual;
    if (step > 0) usual = step;
    for (let k = 1; k < count; k++) times[i + k] = (times[i] ?? 0) + k * step;
    i = end;
  }
}

/** The middle of each stretch: one stray value does not move it. */
function smoothed(
  at: Float64Array,
  temperature: Float64Array,
  lasts: number,
): Omit<Derived, 'column' | 'channel'> {
  const times: number[] = [];
  const values: number[] = [];
  for (let i = 0; i < at.length; ) {
    const begins = at[i] ?? 0;
    let end = i + 1;
    while (end < at.length && (at[end] ?? 0) < begins + lasts * 1000) end += 1;
    const sorted = temperature.slice(i, end).sort();
    times.push(((at[i] ?? 0) + (at[end - 1] ?? 0)) / 2);
    values.push(sorted[Math.floor(sorted.length / 2)] ?? Number.NaN);
    i = end;
  }
  return { at: Float64Array.from(times), temperature: Float64Array.from(values) };
}

/** The readings of a file: without what is left out, with what was put right, in order of time. */
export function derive(raw: RawFile, repairs: LoggerRepairs): Derived[] {
  const times = repairedTimes(raw.at, repairs);
  const {
    lowest,
    highest,
    from = Number.NEGATIVE_INFINITY,
    until = Number.POSITIVE_INFINITY,
    smooth,
  } = repairs;
  return raw.columns.map(({ column, channel, temperature }) => {
    const values = Float64Array.from(temperature);
    for (const cut of repairs.cuts)
      if (cut.column === column) values.fill(Number.NaN, cut.first, cut.last + 1);
    const at = new Float64Array(times.length);
    const kept = new Float64Array(times.length);
    let count = 0;
    let last = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < times.length; i++) {
      const [time, value] = [times[i] ?? Number.NaN, values[i] ?? Number.NaN];
      // A comparison with NaN is false: what has no time or no value is not taken.
      if (time > last && time >= from && time <= until && value >= lowest && value <= highest) {
        at[count] = time;
        kept[count++] = value;
        last = time;
      }
    }
    const [a, t] = [at.slice(0, count), kept.slice(0, count)];
    return {
      column,
      channel,
      ...(smooth === undefined ? { at: a, temperature: t } : smoothed(a, t, smooth)),
    };
  });
}
