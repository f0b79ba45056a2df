import { type Recipe, recipe, resinShare } from '#app/laying-up/mix/recipe.ts';
import { findDoc } from '#app/state/documents.ts';
import { curedPlyThickness, resinForCloth } from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { Tape } from '#shared/record/tape.ts';

export interface PlanMaterials {
  cloth: Cloth;
  resin: ResinSystem;
  release: ReleaseSystem | undefined;
  tape: Tape | undefined;
}

/** The plan's materials as they stand on the shelf now; undefined when cloth or resin is gone. */
export function planMaterials(plan: Plan): PlanMaterials | undefined {
  const cloth = findDoc('cloth', plan.cloth)?.body;
  const resin = findDoc('resin', plan.resin)?.body;
  if (!cloth || !resin) return undefined;
  return {
    cloth,
    resin,
    release: findDoc('release', plan.release)?.body,
    tape: findDoc('tape', plan.tape)?.body,
  };
}

export function planClothMass(plan: Plan, cloth: Cloth): number {
  return plan.clothAmount.by === 'mass' ? plan.clothAmount.mass : plan.clothAmount.area * cloth.arealWeight;
}

export interface PlanEstimate {
  /** kg */
  cloth: number;
  kept: number;
  tube: number;
  resinShare: number;
  /** m */
  plyThickness: number;
  wall: number;
  /** Absent when the cups cannot be made to work. */
  recipe?: Recipe;
}

/** What a plan comes to, void-free, before anything is weighed. */
export function estimatePlan(plan: Plan, { cloth, resin }: PlanMaterials): PlanEstimate {
  const clothMass = planClothMass(plan, cloth);
  const share = resinShare(plan.goal.fiberVolumeFraction, cloth, resin);
  const kept = resinForCloth({ clothMass, resinMassFraction: share });
  const { arealWeight, fiberDensity } = cloth;
  const { fiberVolumeFraction } = plan.goal;
  const plyThickness =
    plan.plyThickness ?? curedPlyThickness({ arealWeight, fiberDensity, fiberVolumeFraction });
  const base = {
    cloth: clothMass,
    kept,
    tube: clothMass + kept,
    resinShare: share,
    plyThickness,
    wall: plyThickness * plan.plies,
  };
  try {
    return { ...base, recipe: recipe({ clothMass, cloth, resin, goal: plan.goal }) };
  } catch (error) {
    if (error instanceof RangeError) return base;
    throw error;
  }
}
