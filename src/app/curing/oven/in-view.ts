import type { Logged } from './merged.ts';

/** Readings to draw: as long in time as the view is wide, with the peaks of every px. */
export interface InView {
  at: number[];
  temperature: (number | null)[];
}

/** First place not before this time. */
function placeOf(at: Float64Array, time: number): number {
  let low = 0;
  let high = at.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((at[middle] ?? 0) < time) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface View {
  /** ms */
  from: number;
  to: number;
  px: number;
  /** A stretch longer than this without a reading is not drawn across, ms */
  longest: number;
}

/** Of each px column the first, the lowest, the highest and the last reading, in their order. */
function columnOf({ temperature }: Logged, first: number, last: number): number[] {
  let [low, high] = [first, first];
  for (let i = first; i <= last; i++) {
    const t = temperature[i] ?? 0;
    if (t < (temperature[low] ?? 0)) low = i;
    if (t > (temperature[high] ?? 0)) high = i;
  }
  const between = low < high ? [low, high] : [high, low];
  return [first, ...between, last].filter((place, i, all) => i === 0 || place > (all[i - 1] ?? -1));
}

/** What of a series is seen between two times: never more than four readings a px, and one beyond each edge. */
export function inView(series: Logged, { from, to, px, longest }: View): InView {
  const { at, temperature } = series;
  const first = Math.max(0, placeOf(at, from) - 1);
  const end = Math.min(at.length, placeOf(at, to) + 1);
  const wide = (to - from) / Math.max(1, px);
  const seen: InView = { at: [], temperature: [] };
  const add = (place: number) => {
    seen.at.push(at[place] ?? 0);
    seen.temperature.push(temperature[place] ?? null);
  };
  const breakBefore = (place: number) => {
    const [before = 0, after = 0] = [at[place - 1], at[place]];
    if (after - before <= longest) return;
    seen.at.push((before + after) / 2);
    seen.temperature.push(null);
  };
  for (let i = first; i < end; ) {
    const ends = Math.max(at[i] ?? 0, from + (Math.floor(((at[i] ?? 0) - from) / wide) + 1) * wide);
    let last = i;
    while (last + 1 < end && (at[last + 1] ?? 0) < ends) last += 1;
    if (i > first) breakBefore(i);
    for (const place of columnOf(series, i, last)) add(place);
    i = last + 1;
  }
  return seen;
}
