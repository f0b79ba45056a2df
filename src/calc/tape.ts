import { notNegative, numberIn, positive } from './check.ts';

/**
 * Length of tape wound on a round tube from one end to the other.
 *
 * @param diameter under the tape, m, greater than 0
 * @param length of tube it covers, m, at least 0
 * @param advance along the tube for each turn, m, greater than 0
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (L/p) sqrt((pi D)^2 + p^2), a helix unrolled to a right triangle.
 * Source: Euclid, Elements I.47, on the helix unrolled; from memory.
 *
 * @example
 * // 1.9 m of tube of 40 mm, one turn every 12.7 mm: how much tape?
 * helixLength({ diameter: 0.04, length: 1.9, advance: 0.0127 })
 * // => 18.90
 */
export function helixLength(input: { diameter: number; length: number; advance: number }): number {
  return notNegative(input, 'length', 'm') * tapePerLength(input);
}

/**
 * How far along the tube a length of tape goes. The way back from `helixLength`.
 *
 * @param diameter under the tape, m, greater than 0
 * @param tapeLength m, at least 0
 * @param advance along the tube for each turn, m, greater than 0
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: S p / sqrt((pi D)^2 + p^2).
 * Source: Euclid, Elements I.47, on the helix unrolled; from memory.
 *
 * @example
 * // A roll of 50 m on a tube of 40 mm, one turn every 12.7 mm: how far does it go?
 * helixReach({ diameter: 0.04, tapeLength: 50, advance: 0.0127 })
 * // => 5.028
 */
export function helixReach(input: { diameter: number; tapeLength: number; advance: number }): number {
  return notNegative(input, 'tapeLength', 'm') / tapePerLength(input);
}

/** m of tape for each m of tube */
function tapePerLength(input: { diameter: number; advance: number }): number {
  const around = Math.PI * positive(input, 'diameter', 'm');
  return Math.hypot(around / positive(input, 'advance', 'm'), 1);
}

/**
 * How far tape moves along the tube in one turn.
 *
 * @param width of the tape, m, greater than 0
 * @param overlapFraction share of the width that lies on the turn before, at least 0, less than 1
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: w (1 - f). The slant of the turn is left out: 0.5 % of the width at 6 degrees.
 * Source: follows from the definition of overlap; common practice names it by its share of the width.
 *
 * @example
 * // Tape of 25.4 mm, wound half over: how far does a turn move?
 * tapeAdvance({ width: 0.0254, overlapFraction: 0.5 })
 * // => 0.0127
 */
export function tapeAdvance(input: { width: number; overlapFraction: number }): number {
  return positive(input, 'width', 'm') * (1 - overlap(input));
}

/**
 * Layers of tape over any one point of the tube.
 *
 * @param overlapFraction at least 0, at most 0.99
 * @param passes times it goes from end to end, a whole number, at least 1
 * @returns the fewest and the most; the same where the overlap divides evenly, as half and two thirds do
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 1/(1 - f) for each pass, rounded down and up.
 * Source: follows from the definition of overlap; common practice names it by its share of the width.
 *
 * @example
 * // Half over, there and back: how many layers?
 * tapeLayers({ overlapFraction: 0.5, passes: 2 })
 * // => { least: 4, most: 4 }
 */
export function tapeLayers(input: { overlapFraction: number; passes: number }): {
  least: number;
  most: number;
} {
  const each = 1 / (1 - numberIn(input, 'overlapFraction', '', { from: 0, to: 0.99 }));
  const passes = numberIn(input, 'passes', '', { from: 1, to: 100 });
  if (!Number.isInteger(passes)) throw new RangeError(`passes must be a whole number, got ${passes}`);
  // Two thirds written as 0.667 is 3.003 layers on paper, and 3 on the tube.
  const whole = Math.round(each);
  const even = Math.abs(each - whole) < 0.01;
  return {
    least: passes * (even ? whole : Math.floor(each)),
    most: passes * (even ? whole : Math.ceil(each)),
  };
}

function overlap(input: { overlapFraction: number }): number {
  return numberIn(input, 'overlapFraction', '', { from: 0, below: 1 });
}

/**
 * Pressure of tape under tension on what it is wound on.
 *
 * @param tensionPerWidth pull of one layer for each m of its width, N/m, at least 0
 * @param radius outside, under the tape, m, greater than 0
 * @param layers over the point, at least 0
 * @returns Pa
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: n T/(w R), thin-wall hoop, layers as if each pulled alone.
 * Source: Gere and Timoshenko, Mechanics of Materials, thin-walled pressure vessels.
 *
 * @example
 * // 50 N on tape of 15 mm, on a radius of 12.5 mm: what pressure does one layer make?
 * hoopPressure({ tensionPerWidth: 50 / 0.015, radius: 0.0125, layers: 1 })
 * // => 266667
 */
export function hoopPressure(input: { tensionPerWidth: number; radius: number; layers: number }): number {
  const tension = notNegative(input, 'tensionPerWidth', 'N/m');
  return (tension * notNegative(input, 'layers', '')) / positive(input, 'radius', 'm');
}
