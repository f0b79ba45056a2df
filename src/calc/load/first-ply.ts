import type { Matrix3, Row3 } from '../laminate.ts';
import { times3 } from './matrix.ts';
import { inPly, largestStress, type PlyMode, type PlyStress, tsaiWu } from './ply-reserve.ts';
import { MOST_RESERVE } from './reserve.ts';
import { forcesIn, sectionIn } from './section-in.ts';
import type { PlyStrength, StationForces, WallPly, WallSection } from './types.ts';

/** Places round the tube that are looked at; between two of them no more than 0.9 % is missed. */
const AROUND = 24;

/** Where the first ply gives: its number, the angle round the tube from the pulled side, its stress. */
export type FirstPlace = {
  readonly reserve: number;
  readonly ply: number;
  readonly around: number;
  readonly stress: PlyStress;
};

export type FirstPly = {
  readonly maxStress: FirstPlace & { readonly mode: PlyMode };
  readonly tsaiWu: FirstPlace;
  /** Most round the tube, N/m: along it, pulled and pressed, and in shear */
  readonly pulled: number;
  readonly pressed: number;
  readonly shearFlow: number;
};

/** Stress in a ply's own directions for 1 N/m along the tube, and for 1 N/m of shear. */
type Unit = { ply: number; strength: PlyStrength; along: PlyStress; shear: PlyStress };

/**
 * How many times what acts at a station may grow until the first ply gives, anywhere round the tube, the wall taken as
 * thin all round as where it is thinnest.
 *
 * @param section what `wallSection` gives
 * @param moment N m
 * @param shear N
 * @param torque N m
 * @param axial N, pulled is positive
 * @returns see `FirstPly`; undefined where a ply has no strengths. Reserves are without a safety factor and 1e6 at most
 * @throws RangeError naming the field
 *
 * Formula: N = axial/(2 pi R) + M cos(a)/(pi R^2), q = V sin(a)/(pi R) + T/(2 pi R^2), R to the middle of the wall; the
 * wall stays round; ply stresses by classical lamination theory. For walls up to a tenth of R: off by t/(2 R).
 * Source: Gere, thin-walled tubes; Kaw, section 4.3, without curvature.
 *
 * @example
 * // 150 N m on a 38 mm tube of 1.2 mm carbon along. How many times as much by the largest stress?
 * firstPly({
 *   section: wallSection({
 *     innerDiameter: 0.038,
 *     plies: [{
 *       e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0, thickness: 0.0012,
 *       strength: { xt: 1.1e9, xc: 5e8, yt: 3e7, yc: 1.2e8, s: 5e7 },
 *     }],
 *   }),
 *   moment: 150,
 *   shear: 0,
 *   torque: 0,
 *   axial: 0,
 * }).maxStress.reserve
 * // => 4.827
 */
export function firstPly(input: StationForces & { section: WallSection }): FirstPly | undefined {
  const { laminate, radius } = sectionIn(input);
  const { moment, shear, torque, axial } = forcesIn(input);
  const units = unitsOf(laminate.plies, laminate.flexibility);
  if (!units) return undefined;
  const even = axial / (2 * Math.PI * radius);
  const bent = moment / (Math.PI * radius * radius);
  const sheared = shear / (Math.PI * radius);
  const twisted = torque / (2 * Math.PI * radius * radius);
  const none = {
    reserve: MOST_RESERVE,
    ply: units[0]?.ply ?? 0,
    around: 0,
    stress: { s1: 0, s2: 0, s12: 0 },
  };
  let most: FirstPly['maxStress'] = { ...none, mode: 'shear' };
  let wu: FirstPlace = none;
  for (let k = 0; k < AROUND; k += 1) {
    const around = (2 * Math.PI * k) / AROUND;
    const along = even + bent * Math.cos(around);
    const flow = twisted + sheared * Math.sin(around);
    for (const unit of units) {
      const stress = stressOf(unit, along, flow);
      const { maxStress, mode } = largestStress(stress, unit.strength);
      if (maxStress < most.reserve) most = { reserve: maxStress, ply: unit.ply, around, stress, mode };
      const reserve = tsaiWu(stress, unit.strength);
      if (reserve < wu.reserve) wu = { reserve, ply: unit.ply, around, stress };
    }
  }
  return {
    maxStress: most,
    tsaiWu: wu,
    pulled: Math.max(0, even + Math.abs(bent)),
    pressed: Math.max(0, Math.abs(bent) - even),
    shearFlow: Math.abs(twisted) + Math.abs(sheared),
  };
}

/** Plies that bear alike are looked at once. */
function unitsOf(plies: readonly WallPly[], flexibility: Matrix3): Unit[] | undefined {
  const [pull, , flow] = flexibility;
  const units: (Unit & { readonly of: WallPly })[] = [];
  for (const one of plies) {
    const { ply, stiffness, angle, strength } = one;
    if (!strength) return undefined;
    if (units.some(({ of }) => bearsAs(of, one))) continue;
    const unit = (strain: Row3): PlyStress => inPly(...times3(stiffness, strain), angle);
    units.push({ ply, strength, along: unit(pull), shear: unit(flow), of: one });
  }
  return units;
}

function bearsAs(one: WallPly, other: WallPly): boolean {
  if (one.stiffness === other.stiffness && one.strength === other.strength) return true;
  const [a, b] = [one.strength, other.strength];
  return (
    one.angle === other.angle &&
    one.stiffness.every((row, i) => row.every((value, j) => value === other.stiffness[i]?.[j])) &&
    a?.xt === b?.xt &&
    a?.xc === b?.xc &&
    a?.yt === b?.yt &&
    a?.yc === b?.yc &&
    a?.s === b?.s
  );
}

function stressOf({ along, shear }: Unit, pull: number, flow: number): PlyStress {
  return {
    s1: along.s1 * pull + shear.s1 * flow,
    s2: along.s2 * pull + shear.s2 * flow,
    s12: along.s12 * pull + shear.s12 * flow,
  };
}
