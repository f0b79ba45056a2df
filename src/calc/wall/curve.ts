import { type Bounds, listOf, numberIn } from '../check.ts';
import type { Shape } from './types.ts';

/** A shape that has been checked, ready to be read many times. */
export type Curve = {
  readonly between: Shape['between'];
  readonly at: Float64Array;
  readonly value: Float64Array;
  /** At the stations; empty unless smooth. */
  readonly slope: Float64Array;
};

/** Places closer than this are one place: a sum of two lengths is off by a billionth of a millimeter. */
export const SAME_PLACE = 1e-9;

const CLOSEST = 1e-6;
const CLOSEST_SMOOTH = 1e-3;
const FARTHEST = 1000;
const KINDS: readonly string[] = ['straight', 'smooth', 'step'];

/**
 * Checks a shape and makes it ready to be read.
 *
 * @param path where it is, for the message: 'pieces[0].wraps.'
 * @param bounds what its values may be, and in which unit
 * @throws RangeError naming the field; both stations when two are out of order or on top of each other
 */
export function curveOf(shape: Shape, path = '', unit = '', bounds: Bounds = {}): Curve {
  if (!KINDS.includes(shape?.between)) {
    throw new RangeError(`${path}between must be straight, smooth or step, got ${String(shape?.between)}`);
  }
  const stations = listOf(`${path}stations`, shape.stations, 2);
  const at = new Float64Array(stations.length);
  const value = new Float64Array(stations.length);
  stations.forEach((station, index) => {
    const place = `${path}stations[${index}].`;
    at[index] = numberIn(station, 'at', 'm', { from: -FARTHEST, to: FARTHEST }, place);
    value[index] = numberIn(station, 'value', unit, bounds, place);
    if (index > 0) checkOrder(at, index, path);
  });
  if (shape.between !== 'smooth') return { between: shape.between, at, value, slope: new Float64Array() };
  checkSmooth(at, value, path);
  return { between: shape.between, at, value, slope: monotoneSlopes(at, value) };
}

/** First and last place of a curve. */
export function ends({ at }: Curve): { first: number; last: number } {
  return { first: at[0] ?? 0, last: at[at.length - 1] ?? 0 };
}

/**
 * Reads a curve; beyond its ends it is what it is there.
 *
 * @param before whether to read what comes before a jump at this place, not what comes after
 */
export function readCurve(curve: Curve, x: number, before = false): number {
  return readStretch(curve, stretchAt(curve, x, before, 0), x);
}

/** The stretch between stations that a place is in, looked for from a guess at or before it. */
export function stretchAt({ at }: Curve, x: number, before: boolean, guess: number): number {
  const limit = before ? x - SAME_PLACE : x + SAME_PLACE;
  let stretch = guess;
  while (stretch < at.length - 2 && (at[stretch + 1] ?? 0) <= limit) stretch += 1;
  return stretch;
}

/** Reads a curve in a stretch that is known. Called for every sample of every piece. */
export function readStretch(curve: Curve, k: number, x: number): number {
  const y0 = curve.value[k] ?? 0;
  if (curve.between === 'step') return y0;
  const y1 = curve.value[k + 1] ?? 0;
  const x0 = curve.at[k] ?? 0;
  const long = (curve.at[k + 1] ?? 0) - x0;
  const share = (x - x0) / long;
  if (share <= 0) return y0;
  if (share >= 1) return y1;
  if (curve.between === 'straight') return y0 + share * (y1 - y0);
  const rest = 1 - share;
  const read =
    y0 * (1 + 2 * share) * rest * rest +
    y1 * (3 - 2 * share) * share * share +
    long * share * rest * ((curve.slope[k] ?? 0) * rest - (curve.slope[k + 1] ?? 0) * share);
  // Rounding alone can go past a station by a last digit, and a whole ply would be counted one short.
  return y0 < y1 ? Math.min(y1, Math.max(y0, read)) : Math.min(y0, Math.max(y1, read));
}

function checkOrder(at: Float64Array, index: number, path: string): void {
  const [before = 0, here = 0] = [at[index - 1], at[index]];
  if (here - before >= CLOSEST) return;
  const [one, other] = [`${path}stations[${index - 1}].at`, `stations[${index}].at`];
  if (Math.abs(here - before) < CLOSEST) {
    throw new RangeError(`${one} and ${other} must not be on top of each other, got ${here} m for both`);
  }
  throw new RangeError(`${one} must come before ${other}, got ${before} m and ${here} m`);
}

function checkSmooth(at: Float64Array, value: Float64Array, path: string): void {
  for (let k = 1; k < at.length; k += 1) {
    const [before = 0, here = 0] = [at[k - 1], at[k]];
    if (here - before >= CLOSEST_SMOOTH || value[k] === value[k - 1]) continue;
    throw new RangeError(
      `${path}between must be step or straight: from stations[${k - 1}].at to stations[${k}].at there is ` +
        `${short((here - before) * 1000)} mm, and no smooth curve goes through a step`,
    );
  }
}

/**
 * Slopes of a cubic through the stations that rises and falls only where they do.
 * Source: Fritsch and Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980).
 */
function monotoneSlopes(at: Float64Array, value: Float64Array): Float64Array {
  const last = at.length - 1;
  const chord = new Float64Array(last);
  for (let k = 0; k < last; k += 1) {
    chord[k] = ((value[k + 1] ?? 0) - (value[k] ?? 0)) / ((at[k + 1] ?? 0) - (at[k] ?? 0));
  }
  const slope = new Float64Array(last + 1);
  slope[0] = chord[0] ?? 0;
  slope[last] = chord[last - 1] ?? 0;
  for (let k = 1; k < last; k += 1) {
    const [left = 0, right = 0] = [chord[k - 1], chord[k]];
    slope[k] = left * right > 0 ? (left + right) / 2 : 0;
  }
  for (let k = 0; k < last; k += 1) limitSlopes(slope, k, chord[k] ?? 0);
  return slope;
}

/** Keeps the slopes at both ends of a stretch within the circle of radius 3 that stays monotone. */
function limitSlopes(slope: Float64Array, k: number, chord: number): void {
  if (chord === 0) {
    slope[k] = 0;
    slope[k + 1] = 0;
    return;
  }
  const [left, right] = [(slope[k] ?? 0) / chord, (slope[k + 1] ?? 0) / chord];
  const reach = Math.hypot(left, right);
  if (reach <= 3) return;
  slope[k] = (3 / reach) * left * chord;
  slope[k + 1] = (3 / reach) * right * chord;
}

function short(value: number): number {
  return Number(value.toPrecision(6));
}
