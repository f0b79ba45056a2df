import { sectionAt } from '#app/planning/carry/sections-along.ts';
import type { Tube } from '#app/planning/carry/tube-of-plan.ts';
import { bondPeak, clampCrush, type WallSection } from '#calc';
import type { Fitting } from '#shared/record/load-plan.ts';

/** Reserves come out at this where nothing presses. */
const mostReserve = 1e6;

export type FittingCheck =
  | {
      fitting: Extract<Fitting, { kind: 'clamp' }>;
      /** Undefined where a cloth has no strengths. */
      margin: number | undefined;
      /** By how much the tube gets flatter, m */
      squeeze: number;
    }
  | {
      fitting: Extract<Fitting, { kind: 'bond' }>;
      margin: number;
      /** Shear in the glue, Pa */
      peak: number;
      average: number;
      /** More than this adds nothing, m */
      usefulLength: number;
    };

type Bond = Extract<Fitting, { kind: 'bond' }>;

/** Shear modulus over modulus of a metal, by a Poisson's ratio of 0.3 (common practice, no source). */
const shearShare = 1 / 2.6;

function bondUnder(bond: Bond, section: WallSection, by: 'force' | 'torque') {
  const { outsideDiameter, wallMean, radius, ea, gj, area } = section;
  const twists = by === 'torque';
  const shear = gj / (2 * Math.PI * radius ** 3 * wallMean);
  return bondPeak({
    force: twists ? ((bond.torque ?? 0) * 2) / outsideDiameter : bond.force,
    width: Math.PI * outsideDiameter,
    length: bond.length,
    inner: { e: twists ? shear : ea / area, thickness: wallMean },
    outer: { e: bond.modulus * (twists ? shearShare : 1), thickness: bond.wall },
    bondThickness: bond.glue,
    bondShearModulus: bond.shearModulus,
    shearStrength: bond.shearStrength,
  });
}

function bondCheck(bond: Bond, section: WallSection, safetyFactor: number): FittingCheck {
  const along = bondUnder(bond, section, 'force');
  const round = bondUnder(bond, section, 'torque');
  // Along and round the tube they lie square to each other, and peak at the same end.
  const peak = Math.hypot(along.peak, round.peak);
  const reserve = Math.min(mostReserve, bond.shearStrength / Math.max(peak, 1e-6));
  return {
    fitting: bond,
    margin: reserve / safetyFactor - 1,
    peak,
    average: Math.hypot(along.average, round.average),
    usefulLength: bond.torque ? Math.max(along.usefulLength, round.usefulLength) : along.usefulLength,
  };
}

/** What holds on to the wall, with the force that was written for it: no load factor is in it. */
export function fittingChecks(
  fittings: readonly Fitting[],
  tube: Tube,
  safetyFactor: number,
): FittingCheck[] {
  return fittings
    .filter(({ at }) => at <= tube.length)
    .map((fitting) => {
      const { section } = sectionAt(tube, fitting.at);
      if (fitting.kind === 'bond') return bondCheck(fitting, section, safetyFactor);
      const { reserve, squeeze } = clampCrush({ section, force: fitting.force, width: fitting.width });
      return { fitting, squeeze, margin: reserve === undefined ? undefined : reserve / safetyFactor - 1 };
    });
}
