import {
  cupsFor,
  fiberMassFraction,
  massRatioFromVolumeRatio,
  resinForCloth,
  stoichiometricPhr,
} from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { ResinGoal } from '#shared/record/plan.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';

/** Of a pot life that ends with gel or peak exotherm, this share can be worked (common practice, no source). */
const usableOfGel = 0.65;

/** How much longer resin lasts spread in a film than in its cup, to start with (common practice, no source). */
export const filmFactor = 2;

/** kg of hardener to 1 kg of resin, however the data sheet states it. */
export function hardenerPerResin({
  ratio,
  resinDensity,
  hardenerDensity,
}: Pick<ResinSystem, 'ratio' | 'resinDensity' | 'hardenerDensity'>): number {
  switch (ratio.by) {
    case 'weight':
      return ratio.phr / 100;
    case 'volume':
      return massRatioFromVolumeRatio({ ...ratio, resinDensity, hardenerDensity });
    case 'equivalents':
      return (
        stoichiometricPhr({
          amineHydrogenEquivalentWeight: ratio.amineHydrogen,
          epoxideEquivalentWeight: ratio.epoxide,
        }) / 100
      );
  }
}

/** The part of the pot life that can be worked, s */
export function usableLife({ potLife }: ResinSystem): number {
  return potLife.ends === 'viscosityDoubled' ? potLife.time : usableOfGel * potLife.time;
}

/** Resin as a share of resin and cloth, for a fiber volume wanted. */
export function resinShare(fiberVolumeFraction: number, cloth: Cloth, resin: ResinSystem): number {
  return (
    1 -
    fiberMassFraction({
      fiberVolumeFraction,
      fiberDensity: cloth.fiberDensity,
      resinDensity: resin.curedDensity,
    })
  );
}

export interface Recipe {
  /** Resin that stays in the part, kg */
  kept: number;
  /** Mixed resin in all, kg */
  total: number;
  cups: number;
  /** Of each part, in every cup, kg */
  each: { resin: number; hardener: number; total: number };
  /** Resin as a share of resin and cloth in the cured wall. */
  resinShare: number;
}

export interface RecipeInput {
  clothMass: number;
  cloth: Cloth;
  resin: ResinSystem;
  goal: ResinGoal;
  /** Stays in the part besides what the cloth keeps: drunk by the faces of a core, kg */
  extraKept?: number | undefined;
}

/** What to mix for a tube; a RangeError names what cannot be met: `lossPerCup`, `workingRate`, `largestCup`. */
export function recipe({ clothMass, cloth, resin, goal, extraKept = 0 }: RecipeInput): Recipe {
  const share = resinShare(goal.fiberVolumeFraction, cloth, resin);
  const kept = resinForCloth({ clothMass, resinMassFraction: share }) + extraKept;
  const { cups, each, total } = cupsFor({
    kept,
    squeezeOutShare: goal.squeezeOut,
    lossPerCup: goal.lossPerCup,
    largestCup: resin.largestCup,
    ...(goal.workingRate !== undefined && { workingRate: goal.workingRate, usableLife: usableLife(resin) }),
  });
  const ratio = hardenerPerResin(resin);
  const resinEach = each / (1 + ratio);
  return {
    kept,
    total,
    cups,
    each: { resin: resinEach, hardener: each - resinEach, total: each },
    resinShare: share,
  };
}
