import { type Fault, plausible } from './fault.ts';
import type { RawFile } from './read-columns.ts';

/** Nearly all of a column without a temperature: nothing was plugged in. */
const deadFrom = 0.98;
/** So long without moving at all while another sensor goes so far, s and K, is no sensor that sees the oven. */
const flatWhile = { lasts: 1200, other: 15 } as const;
/** Alone in its file it is named after so long, s, since a hold may look like that. */
const flatAlone = 7200;
/** Out and back within one row by more than this, K; no oven does that in a row. */
const spikeBy = 25;
/** Flicker from row to row that matters to a ramp, K, and the rows it is looked for in, ms. */
const noisy = { from: 0.25, step: 5000 } as const;
/** The middle of each such stretch is taken instead, s (common practice, no source). */
const smoothOver = 30;

interface Column {
  column: number;
  temperature: Float64Array;
}

const isReading = (value: number) => value >= plausible.lowest && value <= plausible.highest;

function silence({ column, temperature }: Column, at: Float64Array): Fault[] {
  let count = 0;
  let row = -1;
  let value = Number.NaN;
  for (let i = 0; i < temperature.length; i++) {
    const t = temperature[i] ?? Number.NaN;
    if (isReading(t)) continue;
    count += 1;
    if (row < 0) row = i;
    if (Number.isNaN(value)) value = t;
  }
  if (count === 0) return [];
  const kind = count >= deadFrom * temperature.length ? 'dead' : 'noReading';
  const shown = Number.isNaN(value) ? {} : { value };
  return [{ kind, count, row, at: at[row] ?? Number.NaN, column, advised: true, ...shown }];
}

interface Run {
  first: number;
  last: number;
}

function stillest(temperature: Float64Array, at: Float64Array): Run | undefined {
  let best: Run | undefined;
  let longest = 0;
  for (let i = 0; i < temperature.length; ) {
    let end = i;
    while (end + 1 < temperature.length && temperature[end + 1] === temperature[i]) end += 1;
    const lasts = (at[end] ?? Number.NaN) - (at[i] ?? Number.NaN);
    if (lasts > longest && isReading(temperature[i] ?? Number.NaN)) {
      longest = lasts;
      best = { first: i, last: end };
    }
    i = end + 1;
  }
  return best;
}

function moved(temperature: Float64Array, { first, last }: Run): number {
  const during = temperature.subarray(first, last + 1).filter(isReading);
  return during.length === 0
    ? 0
    : during.reduce((a, b) => Math.max(a, b)) - during.reduce((a, b) => Math.min(a, b));
}

function flat(one: Column, others: readonly Column[], at: Float64Array): Fault[] {
  const run = stillest(one.temperature, at);
  if (!run) return [];
  const size = ((at[run.last] ?? 0) - (at[run.first] ?? 0)) / 1000;
  const value = one.temperature[run.first] ?? Number.NaN;
  const base = {
    kind: 'flat',
    count: run.last - run.first + 1,
    row: run.first,
    column: one.column,
    size,
    value,
  } as const;
  const repair = { cuts: [{ ...run, column: one.column }] };
  const found = { ...base, at: at[run.first] ?? Number.NaN, repair };
  const other = others.reduce((most, o) => Math.max(most, moved(o.temperature, run)), 0);
  if (size >= flatWhile.lasts && other >= flatWhile.other) return [{ ...found, advised: true }];
  return others.length === 0 && size >= flatAlone ? [{ ...found, advised: false }] : [];
}

function spikes({ column, temperature }: Column, at: Float64Array): Fault[] {
  const cuts = [];
  for (let i = 1; i + 1 < temperature.length; i++) {
    const [a = 0, b = 0, c = 0] = temperature.subarray(i - 1, i + 2);
    const out = b - a;
    const isSpike =
      Math.abs(out) > spikeBy &&
      Math.abs(b - c) > spikeBy &&
      out * (b - c) > 0 &&
      Math.abs(c - a) < spikeBy / 3;
    if (isSpike && isReading(a) && isReading(b) && isReading(c)) cuts.push({ first: i, last: i, column });
  }
  const [first] = cuts;
  if (!first) return [];
  const row = first.first;
  const value = temperature[row] ?? Number.NaN;
  return [
    {
      kind: 'spike',
      count: cuts.length,
      row,
      at: at[row] ?? Number.NaN,
      column,
      value,
      repair: { cuts },
      advised: true,
    },
  ];
}

/** Scatter from row to row, by the middle of the second differences: a ramp has none, and an outlier moves none. */
function scatter(temperature: Float64Array): number {
  const second = new Float64Array(Math.max(0, temperature.length - 2));
  let count = 0;
  for (let i = 1; i + 1 < temperature.length; i++) {
    const d = Math.abs((temperature[i - 1] ?? 0) - 2 * (temperature[i] ?? 0) + (temperature[i + 1] ?? 0));
    if (d < 50) second[count++] = d;
  }
  const middle = second.subarray(0, count).sort()[Math.floor(count / 2)] ?? 0;
  // Of normal scatter half lies within 0.6745 of its deviation, and a second difference is √6 times as wide.
  return middle / 0.6745 / Math.sqrt(6);
}

function noise({ columns, at }: RawFile, step: number): Fault[] {
  if (step > noisy.step) return [];
  const size = columns.reduce((most, c) => Math.max(most, scatter(c.temperature)), 0);
  if (size < noisy.from) return [];
  const repair = { smooth: smoothOver };
  return [{ kind: 'noise', count: at.length, row: 0, at: at[0] ?? Number.NaN, size, repair, advised: true }];
}

/** What is wrong with what the sensors said; `at` with the clock put right, `step` ms between rows. */
export function sensorFaults(raw: RawFile, step: number): Fault[] {
  const { columns, at } = raw;
  const found = columns.flatMap((one) => {
    const silent = silence(one, at);
    if (silent.some((f) => f.kind === 'dead')) return silent;
    return [
      ...silent,
      ...flat(
        one,
        columns.filter((c) => c !== one),
        at,
      ),
      ...spikes(one, at),
    ];
  });
  return [...found, ...noise(raw, step)];
}
