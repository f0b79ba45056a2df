import { listOf, numberIn, positive } from './check.ts';

/** One temperature at one time. Time in s from any zero, temperature in K. */
export type Reading = { time: number; temperature: number };

/** Called for each stretch between two readings: how long, from what temperature, to what. */
type Stretch = (lasts: number, from: number, to: number) => void;

/**
 * Checks a run of readings: each greater than 0 K, none earlier than the one before it. Equal times
 * are allowed and mean a step.
 *
 * @throws RangeError naming the field and its place: 'readings[3].time'
 */
export function checkReadings(input: { readings: readonly Reading[] }, atLeast = 0): readonly Reading[] {
  const readings = listOf('readings', input?.readings, atLeast);
  let before = Number.NEGATIVE_INFINITY;
  readings.forEach((reading, index) => {
    // The plain test first: building names for messages is most of the cost with 100,000 good readings.
    if (!isPlain(reading, before)) mustBeReading(reading, index, before);
    before = reading.time;
  });
  return readings;
}

// Closer than this is one time written twice: a rate over it would be beyond any number.
const STEP = 1e-9;

/** Walks the stretches between readings; a step has no length and is passed over. */
export function eachStretch(input: { readings: readonly Reading[] }, visit: Stretch): void {
  let before = Number.NEGATIVE_INFINITY;
  let from = 0;
  let index = 0;
  // Checked on the way: a run of its own over 100,000 readings costs as much as many a sum over them.
  for (const reading of listOf('readings', input?.readings, 0)) {
    if (!isPlain(reading, before)) mustBeReading(reading, index, before);
    const { time, temperature } = reading;
    if (index > 0 && time - before > STEP) visit(time - before, from, temperature);
    before = time;
    from = temperature;
    index += 1;
  }
}

/**
 * Share of a straight stretch spent above a level, the crossing interpolated. A level stretch is
 * above or not as a whole; `orAt` says whether lying exactly on the level counts.
 */
export function shareAbove(from: number, to: number, level: number, orAt: boolean): number {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  if (low > level || (orAt && low === level)) return 1;
  return high > level ? (high - level) / (high - low) : 0;
}

function isPlain(reading: Reading | undefined, before: number): boolean {
  if (!reading || !Number.isFinite(reading.time) || !Number.isFinite(reading.temperature)) return false;
  const { time, temperature } = reading;
  return time >= before && Math.abs(time) < 1e12 && temperature > 1 && temperature < 1e5;
}

function mustBeReading(reading: Reading, index: number, before: number): void {
  const path = `readings[${index}].`;
  numberIn(reading, 'time', 's', index === 0 ? {} : { from: before }, path);
  positive(reading, 'temperature', 'K', path);
}
