import { finite, listOf, notNegative, positive } from './check.ts';
import { gasConstant } from './constants.ts';

/** So long at such a temperature, as data sheets give cure times. Time in s, temperature in K. */
export type TimePoint = { temperature: number; time: number };

/**
 * Apparent activation energy from times at temperatures, such as the cure times of a data sheet. Two
 * points always fit exactly, which proves nothing. Below 0 when hotter takes longer.
 *
 * @param points two or more, not all at one temperature: `temperature` K and `time` s, greater than 0
 * @returns J/mol
 * @throws RangeError naming the field; `temperature` when all are at the same
 *
 * Formula: least squares of ln t against 1/T, slope times the gas constant.
 * Source: ASTM C1074, annex on apparent activation energy.
 *
 * @example
 * // 7 days at 25 C or 4 hours at 65 C. What activation energy is that?
 * activationEnergy([{ temperature: 298.15, time: 604800 }, { temperature: 338.15, time: 14400 }])
 * // => 78330
 */
export function activationEnergy(points: readonly TimePoint[]): number {
  const middle = middlePoint(points, 'points');
  let spread = 0;
  let across = 0;
  for (const point of listOf('points', points, 2)) {
    const x = 1 / point.temperature - 1 / middle.temperature;
    spread += x * x;
    across += x * (Math.log(point.time) - Math.log(middle.time));
  }
  // Equal temperatures leave a spread of rounding only.
  if (Math.sqrt(spread) * middle.temperature > 1e-9) return (gasConstant * across) / spread;
  throw new RangeError('temperature must differ between two of the points, got the same for all');
}

/**
 * The point that every straight line through the points, fitted by least squares in ln t against 1/T,
 * goes through, whatever its slope.
 *
 * @param name what the list is called, for the message
 */
export function middlePoint(points: readonly TimePoint[], name: string): TimePoint {
  let inverse = 0;
  let log = 0;
  listOf(name, points, 1).forEach((point, index) => {
    inverse += 1 / positive(point, 'temperature', 'K', `${name}[${index}].`);
    log += Math.log(positive(point, 'time', 's', `${name}[${index}].`));
  });
  return { temperature: points.length / inverse, time: Math.exp(log / points.length) };
}

/**
 * How long the same thing takes at another temperature.
 *
 * @param time s at `at`, at least 0
 * @param at K, greater than 0
 * @param temperature K, greater than 0
 * @param activationEnergy J/mol, at least 0
 * @returns s at `temperature`
 * @throws RangeError naming the field; `temperature` when the time is beyond any number
 *
 * Formula: t exp((Ea/R)(1/T - 1/Tat)).
 * Source: Arrhenius; the form of ASTM C1074.
 *
 * @example
 * // 25 min of pot life at 25 C. How long at 32 C, with 55 kJ/mol?
 * timeAtTemperature({ time: 1500, at: 298.15, temperature: 305.15, activationEnergy: 55000 })
 * // => 902
 */
export function timeAtTemperature(input: {
  time: number;
  at: number;
  temperature: number;
  activationEnergy: number;
}): number {
  const time = notNegative(input, 'time', 's');
  const step = 1 / positive(input, 'temperature', 'K') - 1 / positive(input, 'at', 'K');
  const exponent = (notNegative(input, 'activationEnergy', 'J/mol') / gasConstant) * step;
  return time === 0 ? 0 : finite(time * Math.exp(exponent), 'temperature');
}
