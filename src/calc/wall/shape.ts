import { numberIn, positive } from '../check.ts';
import { curveOf, ends, readCurve, readStretch, SAME_PLACE, stretchAt } from './curve.ts';
import type { Shape } from './types.ts';

/** More than these nobody can see, and a slip of the step would freeze the phone. */
export const MOST_SAMPLES = 200_000;

/**
 * What a shape is at a place. Where it steps, it is what comes after; beyond its ends what it is there.
 *
 * @param shape two stations or more, in order
 * @param at m
 * @returns in the unit of its values
 * @throws RangeError naming the field; both stations when two are out of order or on top of each other
 *
 * Formula: smooth is the monotone cubic.
 * Source: Fritsch and Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980).
 *
 * @example
 * // 6 plies at the foot, 2 at 3 m, straight between. How many at 1.5 m?
 * shapeAt({
 *   shape: { stations: [{ at: 0, value: 6 }, { at: 3, value: 2 }], between: 'straight' },
 *   at: 1.5,
 * })
 * // => 4
 */
export function shapeAt(input: { shape: Shape; at: number }): number {
  return readCurve(curveOf(input.shape), numberIn(input, 'at', 'm'));
}

/**
 * A shape at even steps, the end among them even when it is not a whole number of steps away.
 *
 * @param shape two stations or more, in order
 * @param from m
 * @param to m, at least from
 * @param step m, greater than 0; no more than 200,000 of them
 * @returns values at from, from + step, and so on, and at to
 * @throws RangeError naming the field
 *
 * @example
 * // 6 plies at the foot, 2 at 3 m, straight between. How many at each meter?
 * sampleShape({
 *   shape: { stations: [{ at: 0, value: 6 }, { at: 3, value: 2 }], between: 'straight' },
 *   from: 0,
 *   to: 3,
 *   step: 1,
 * })
 * // => [6, 4.667, 3.333, 2]
 */
export function sampleShape(input: { shape: Shape; from: number; to: number; step: number }): Float64Array {
  const curve = curveOf(input.shape);
  const from = numberIn(input, 'from', 'm', { from: -1e6, to: 1e6 });
  const to = numberIn(input, 'to', 'm', { from, to: 1e6 });
  const step = stepFor(input, to - from);
  const whole = Math.floor((to - from) / step + SAME_PLACE);
  const rest = to - (from + whole * step) > SAME_PLACE ? 1 : 0;
  const values = new Float64Array(whole + 1 + rest);
  let stretch = 0;
  for (let i = 0; i < values.length; i += 1) {
    const x = Math.min(to, from + i * step);
    stretch = stretchAt(curve, x, false, stretch);
    values[i] = readStretch(curve, stretch, x);
  }
  return values;
}

/** A step that does not make more samples of a stretch than can be meant. */
export function stepFor(input: { step: number }, stretch: number): number {
  const step = positive(input, 'step', 'm');
  return numberIn({ step }, 'step', 'm', { from: stretch / MOST_SAMPLES });
}

/**
 * The same shape with its ends changed over.
 *
 * @param shape two stations or more, in order
 * @throws RangeError naming the field
 *
 * @example
 * // 6 plies to 1 m, 2 from there to 3 m. What is it from the other end?
 * mirrorShape({
 *   shape: {
 *     stations: [{ at: 0, value: 6 }, { at: 1, value: 2 }, { at: 3, value: 2 }],
 *     between: 'step',
 *   },
 * }).stations[1]
 * // => { at: 2, value: 6 }
 */
export function mirrorShape(input: { shape: Shape }): Shape {
  const { between } = input.shape;
  const curve = curveOf(input.shape);
  const { first, last } = ends(curve);
  const turned = input.shape.stations.map(({ at, value }) => ({ at: first + last - at, value })).reverse();
  if (between !== 'step') return { between, stations: turned };
  // A step holds from its station on: turned round, each value belongs to the station on its other side.
  const stations = turned.map(({ at, value }, k) => ({ at, value: turned[k + 1]?.value ?? value }));
  const end = stations.length - 1;
  const held = stations[end - 1]?.value;
  return {
    between,
    stations: stations.map((one, k) => (k === end ? { ...one, value: held ?? one.value } : one)),
  };
}

/**
 * The same shape drawn out or pushed together to another length. Its first station stays where it is.
 *
 * @param shape two stations or more, in order
 * @param length from its first to its last station, m, greater than 0
 * @throws RangeError naming the field; both stations when the new length puts two on top of each other
 *
 * @example
 * // A wall drawn for 3 m, thick at 0.6 m. Where on a tube of 5 m?
 * scaleShape({
 *   shape: {
 *     stations: [{ at: 0, value: 3 }, { at: 0.6, value: 6 }, { at: 3, value: 2 }],
 *     between: 'straight',
 *   },
 *   length: 5,
 * }).stations[1]
 * // => { at: 1, value: 6 }
 */
export function scaleShape(input: { shape: Shape; length: number }): Shape {
  const { first, last } = ends(curveOf(input.shape));
  const scale = numberIn(input, 'length', 'm', { above: 0, to: 1000 }) / (last - first);
  const stations = input.shape.stations.map(({ at, value }) => ({ at: first + (at - first) * scale, value }));
  const shape = { between: input.shape.between, stations };
  curveOf(shape);
  return shape;
}
