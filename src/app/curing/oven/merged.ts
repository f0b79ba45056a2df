import type { Reading } from '#calc';

/** What one file of a logger says of one channel. */
export interface Logged {
  channel: string;
  /** ms, in order */
  at: Float64Array;
  /** K */
  temperature: Float64Array;
}

/** A file that is silent for so many of its steps says nothing of what lies between. */
const silentAfter = 5;
/** but what is shorter than this is no silence, s (common practice, no source) */
const shortest = 120;

export function readingsOf({ at, temperature }: Logged, from: number): Reading[] {
  return Array.from(at, (ms, i) => ({ time: (ms - from) / 1000, temperature: temperature[i] ?? Number.NaN }));
}

/** Stretches of time that these readings speak for, s */
function spokenFor(readings: readonly Reading[]): [number, number][] {
  const first = readings[0];
  if (!first) return [];
  const steps = readings.slice(1).map((r, i) => r.time - (readings[i]?.time ?? r.time));
  const usual = Float64Array.from(steps).sort()[Math.floor(steps.length / 2)] ?? 0;
  const longest = Math.max(shortest, silentAfter * usual);
  const stretches: [number, number][] = [[first.time, first.time]];
  for (const { time } of readings) {
    const last = stretches.at(-1);
    if (last && time - last[1] <= longest) last[1] = time;
    else stretches.push([time, time]);
  }
  return stretches;
}

function notIn(readings: readonly Reading[], stretches: readonly [number, number][]): Reading[] {
  let at = 0;
  return readings.filter(({ time }) => {
    while ((stretches[at]?.[1] ?? Number.POSITIVE_INFINITY) < time) at += 1;
    return time < (stretches[at]?.[0] ?? Number.POSITIVE_INFINITY);
  });
}

const inOrder = (readings: Reading[]) => readings.sort((a, b) => a.time - b.time);

/**
 * One series of what several sources read of one channel. Where two speak of the same time the first holds: a file
 * before a later file, and any file before a hand, so that nothing counts twice.
 */
export function merged(sources: readonly (readonly Reading[])[]): Reading[] {
  let all: Reading[] = [];
  for (const source of sources) {
    all = all.length === 0 ? [...source] : inOrder(all.concat(notIn(source, spokenFor(all))));
  }
  return all;
}
