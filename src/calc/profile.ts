import { listOf, notNegative, numberIn, positive } from './check.ts';
import type { Reading } from './readings.ts';

/** One stage of a cure schedule: up or down to a temperature at a rate, or so long where it is. K, K/s, s. */
export type ProfileStage =
  | { kind: 'ramp'; to: number; rate: number }
  | { kind: 'hold'; lasts: number }
  | { kind: 'cool'; to: number; rate: number };

/**
 * Corners of a cure schedule, to draw it. A ramp or a cooling that is already where it is to go takes no
 * time; one whose target lies the other way goes there all the same, at its rate.
 *
 * @param start temperature at time 0, K, greater than 0
 * @param stages in order; `to` K, greater than 0; `rate` K/s, greater than 0; `lasts` s, at least 0
 * @returns `time` s from the start and `temperature` K of each corner, the start among them
 * @throws RangeError naming the field and its stage: 'stages[1].rate'
 *
 * Formula: a stage lasts |to - from| / rate.
 *
 * @example
 * // From 20 C to 60 C at 2 C a minute, then 4 hours. Where are the corners?
 * profilePoints({
 *   start: 293.15,
 *   stages: [{ kind: 'ramp', to: 333.15, rate: 2 / 60 }, { kind: 'hold', lasts: 14400 }],
 * })
 * // => [{ time: 0, temperature: 293.15 }, { time: 1200, temperature: 333.15 }, { time: 15600, temperature: 333.15 }]
 */
export function profilePoints(input: { start: number; stages: readonly ProfileStage[] }): Reading[] {
  let corner: Reading = { time: 0, temperature: positive(input, 'start', 'K') };
  const corners = [corner];
  listOf('stages', input.stages, 0).forEach((stage, index) => {
    const next = cornerAfter(corner, stage, `stages[${index}].`);
    if (next.time > corner.time) corners.push(next);
    corner = next;
  });
  return corners;
}

/**
 * Temperature that a cure schedule asks for at a time. Before the start it is the start's, after the end
 * the last one's.
 *
 * @param start temperature at time 0, K, greater than 0
 * @param stages in order; `to` K, greater than 0; `rate` K/s, greater than 0; `lasts` s, at least 0
 * @param time s from the start, any
 * @returns K
 * @throws RangeError naming the field and its stage
 *
 * @example
 * // From 20 C to 60 C at 2 C a minute, then 4 hours. What should it read after 10 minutes?
 * interpolateProfile({
 *   start: 293.15,
 *   stages: [{ kind: 'ramp', to: 333.15, rate: 2 / 60 }, { kind: 'hold', lasts: 14400 }],
 *   time: 600,
 * })
 * // => 313.15
 */
export function interpolateProfile(input: {
  stages: readonly ProfileStage[];
  start: number;
  time: number;
}): number {
  const time = numberIn(input, 'time', 's');
  let before: Reading | undefined;
  for (const corner of profilePoints(input)) {
    if (time <= corner.time) return before ? between(before, corner, time) : corner.temperature;
    before = corner;
  }
  return before ? before.temperature : positive(input, 'start', 'K');
}

function cornerAfter(from: Reading, stage: ProfileStage, path: string): Reading {
  if (stage?.kind === 'hold') {
    return { time: from.time + notNegative(stage, 'lasts', 's', path), temperature: from.temperature };
  }
  if (stage?.kind !== 'ramp' && stage?.kind !== 'cool') {
    throw new RangeError(`${path}kind must be ramp, hold or cool`);
  }
  const to = positive(stage, 'to', 'K', path);
  const rate = positive(stage, 'rate', 'K/s', path);
  return { time: from.time + Math.abs(to - from.temperature) / rate, temperature: to };
}

function between(from: Reading, to: Reading, time: number): number {
  const share = (time - from.time) / (to.time - from.time);
  return from.temperature + share * (to.temperature - from.temperature);
}
