import { notNegative, positive } from '../check.ts';
import type { Row3 } from '../laminate.ts';
import { inverse3, times3 } from './matrix.ts';
import { inPly, largestStress, type PlyMode } from './ply-reserve.ts';
import { MOST_RESERVE } from './reserve.ts';
import { sectionIn } from './section-in.ts';
import type { WallSection } from './types.ts';
import { PINCHED } from './wall-section.ts';

export type ClampCrush = {
  /** Without a safety factor, 1e6 at most; undefined where a ply has no strengths */
  readonly reserve: number | undefined;
  readonly mode: PlyMode | undefined;
  /** By how much the tube gets flatter, m */
  readonly squeeze: number;
};

/**
 * A tube pressed from two sides by a clamp, a rib or a finger: the wall as a ring that only the pressed width holds.
 *
 * @param section what `wallSection` gives
 * @param force that presses on each side, N, at least 0
 * @param width that it presses on, along the tube, m, greater than 0; the wall beside it is not counted on
 * @returns see `ClampCrush`
 * @throws RangeError naming the field
 *
 * Formula: moment in the wall F R/pi where it is pressed, F R (1/2 - 1/pi) the other way at the sides with F/2 round
 * the ring; squeeze (pi/4 - 2/pi) F R^3/D22, F for each m of width. Ply stress by classical lamination theory, largest
 * stress.
 * Source: Roark, Formulas for Stress and Strain, circular rings; Kaw, section 4.3.
 *
 * @example
 * // 200 N over 50 mm of a 38 mm tube of 1.2 mm carbon along. How much flatter?
 * clampCrush({
 *   section: wallSection({
 *     innerDiameter: 0.038,
 *     plies: [{ e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0, thickness: 0.0012 }],
 *   }),
 *   force: 200,
 *   width: 0.05,
 * }).squeeze
 * // => 0.004122
 */
export function clampCrush(input: { section: WallSection; force: number; width: number }): ClampCrush {
  const { laminate, radius } = sectionIn(input);
  const running = notNegative(input, 'force', 'N') / positive(input, 'width', 'm');
  const squeeze = (PINCHED * running * radius ** 3) / laminate.d[1][1];
  const states = [
    { bend: (running * radius) / Math.PI, around: 0 },
    { bend: -running * radius * (0.5 - 1 / Math.PI), around: -running / 2 },
  ];
  let reserve = MOST_RESERVE;
  let mode: PlyMode | undefined;
  const soft = inverse3(laminate.d);
  for (const { bend, around } of states) {
    const curved: Row3 = [-soft[0][1] * bend, -soft[1][1] * bend, -soft[2][1] * bend];
    const pulled = times3(laminate.b, curved);
    const even = times3(laminate.flexibility, [-pulled[0], around - pulled[1], -pulled[2]]);
    for (const { stiffness, angle, thickness, middle, strength } of laminate.plies) {
      if (!strength) return { reserve: undefined, mode: undefined, squeeze };
      for (const z of [middle - thickness / 2, middle + thickness / 2]) {
        const strain: Row3 = [even[0] + z * curved[0], even[1] + z * curved[1], even[2] + z * curved[2]];
        const found = largestStress(inPly(...times3(stiffness, strain), angle), strength);
        if (found.maxStress < reserve) [reserve, mode] = [found.maxStress, found.mode];
      }
    }
  }
  return { reserve, mode, squeeze };
}
