import { wallCloth } from '#app/planning/wall/wall-mix.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { fiberMassFraction, massRatioFromVolumeRatio, resinForCloth, stoichiometricPhr } from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { Body } from '#shared/record/revision.ts';
import { fromShelf, weighedCloth, weighedDoc } from './shelf.ts';
import { wallShelf } from './walls.ts';

export interface Materials {
  cloth: Cloth;
  resin: ResinSystem;
  release: Body<'release'>;
  tape: Body<'tape'>;
  checklist: Body<'checklist'>;
}

/** The plan's cloth, or all those of its wall as one. */
function clothOf(plan: Plan): Cloth {
  const made = hasWall(plan) ? wallCloth(plan, wallShelf)?.cloth : undefined;
  return made ?? (plan.cloth === weighedDoc ? weighedCloth : fromShelf('cloth', plan.cloth));
}

/** What a plan names, as it stands on the demo's shelf. */
export function materialsOf(plan: Plan): Materials {
  const { release = '', tape = '' } = plan;
  return {
    cloth: clothOf(plan),
    resin: fromShelf('resin', plan.resin),
    release: fromShelf('release', release),
    tape: fromShelf('tape', tape),
    checklist: fromShelf('checklist', plan.checklist),
  };
}

export function hardenerPerResin({ ratio, resinDensity, hardenerDensity }: ResinSystem): number {
  switch (ratio.by) {
    case 'weight':
      return ratio.phr / 100;
    case 'volume':
      return massRatioFromVolumeRatio({ ...ratio, resinDensity, hardenerDensity });
    case 'equivalents': {
      const { amineHydrogen, epoxide } = ratio;
      return (
        stoichiometricPhr({
          amineHydrogenEquivalentWeight: amineHydrogen,
          epoxideEquivalentWeight: epoxide,
        }) / 100
      );
    }
  }
}

/** Resin that the plan's fiber volume leaves in the part, kg. */
export function resinWanted(clothMass: number, { goal }: Plan, { cloth, resin }: Materials): number {
  const fiber = fiberMassFraction({
    fiberVolumeFraction: goal.fiberVolumeFraction,
    fiberDensity: cloth.fiberDensity,
    resinDensity: resin.curedDensity,
  });
  return resinForCloth({ clothMass, resinMassFraction: 1 - fiber });
}
