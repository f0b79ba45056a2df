import { estimatePlan, planMaterials } from '#app/planning/plans/plan-estimate.ts';
import { hasWall, masses, rollOf } from '#app/planning/wall/wall-model.ts';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { fiberMassFraction, resinForCloth, type TubeMass } from '#calc';
import type { Plan } from '#shared/record/plan.ts';
import type { Structure, StructurePart } from '#shared/record/structure.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import type { MadePart, PartFacts } from './reckon.ts';

function wallMass(plan: Plan): TubeMass | undefined {
  if (!hasWall(plan)) return undefined;
  try {
    return masses(plan, rollOf(plan));
  } catch (error) {
    // A wall that cannot be rolled is told where it is drawn.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** One tube of a plan, kg, and what its wall saves; undefined when its materials are gone. */
export function plannedOf(doc: string | undefined): { mass: number; saved: number } | undefined {
  const plan = findDoc('plan', doc)?.body;
  if (!plan) return undefined;
  const wall = wallMass(plan);
  if (wall) return { mass: wall.total, saved: wall.saved };
  const materials = planMaterials(plan);
  return materials && { mass: estimatePlan(plan, materials).tube, saved: 0 };
}

/** Resin in the tube over what its fiber volume wants, kg */
function resinOver(b: BuildSummary): number | undefined {
  if (b.curedMass === undefined) return undefined;
  const resin = b.curedMass - b.clothMass - (b.filmLeft ?? 0) - (b.core ?? 0);
  const { fiberDensity, resinDensity, wantedFiberVolume: fiberVolumeFraction, clothMass } = b;
  const fiber = fiberMassFraction({ fiberVolumeFraction, fiberDensity, resinDensity });
  return resin - resinForCloth({ clothMass, resinMassFraction: 1 - fiber });
}

export const titleOf = ({ name, number }: BuildSummary): string => `${name} no. ${number}`;

/** `typed`: what the builder says one of them is to weigh, which then holds for all. */
function madeOf(build: BuildSummary, typed: number | undefined): MadePart {
  const planned = typed ?? build.plannedMass;
  const over = resinOver(build);
  return {
    build: build.subject,
    title: titleOf(build),
    ...(build.trimmedMass !== undefined && { mass: build.trimmedMass }),
    ...(planned !== undefined && { planned }),
    ...(build.filmLeft !== undefined && { filmLeft: build.filmLeft }),
    ...(over !== undefined && { resinOver: over }),
  };
}

export function factsOf(part: StructurePart, builds: readonly BuildSummary[]): PartFacts {
  const plan = plannedOf(part.plan);
  const planned = part.planned ?? plan?.mass;
  return {
    part,
    ...(planned !== undefined && { planned }),
    made: builds.filter((b) => part.builds.includes(b.subject)).map((b) => madeOf(b, part.planned)),
    ...(plan && { saved: plan.saved }),
  };
}

export const allFacts = ({ parts }: Structure, builds: readonly BuildSummary[]): PartFacts[] =>
  parts.map((part) => factsOf(part, builds));

/** Where each build is counted: a build that two phones gave away twice stands in two. */
export function assignedTo(): Map<string, string[]> {
  const at = new Map<string, string[]>();
  for (const { doc, body } of docsOf('structure')) {
    for (const part of body.parts) {
      for (const build of part.builds) at.set(build, [...(at.get(build) ?? []), `${doc} ${part.id}`]);
    }
  }
  return at;
}

/** Good tubes of the part's plan that are in nothing yet, newest first. */
export function offeredTo(part: StructurePart, builds: readonly BuildSummary[]): BuildSummary[] {
  const taken = assignedTo();
  return builds.filter((b) => b.plan === part.plan && b.outcome === 'good' && !taken.has(b.subject));
}
