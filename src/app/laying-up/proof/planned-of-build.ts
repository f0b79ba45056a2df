import { sectionsAlong } from '#app/planning/carry/sections-along.ts';
import { tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { frozenShelf } from '#app/planning/loads/frozen-shelf.ts';
import { caseOf, supportsOfPlan } from '#app/planning/loads/of-plan.ts';
import type { WallShelf } from '#app/planning/wall/wall-model.ts';
import { type BeamSolution, beamColumn, beamLine } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import type { LoadCase, LoadPlan } from '#shared/record/load-plan.ts';
import type { Plan } from '#shared/record/plan.ts';
import { beamStations, mostBent, type PlannedTube } from './bend.ts';

/** A tube under one of its load cases, that case's load factor in it. */
export interface Design {
  name: string;
  solution: BeamSolution;
}

/** What a build's plan says of it, as far as it says it. */
export interface PlannedOfBuild {
  tube: PlannedTube | undefined;
  /** Under the load case that bends it most. */
  design: Design | undefined;
  /** Stiffness of this shop that the plan counted on; the tube here is without it. */
  counted: number;
}

function designOf(tube: PlannedTube, loads: LoadPlan, one: LoadCase): Design[] {
  const asked = caseOf(one);
  if (!asked) return [];
  const beam = { stations: beamStations(tube), supports: supportsOfPlan(loads), ...asked };
  try {
    return [{ name: one.name, solution: beamColumn(beam).solution ?? beamLine(beam) }];
  } catch (error) {
    // Loads that cannot be reckoned are said on their own screen; the tube can be tested all the same.
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** The load case that bends it most; none where nothing bends it. */
function hardest(tube: PlannedTube, loads: LoadPlan): Design | undefined {
  const most = ({ solution }: Design) => mostBent(solution).moment;
  return loads.cases
    .flatMap((one) => designOf(tube, loads, one))
    .filter((design) => most(design) > 0)
    .reduce<Design | undefined>((a, b) => (a && most(a) >= most(b) ? a : b), undefined);
}

/** By the figures of its cloths alone: were the shop's stiffness in it, what is learned of that would feed on itself. */
export function plannedOf({ stiffness, ...plan }: Plan, shelf: WallShelf): PlannedOfBuild {
  const counted = stiffness?.factor ?? 1;
  const found = tubeOfPlan(plan, shelf);
  if (!found.ok) return { tube: undefined, design: undefined, counted };
  const tube = { length: found.tube.length, stations: sectionsAlong(found.tube) };
  return { tube, design: plan.loads && hardest(tube, plan.loads), counted };
}

/** The tube as its plan said when the build was started. */
export function plannedOfBuild(header: BuildHeader): PlannedOfBuild {
  const plan = planOfBuild(header);
  return plan
    ? plannedOf(plan, frozenShelf(header, plan))
    : { tube: undefined, design: undefined, counted: 1 };
}
