import { notNegative, positive } from './check.ts';

/**
 * Section of a round tube, exact for any wall.
 *
 * @param innerDiameter m, at least 0; 0 is a solid bar
 * @param wall m, greater than 0
 * @returns `area` m2; `i`, second moment of area about a diameter, m4; `j`, polar, m4
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: A = pi (Do^2 - Di^2)/4, I = pi (Do^4 - Di^4)/64, J = 2 I.
 * Source: Gere and Timoshenko, Mechanics of Materials, appendix on plane areas.
 *
 * @example
 * // A 38 mm bore with a 1.25 mm wall: what section?
 * tubeSection({ innerDiameter: 0.038, wall: 0.00125 })
 * // => { area: 0.0001541, i: 2.972e-8, j: 5.945e-8 }
 */
export function tubeSection(input: { innerDiameter: number; wall: number }): {
  area: number;
  i: number;
  j: number;
} {
  const inner = notNegative(input, 'innerDiameter', 'm');
  const wall = positive(input, 'wall', 'm');
  const outer = inner + 2 * wall;
  // Factored: the difference of two fourth powers loses its digits in a thin wall.
  const area = Math.PI * wall * (inner + wall);
  const i = (area * (outer * outer + inner * inner)) / 16;
  return { area, i, j: 2 * i };
}
