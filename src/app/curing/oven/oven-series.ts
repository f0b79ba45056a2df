import { envelope, type Reading } from '#calc';
import type { Channel } from '#shared/record/oven-load.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type Logged, merged, readingsOf } from './merged.ts';

/** One channel's readings, in s from the moment the oven was lit. */
export interface Series {
  channel: Channel;
  readings: Reading[];
  /** What was read by hand, where a logger's file speaks for this channel too. */
  byHand?: Reading[];
}

export interface OvenSeries {
  /** Time 0 of every reading, ms */
  from: number;
  air: Series[];
  parts: Series[];
  elements: Series[];
  /** What the cure is judged by: the part sensors, or the air while none of them was read. */
  by: 'part' | 'air';
  judged: Series[];
  coldest: Reading[];
  hottest: Reading[];
}

export const litOf = ({ litAt, header }: OvenState): number => litAt ?? header.startedAt;

/** One sensor is its own coldest and hottest; several are compared at every time. */
export function extremeOf(series: readonly Series[], pick: 'coldest' | 'hottest'): Reading[] {
  const channels = series.map((s) => s.readings).filter((readings) => readings.length > 0);
  return channels.length > 1 ? envelope({ channels, pick }) : (channels[0] ?? []);
}

/** `logged`: what the files of loggers say, in the order they were brought in. */
export function ovenSeries(state: OvenState, logged: readonly Logged[] = []): OvenSeries {
  const from = litOf(state);
  const all = state.readings.map(({ channel, at }): Series => {
    const byHand = at.map((r) => ({ time: (r.at - from) / 1000, temperature: r.temperature }));
    const files = logged.filter((l) => l.channel === channel.id && l.at.length > 0);
    if (files.length === 0) return { channel, readings: byHand };
    return { channel, readings: merged([...files.map((f) => readingsOf(f, from)), byHand]), byHand };
  });
  const seeing = (sees: Channel['sees']) => all.filter((s) => s.channel.sees === sees);
  const parts = seeing('part');
  const air = seeing('air');
  const read = (series: Series[]) => series.filter((s) => s.readings.length > 0);
  const by = read(parts).length > 0 ? 'part' : 'air';
  const judged = read(by === 'part' ? parts : air);
  return {
    from,
    air,
    parts,
    elements: seeing('element'),
    by,
    judged,
    coldest: extremeOf(judged, 'coldest'),
    hottest: extremeOf(judged, 'hottest'),
  };
}

/** A stretch in which nobody knows what it was, s. */
export interface Gap {
  channel: Channel;
  from: number;
  to: number;
}

/** Time in which at least one channel was not read, s: what two leave out together counts once. */
export function unreadTime(gaps: readonly Gap[]): number {
  let total = 0;
  let until = Number.NEGATIVE_INFINITY;
  for (const { from, to } of [...gaps].sort((a, b) => a.from - b.from)) {
    total += Math.max(0, to - Math.max(from, until));
    until = Math.max(until, to);
  }
  return total;
}

/** Stretches longer than this between readings of one channel, until `end`. */
export function gapsOf(series: readonly Series[], longest: number, end: number): Gap[] {
  return series.flatMap(({ channel, readings }) => {
    const gaps: Gap[] = [];
    let last = 0;
    for (const { time } of [...readings, { time: end }]) {
      const to = Math.min(time, end);
      if (to - last > longest) gaps.push({ channel, from: last, to });
      last = Math.max(last, time);
    }
    return gaps;
  });
}

/** The runs of readings outside every gap: nothing is counted across one. */
export function readRuns(readings: readonly Reading[], gaps: readonly Gap[]): Reading[][] {
  const ahead = [...gaps].sort((a, b) => b.from - a.from);
  const runs: Reading[][] = [];
  let run: Reading[] = [];
  let unreadTo = Number.NEGATIVE_INFINITY;
  for (const reading of readings) {
    for (let gap = ahead.at(-1); gap && gap.from < reading.time; gap = ahead.at(-1)) {
      unreadTo = Math.max(unreadTo, gap.to);
      ahead.pop();
    }
    const before = run.at(-1)?.time ?? reading.time;
    if (unreadTo > before && reading.time > before) {
      runs.push(run);
      run = [];
    }
    run.push(reading);
  }
  return run.length > 0 ? [...runs, run] : runs;
}
