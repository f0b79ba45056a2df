import { listOf, numberIn, positive } from '../check.ts';
import { beamColumn } from './beam-column.ts';
import { beamLine } from './beam-line.ts';
import { brazierMoment } from './brazier.ts';
import { firstPly } from './first-ply.ts';
import { reserveOf } from './reserve.ts';
import { sectionIn } from './section-in.ts';
import type { BeamLoad, BeamSolution, StationForces, Support, WallSection } from './types.ts';
import { wallBuckling } from './wall-buckling.ts';

export type CheckName = 'largest stress' | 'Tsai-Wu' | 'wall buckling' | 'ovalization' | 'column buckling';

/** `reserve` is how often the loads may grow, 1e6 at most; `margin` what is left of it by the safety factor, less 1. */
export type Margin = { readonly check: CheckName; readonly reserve: number; readonly margin: number };

export type StationMargins = {
  readonly at: number;
  readonly forces: StationForces;
  /** Without the two of strength where strengths are missing. */
  readonly margins: readonly Margin[];
  readonly least: Margin;
};

export type LoadCase = { readonly loads: readonly BeamLoad[]; readonly loadFactor: number };

export type CheckedCase = {
  readonly stations: readonly StationMargins[];
  readonly column: Margin;
  readonly amplification: number;
  /** As bent by the axial force too; without it where that is past buckling. */
  readonly solution: BeamSolution;
};

export type TubeChecks = {
  readonly cases: readonly CheckedCase[];
  /** The least of all cases at each station, and which case that is. */
  readonly stations: readonly { readonly at: number; readonly of: number; readonly least: Margin }[];
  /** False where a ply has no strengths: stiffness and buckling only. */
  readonly strengthsKnown: boolean;
};

export type TubeToCheck = {
  readonly stations: readonly { readonly at: number; readonly section: WallSection }[];
  readonly supports: readonly Support[];
  readonly cases: readonly LoadCase[];
  readonly safetyFactor: number;
  readonly freeLength: number;
};

/**
 * Every check at every station of a tube, for several load cases.
 *
 * @param stations `at` in m, two or more in order, with what `wallSection` gives there; it bends as it does most easily
 * @param supports as for `beamLine`
 * @param cases at least one; `loads` and `loadFactor` as for `beamLine`
 * @param safetyFactor at least 1
 * @param freeLength between what keeps the wall round, m, greater than 0; for buckling of the wall in torsion
 * @returns see `TubeChecks`
 * @throws RangeError naming the field
 *
 * Formula: margin = reserve/safetyFactor - 1; forces from `beamColumn`, so that the axial force's share of the moment
 * is in them; then `firstPly`, `wallBuckling`, `brazierMoment`.
 *
 * @example
 * // A pole of carbon along, 38 mm by 1.2 mm, held at its foot, 50 N at its tip 3 m out, twice safe. What rules there?
 * tubeChecks({
 *   stations: [0, 3].map((at) => ({
 *     at,
 *     section: wallSection({
 *       innerDiameter: 0.038,
 *       plies: [{
 *         e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0, thickness: 0.0012,
 *         strength: { xt: 1.1e9, xc: 5e8, yt: 3e7, yc: 1.2e8, s: 5e7 },
 *       }],
 *     }),
 *   })),
 *   supports: [{ kind: 'clamp', at: 0 }],
 *   cases: [{ loads: [{ kind: 'point', at: 3, force: 50 }], loadFactor: 1 }],
 *   safetyFactor: 2,
 *   freeLength: 3,
 * }).stations[0].least.check
 * // => 'wall buckling'
 */
export function tubeChecks(input: TubeToCheck): TubeChecks {
  const sections = listOf('stations', input.stations, 2).map(sectionIn);
  const safetyFactor = numberIn(input, 'safetyFactor', '', { from: 1 });
  positive(input, 'freeLength', 'm');
  const stations = input.stations.map(({ at }, k) => {
    const { eiLeast = 0, gj = 0 } = sections[k] ?? {};
    return { at, ei: eiLeast, gj };
  });
  const cases = listOf('cases', input.cases, 1).map((one, k) => {
    try {
      const beam = { stations, supports: input.supports, ...one };
      const { bucklingReserve, amplification, solution } = beamColumn(beam);
      const found = solution ?? beamLine(beam);
      return {
        stations: sections.map((section, i) =>
          marginsAt(section, found, stations[i]?.at ?? 0, input.freeLength, safetyFactor),
        ),
        column: marginOf('column buckling', bucklingReserve, safetyFactor),
        amplification,
        solution: found,
      };
    } catch (error) {
      throw inCase(error, k);
    }
  });
  return {
    cases,
    stations: stations.map(({ at }, i) => ({ at, ...leastOf(cases, i) })),
    strengthsKnown: sections.every(({ strengthsKnown }) => strengthsKnown),
  };
}

/** Says which case a load is in. */
function inCase(error: unknown, k: number): unknown {
  if (!(error instanceof RangeError)) return error;
  return /^load/.test(error.message) ? new RangeError(`cases[${k}].${error.message}`) : error;
}

function leastOf(cases: readonly CheckedCase[], i: number): { of: number; least: Margin } {
  let [of, least] = [0, cases[0]?.stations[i]?.least];
  cases.forEach(({ stations }, k) => {
    const own = stations[i]?.least;
    if (own && (!least || own.margin < least.margin)) [of, least] = [k, own];
  });
  return { of, least: least ?? marginOf('wall buckling', 1, 1) };
}

function marginsAt(
  section: WallSection,
  solution: BeamSolution,
  at: number,
  length: number,
  safetyFactor: number,
): StationMargins {
  const forces = forcesAt(solution, at);
  const { radius, laminate } = section;
  const ply = firstPly({ section, ...forces });
  const flat = brazierMoment({
    radius,
    axialStiffness: 1 / laminate.flexibility[0][0],
    hoopBending: laminate.d[1][1],
  });
  const margins = [
    ...(ply
      ? [
          marginOf('largest stress', ply.maxStress.reserve, safetyFactor),
          marginOf('Tsai-Wu', ply.tsaiWu.reserve, safetyFactor),
        ]
      : []),
    marginOf('wall buckling', wallBuckling({ section, length, ...forces }).reserve, safetyFactor),
    marginOf('ovalization', reserveOf(flat, forces.moment), safetyFactor),
  ];
  const least = margins.reduce((a, b) => (b.margin < a.margin ? b : a));
  return { at, forces, margins, least };
}

export function marginOf(check: CheckName, reserve: number, safetyFactor: number): Margin {
  return { check, reserve, margin: reserve / safetyFactor - 1 };
}

/** The most of each at a place, on either side of it; the axial force is the one that presses more. */
function forcesAt({ at, moment, shear, torque, axial }: BeamSolution, place: number): StationForces {
  const most = { moment: 0, shear: 0, torque: 0, axial: Number.POSITIVE_INFINITY };
  for (let i = 0; i < at.length; i += 1) {
    if (Math.abs((at[i] ?? 0) - place) > 1e-9) continue;
    if (Math.abs(moment[i] ?? 0) > Math.abs(most.moment)) most.moment = moment[i] ?? 0;
    if (Math.abs(shear[i] ?? 0) > Math.abs(most.shear)) most.shear = shear[i] ?? 0;
    if (Math.abs(torque[i] ?? 0) > Math.abs(most.torque)) most.torque = torque[i] ?? 0;
    most.axial = Math.min(most.axial, axial[i] ?? 0);
  }
  return { ...most, axial: Number.isFinite(most.axial) ? most.axial : 0 };
}
