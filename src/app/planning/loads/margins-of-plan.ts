import { type SectionAt, sectionsAlong } from '#app/planning/carry/sections-along.ts';
import { type Tube, tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { keptBy } from '#app/planning/wall/kept-by.ts';
import { theShelf } from '#app/planning/wall/wall-model.ts';
import { type BeamSolution, beamColumn, beamLine, type TubeChecks, tubeChecks } from '#calc';
import type { LoadCase, LoadPlan } from '#shared/record/load-plan.ts';
import type { Plan } from '#shared/record/plan.ts';
import { type FittingCheck, fittingChecks } from './fitting-checks.ts';
import { caseOf, casesOfPlan, supportsOfPlan } from './of-plan.ts';
import type { Trouble } from './troubles.ts';
import { troublesOf } from './troubles-of.ts';

/** A plan's tube checked under all its load cases. */
export interface CheckedPlan {
  tube: Tube;
  loads: LoadPlan;
  safetyFactor: number;
  sections: readonly SectionAt[];
  /** Cases and stations in the order of `loads.cases` and `sections`. */
  checks: TubeChecks;
  fittings: readonly FittingCheck[];
}

/** Besides the stations of wall and mandrel: so many that margins are drawn, and reckoned within a frame. */
const places = 25;

export type MarginsOfPlan = { ok: true; checked: CheckedPlan } | { ok: false; troubles: readonly Trouble[] };

/** Whatever else the computation refuses: figures far apart, of which each alone would do. */
const beyond = (doc: string): Trouble => ({
  says: 'These loads and this wall are too far apart to be reckoned together: check their figures and units.',
  to: `/plan/${doc}/loads`,
  act: 'Look at the loads',
});

function checkedOf(tube: Tube, loads: LoadPlan): CheckedPlan | undefined {
  const cases = casesOfPlan(loads);
  const { safetyFactor, freeLength = tube.length, fittings = [] } = loads;
  if (!cases || safetyFactor === undefined) return undefined;
  const sections = sectionsAlong(tube, places);
  const supports = supportsOfPlan(loads);
  const checks = tubeChecks({ stations: sections, supports, cases, safetyFactor, freeLength });
  return {
    tube,
    loads,
    safetyFactor,
    sections,
    checks,
    fittings: fittingChecks(fittings, tube, safetyFactor),
  };
}

/** Margins of a plan's tube, or what keeps it from being checked. Kept until its loads or its tube change. */
export function marginsOfPlan(doc: string, plan: Plan, shelf = theShelf): MarginsOfPlan {
  const troubles = troublesOf(doc, plan, shelf);
  const found = tubeOfPlan(plan, shelf);
  const { loads } = plan;
  if (troubles.length > 0 || !found.ok || !loads) return { ok: false, troubles };
  try {
    const checked = keptBy(found.tube, 'margins', [loads], () => checkedOf(found.tube, loads));
    return checked ? { ok: true, checked } : { ok: false, troubles: [beyond(doc)] };
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, troubles: [beyond(doc)] };
    throw error;
  }
}

/** Of one case along the tube, bent by what presses it too; past buckling, as if that did not bend it. */
export interface CaseLines {
  solution: BeamSolution;
  buckles: boolean;
}

/** Shear, moment and the rest of one case along the tube; undefined where it cannot be reckoned. */
export function linesOf(plan: Plan, one: LoadCase, shelf = theShelf): CaseLines | undefined {
  const found = tubeOfPlan(plan, shelf);
  const { loads } = plan;
  const asked = caseOf(one);
  if (!found.ok || !loads || !asked) return undefined;
  const { tube } = found;
  try {
    return keptBy(tube, `lines ${one.id}`, [loads], () => {
      const stations = sectionsAlong(tube, places).map(({ at, section: { eiLeast: ei, gj } }) => ({
        at,
        ei,
        gj,
      }));
      const beam = { stations, supports: supportsOfPlan(loads), ...asked };
      const { solution } = beamColumn(beam);
      return { solution: solution ?? beamLine(beam), buckles: solution === undefined };
    });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
