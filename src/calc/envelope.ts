import { listOf } from './check.ts';
import { checkReadings, type Reading } from './readings.ts';

/** One channel between two neighboring times: what it starts at and ends at, flipped for the hottest. */
type Line = { from: number; to: number };
type Cursor = { readings: readonly Reading[]; at: number };
type Add = (time: number, value: number) => void;

const NONE = Number.POSITIVE_INFINITY;

/**
 * The coldest or the hottest of several channels at every time. Each is straight between its readings
 * and counts from its first reading to its last; where two cross, the crossing is a point of its own.
 * Equal times in the result are a step: a channel came in or went out there. Where none counts, the
 * result goes straight across.
 *
 * @param channels readings of each, in order of time, `time` s and `temperature` K; none gives none
 * @param pick 'coldest' or 'hottest'
 * @returns readings in order of time
 * @throws RangeError naming the field; `pick` when it is neither
 *
 * @example
 * // One tube warms from 20 to 80 C in an hour, the other stays at 50 C. What does the coldest do?
 * envelope({
 *   channels: [
 *     [{ time: 0, temperature: 293.15 }, { time: 3600, temperature: 353.15 }],
 *     [{ time: 0, temperature: 323.15 }, { time: 3600, temperature: 323.15 }],
 *   ],
 *   pick: 'coldest',
 * })
 * // => [{ time: 0, temperature: 293.15 }, { time: 1800, temperature: 323.15 }, { time: 3600, temperature: 323.15 }]
 */
export function envelope(input: {
  channels: readonly (readonly Reading[])[];
  pick: 'coldest' | 'hottest';
}): Reading[] {
  const { channels, pick } = input ?? {};
  if (pick !== 'coldest' && pick !== 'hottest') throw new RangeError('pick must be coldest or hottest');
  const checked = listOf('channels', channels, 0).map((readings) => checkReadings({ readings }).map(timed));
  // The hottest is the coldest of everything turned upside down.
  const flip = pick === 'coldest' ? 1 : -1;
  const points: Reading[] = [];
  const add: Add = (time, value) => {
    const before = points.at(-1);
    const temperature = flip * value;
    if (before?.time !== time || before.temperature !== temperature) points.push({ time, temperature });
  };
  const cursors = checked.map((readings) => ({ readings, at: -1 }));
  const times = timesOf(checked);
  let arrived = NONE;
  times.forEach((time, index) => {
    const next = times[index + 1];
    const read = cursors.reduce((least, cursor) => Math.min(least, advance(cursor, time, flip)), NONE);
    const lines: Line[] = [];
    for (const cursor of cursors) {
      const line = next === undefined ? undefined : lineOf(cursor, time, next, flip);
      if (line) lines.push(line);
    }
    const leaves = lines.reduce((least, line) => Math.min(least, line.from), NONE);
    if (arrived < NONE) add(time, arrived);
    if (read < Math.min(arrived, leaves)) add(time, read);
    arrived = next === undefined || lines.length === 0 ? NONE : along(lines, time, next, add);
  });
  return points;
}

/** Nearer to 0 than any clock tells is 0: stretches between such times are too short to divide by. */
function timed(reading: Reading): Reading {
  return Math.abs(reading.time) < 1e-15 ? { ...reading, time: 0 } : reading;
}

/** Every time at which anything was read, once, in order. */
function timesOf(channels: readonly (readonly Reading[])[]): Float64Array {
  const all = Float64Array.from(channels.flatMap((readings) => readings.map((r) => r.time))).sort();
  return all.filter((time, index) => index === 0 || time !== all[index - 1]);
}

/** Takes in what a channel read at this time; the lowest of it. */
function advance(cursor: Cursor, time: number, flip: number): number {
  let read = NONE;
  for (let r = cursor.readings[cursor.at + 1]; r?.time === time; r = cursor.readings[cursor.at + 1]) {
    read = Math.min(read, flip * r.temperature);
    cursor.at += 1;
  }
  return read;
}

function lineOf({ readings, at }: Cursor, from: number, to: number, flip: number): Line | undefined {
  const [here, there] = [readings[at], readings[at + 1]];
  if (!here || !there) return undefined;
  return { from: flip * between(here, there, from), to: flip * between(here, there, to) };
}

function between(here: Reading, there: Reading, time: number): number {
  if (time === there.time) return there.temperature;
  const share = (time - here.time) / (there.time - here.time);
  return here.temperature + share * (there.temperature - here.temperature);
}

/** Follows the lowest of the lines from one time to the next; what it ends at. */
function along(lines: readonly Line[], from: number, to: number, add: Add): number {
  let lowest = lines.reduce((a, b) => (b.from < a.from || (b.from === a.from && b.to < a.to) ? b : a));
  let share = 0;
  add(from, lowest.from);
  for (let under = nextUnder(lines, lowest); under; under = nextUnder(lines, lowest)) {
    share = Math.max(share, crossing(lowest, under));
    lowest = under;
    add(Math.min(to, from + share * (to - from)), under.from + share * (under.to - under.from));
  }
  return lowest.to;
}

/** The line that goes under this one first. */
function nextUnder(lines: readonly Line[], lowest: Line): Line | undefined {
  let first: Line | undefined;
  for (const line of lines) {
    if (line.to >= lowest.to) continue;
    const sooner = first ? crossing(lowest, line) - crossing(lowest, first) : -1;
    if (!first || sooner < 0 || (sooner === 0 && line.to < first.to)) first = line;
  }
  return first;
}

/** Share of the way at which a line that ends lower goes under. */
function crossing(lowest: Line, under: Line): number {
  const above = Math.max(0, under.from - lowest.from);
  return above / (above + lowest.to - under.to);
}
