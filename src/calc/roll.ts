import { notNegative, positive } from './check.ts';

/**
 * Wraps that a width of cloth makes, rolled on a round core. Area is preserved: the cloth fills the
 * ring between core and outside.
 *
 * @param width of the cloth round the tube, m, at least 0
 * @param startDiameter of the core, m, greater than 0
 * @param plyThickness m, greater than 0
 * @returns wraps, with their fraction
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: w = pi N (D + N t), solved for N.
 * Source: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
 *
 * @example
 * // 500 mm of cloth at 0.3 mm a ply on a 38 mm mandrel: how many wraps?
 * wrapsForWidth({ width: 0.5, startDiameter: 0.038, plyThickness: 0.0003 })
 * // => 4.057
 */
export function wrapsForWidth(input: { width: number; startDiameter: number; plyThickness: number }): number {
  const perTurn = notNegative(input, 'width', 'm') / Math.PI;
  const core = positive(input, 'startDiameter', 'm');
  const ply = positive(input, 'plyThickness', 'm');
  // The root in the form that adds: subtracting two near equals would lose a thin ply.
  return (2 * perTurn) / (core + Math.sqrt(core * core + 4 * ply * perTurn));
}

/**
 * Width of cloth that makes so many wraps. The way back from `wrapsForWidth`.
 *
 * @param wraps at least 0, fractions allowed
 * @param startDiameter of the core, m, greater than 0
 * @param plyThickness m, greater than 0
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: w = pi N (D + N t).
 * Source: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
 *
 * @example
 * // How wide must the cloth be for 4 wraps at 0.3 mm a ply on a 38 mm mandrel?
 * widthForWraps({ wraps: 4, startDiameter: 0.038, plyThickness: 0.0003 })
 * // => 0.4926
 */
export function widthForWraps(input: { wraps: number; startDiameter: number; plyThickness: number }): number {
  const wraps = notNegative(input, 'wraps', 'wraps');
  const core = positive(input, 'startDiameter', 'm');
  return Math.PI * wraps * (core + wraps * positive(input, 'plyThickness', 'm'));
}
