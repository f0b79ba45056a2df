import { notNegative, numberIn, positive } from '../check.ts';
import { pliesOn, widthOn } from './piece-curve.ts';

/**
 * Plies, cloth width and wall of one piece at one station, from any one of them.
 *
 * @param startDiameter what it is rolled on, m, greater than 0
 * @param thickness of one ply, m, greater than 0
 * @param overlap m, at least 0, measured on the outside
 * @param plies wanted everywhere, greater than 0; or
 * @param width of the cloth, overlap and all, m, greater than the overlap; or
 * @param wall m, greater than 0
 * @returns `plies` with their fraction, `width` m, `wall` m
 * @throws RangeError naming the field; when not exactly one of the three is given
 *
 * Formula: w = pi n (D + n t) + overlap; wall n t.
 * Source: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
 *
 * @example
 * // 4 plies of 0.3 mm everywhere on a 38 mm mandrel, 15 mm to lap. What width, what wall?
 * stationValues({ startDiameter: 0.038, thickness: 0.0003, overlap: 0.015, plies: 4 })
 * // => { plies: 4, width: 0.5076, wall: 0.0012 }
 */
export function stationValues(input: {
  startDiameter: number;
  thickness: number;
  overlap: number;
  plies?: number | undefined;
  width?: number | undefined;
  wall?: number | undefined;
}): { plies: number; width: number; wall: number } {
  const startDiameter = positive(input, 'startDiameter', 'm');
  const thickness = positive(input, 'thickness', 'm');
  const overlap = notNegative(input, 'overlap', 'm');
  const given = (['plies', 'width', 'wall'] as const).filter((by) => input[by] !== undefined);
  const by = given[0];
  if (by === undefined || given.length > 1) {
    throw new RangeError(
      `plies, width or wall must be given, exactly one of them, got ${given.join(' and ') || 'none'}`,
    );
  }
  const asked = numberIn(input, by, by === 'plies' ? 'plies' : 'm', { above: by === 'width' ? overlap : 0 });
  const piece = { by: by === 'plies' ? 'wraps' : by, thickness, overlap } as const;
  const plies = pliesOn(piece, startDiameter, asked);
  return { plies, width: widthOn(piece, startDiameter, plies, asked), wall: plies * thickness };
}
