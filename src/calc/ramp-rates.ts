import { positive } from './check.ts';
import { checkReadings, type Reading } from './readings.ts';

/** Sums for a straight line through a run of readings, taken from an origin near the run. */
type Sums = { n: number; t: number; y: number; tt: number; ty: number };

/**
 * Steepest sustained rise and fall: the least-squares slope over every run of readings that spans the
 * window. A run is the fewest readings, up to each one, that reach back at least the window, so a gap
 * longer than the window is one run; a record shorter than the window is one run as a whole. One bad
 * reading does not make a ramp, and a step (equal times) is spread over the window.
 *
 * @param readings in order of time; none or one gives 0 both ways
 * @param window s, greater than 0; 300 suits an oven read by logger
 * @returns `up` and `down`, K/s, both at least 0
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: sum of (t - mean t)(T - mean T) over sum of (t - mean t)^2.
 *
 * @example
 * // Read every 5 min: 20, 30, 40, then 40 C. How steep over 10 min?
 * rampRates({
 *   readings: [
 *     { time: 0, temperature: 293.15 },
 *     { time: 300, temperature: 303.15 },
 *     { time: 600, temperature: 313.15 },
 *     { time: 900, temperature: 313.15 },
 *   ],
 *   window: 600,
 * })
 * // => { up: 0.03333, down: 0 }
 */
export function rampRates(input: { readings: readonly Reading[]; window: number }): {
  up: number;
  down: number;
} {
  const window = positive(input, 'window', 's');
  let up = 0;
  let down = 0;
  eachRun(checkReadings(input), window, (slope) => {
    up = Math.max(up, slope);
    down = Math.max(down, -slope);
  });
  return { up, down };
}

/** Slides the run along with running sums, so that the cost does not grow with the window. */
function eachRun(readings: readonly Reading[], window: number, visit: (slope: number) => void): void {
  const start = readings[0];
  const end = readings.at(-1);
  if (!start || !end) return;
  if (end.time - start.time < window) {
    visit(slopeOf(sumsOf(readings, start)));
    return;
  }
  let first = 0;
  let oldest = start;
  let origin = start;
  let sums = sumsOf([], start);
  readings.forEach((reading, index) => {
    add(sums, reading, origin, 1);
    for (
      let next = readings[first + 1];
      next && reading.time - next.time >= window;
      next = readings[first + 1]
    ) {
      add(sums, oldest, origin, -1);
      oldest = next;
      first += 1;
    }
    if (reading.time - oldest.time < window) return;
    // A far origin leaves rounding of its square in the sums: take them afresh once a window.
    if (oldest.time > origin.time) {
      origin = reading;
      sums = sumsOf(readings.slice(first, index + 1), origin);
    }
    visit(slopeOf(sums));
  });
}

function sumsOf(run: readonly Reading[], origin: Reading): Sums {
  const sums = { n: 0, t: 0, y: 0, tt: 0, ty: 0 };
  for (const reading of run) add(sums, reading, origin, 1);
  return sums;
}

function add(sums: Sums, reading: Reading, origin: Reading, sign: 1 | -1): void {
  const t = reading.time - origin.time;
  const y = reading.temperature - origin.temperature;
  sums.n += sign;
  sums.t += sign * t;
  sums.y += sign * y;
  sums.tt += sign * t * t;
  sums.ty += sign * t * y;
}

function slopeOf({ n, t, y, tt, ty }: Sums): number {
  const spread = n * tt - t * t;
  return spread > 0 ? (n * ty - t * y) / spread : 0;
}
