import { notNegative, numberIn } from '../check.ts';

/**
 * How far the fiber direction turns against the tube axis over the wraps of a tapered mandrel. Cut so
 * that the direction wanted lies at mid-piece, half of it is off each way.
 *
 * @param wraps at least 0
 * @param halfAngle of the mandrel, rad, 0 to a right angle
 * @returns `total` rad from datum edge to free edge, `eachWay` rad
 * @throws RangeError naming the field
 *
 * Formula: 2 pi N sin(half-angle).
 * Source: development of a right circular cone: a turn of 2 pi becomes a sector of 2 pi sin(half-angle).
 *
 * @example
 * // 4 wraps on a mandrel that loses 10 mm of diameter in 2 m: how far does the fiber turn?
 * fiberDrift({ wraps: 4, halfAngle: Math.atan(0.005 / 2) })
 * // => { total: 0.06283, eachWay: 0.03142 }
 */
export function fiberDrift(input: { wraps: number; halfAngle: number }): { total: number; eachWay: number } {
  const halfAngle = numberIn(input, 'halfAngle', 'rad', { from: 0, to: Math.PI / 2 });
  const total = 2 * Math.PI * notNegative(input, 'wraps', 'wraps') * Math.sin(halfAngle);
  return { total, eachWay: total / 2 };
}
