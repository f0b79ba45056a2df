import { activationEnergy, middlePoint, type TimePoint } from './arrhenius.ts';
import { gasConstant } from './constants.ts';

/**
 * Apparent activation energy with what is left over: how far the points stray from the line through them.
 *
 * @param points two or more, not all at one temperature: `temperature` K and `time` s, greater than 0
 * @returns `energy` J/mol, below 0 when hotter takes longer; `residual` as a share of the time (0 for two
 *   points, which always fit and prove nothing); `points` that were used
 * @throws RangeError naming the field; `temperature` when all are at the same
 *
 * Formula: least squares of ln t against 1/T; residual is the root mean square of ln t less the line, over
 * n - 2 degrees of freedom.
 * Source: ASTM C1074, annex on apparent activation energy; any handbook of statistics for the residual.
 *
 * @example
 * // Pot lives of 49 min at 20 C, 34 at 25 and 20 at 35. What energy is that, and how well does it fit?
 * fitActivation([
 *   { temperature: 293.15, time: 2940 },
 *   { temperature: 298.15, time: 2040 },
 *   { temperature: 308.15, time: 1200 },
 * ])
 * // => { energy: 44298.3, residual: 0.045603, points: 3 }
 */
export function fitActivation(points: readonly TimePoint[]): {
  energy: number;
  residual: number;
  points: number;
} {
  const energy = activationEnergy(points);
  const middle = middlePoint(points, 'points');
  const squares = points.reduce((sum, { temperature, time }) => {
    const line = (energy / gasConstant) * (1 / temperature - 1 / middle.temperature);
    return sum + (Math.log(time) - Math.log(middle.time) - line) ** 2;
  }, 0);
  const free = points.length - 2;
  return { energy, residual: free > 0 ? Math.sqrt(squares / free) : 0, points: points.length };
}
