import { finite, numberIn, positive } from './check.ts';
import { checkReadings, type Reading } from './readings.ts';

/** Heat from oven air to a tube, convection and radiation together, W/(m2 K): air that is moved a little. */
const HEAT_TRANSFER = 30;

/**
 * Time constant of a mandrel in the air of an oven: after one of these it has come 63 % of the way, after
 * three 95 %. Heat goes in from outside only, and metal is as warm inside as on its skin.
 *
 * @param diameter outside, m, greater than 0
 * @param wall m, greater than 0 and at most half the diameter; without it a solid bar
 * @param density kg/m3, greater than 0
 * @param specificHeat J/(kg K), greater than 0
 * @param heatTransfer W/(m2 K), greater than 0; 30 unless given
 * @returns s
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: tau = rho c V/(h A), V/A = w (1 - w/D); D/4 for a bar.
 * Source: lumped heating of a body, any book of heat transfer; h 30 is common practice, no source: still air
 * with radiation gives 12 to 15, a fan 25 to 60.
 *
 * @example
 * // Aluminum tube, 38 mm with a wall of 1.65 mm. How long is its time constant?
 * mandrelTimeConstant({ diameter: 0.038, wall: 0.00165, density: 2700, specificHeat: 900 })
 * // => 127.8
 */
export function mandrelTimeConstant(input: {
  diameter: number;
  wall?: number | undefined;
  density: number;
  specificHeat: number;
  heatTransfer?: number | undefined;
}): number {
  const diameter = positive(input, 'diameter', 'm');
  const wall =
    input.wall === undefined ? diameter / 2 : numberIn(input, 'wall', 'm', { above: 0, to: diameter / 2 });
  const transfer =
    input.heatTransfer === undefined ? HEAT_TRANSFER : positive(input, 'heatTransfer', 'W/(m2 K)');
  const heat = positive(input, 'density', 'kg/m3') * positive(input, 'specificHeat', 'J/(kg K)');
  return finite((heat * wall * (1 - wall / diameter)) / transfer, 'density');
}

// Time constants after a reading at which the curve is noted: straight lines between them are good to 1 %.
const QUARTER = 0.25;
const NOTED = [QUARTER, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6];

/** Less than this between air and part is no lag, K. */
const SAME = 0.05;

/**
 * What a part was at, when only the air was read and the part follows it with one time constant.
 *
 * @param readings of the air, in order of time, s and K; straight between readings
 * @param timeConstant s, greater than 0
 * @param start what the part was at by the first reading, K, greater than 0
 * @returns s and K, the times of the readings among them
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: dP/dt = (T - P)/tau, exact at each reading.
 * Source: lumped heating of a body, any book of heat transfer.
 *
 * @example
 * // Air at 66 C all along, a bar at 23 C put in. What is it after one time constant of 5 min?
 * followingReadings({
 *   readings: [{ time: 0, temperature: 339.15 }, { time: 300, temperature: 339.15 }],
 *   timeConstant: 300,
 *   start: 296.15,
 * }).at(-1)
 * // => { time: 300, temperature: 323.33 }
 */
export function followingReadings(input: {
  readings: readonly Reading[];
  timeConstant: number;
  start: number;
}): Reading[] {
  const lag = positive(input, 'timeConstant', 's');
  let part = positive(input, 'start', 'K');
  const followed: Reading[] = [];
  let last: Reading | undefined;
  for (const reading of checkReadings(input)) {
    const begin = last ?? reading;
    const lasts = reading.time - begin.time;
    if (lasts > 0) {
      const slope = (reading.temperature - begin.temperature) / lasts;
      const off = part - begin.temperature + slope * lag;
      const at = (time: number): number =>
        begin.temperature + slope * (time - lag) + off * Math.exp(-time / lag);
      for (const noted of Math.abs(off) > SAME && lasts > QUARTER * lag ? NOTED : []) {
        const time = noted * lag;
        if (time < lasts) followed.push({ time: begin.time + time, temperature: at(time) });
      }
      part = finite(at(lasts), 'readings');
    }
    followed.push({ time: reading.time, temperature: part });
    last = reading;
  }
  return followed;
}
