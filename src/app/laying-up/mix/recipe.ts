import {
  cupsFor,
  fiberMassFraction,
  massRatioFromVolumeRatio,
  resinForCloth,
  stoichiometricPhr,
  timeAtTemperature,
} from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { ResinGoal } from '#shared/record/plan.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { lifeEnergy } from './resin-energy.ts';

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

/** The part of the data sheet's pot life that can be worked, s: at its own temperature, or at another. */
export function usableLife(resin: ResinSystem, temperature = resin.potLife.temperature): number {
  const { time, ends, temperature: at } = resin.potLife;
  const usable = ends === 'viscosityDoubled' ? time : usableOfGel * time;
  return timeAtTemperature({ time: usable, at, temperature, activationEnergy: lifeEnergy(resin).energy });
}

/** How long it can be worked spread in a film, s: as the data sheet says, else so many times the cup's own. */
export function filmLife(resin: ResinSystem, temperature: number): number {
  const { thinFilm } = resin;
  if (!thinFilm) return filmFactor * usableLife(resin, temperature);
  const { time, temperature: at } = thinFilm;
  return timeAtTemperature({ time, at, temperature, activationEnergy: lifeEnergy(resin).energy });
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
  /** What the resin is when it is mixed, K; the data sheet's own when not known */
  temperature?: number | undefined;
}

/** What to mix for a tube; a RangeError names what cannot be met: `lossPerCup`, `workingRate`, `largestCup`. */
export function recipe({ clothMass, cloth, resin, goal, extraKept = 0, temperature }: RecipeInput): Recipe {
  const share = resinShare(goal.fiberVolumeFraction, cloth, resin);
  const kept = resinForCloth({ clothMass, resinMassFraction: share }) + extraKept;
  const { cups, each, total } = cupsFor({
    kept,
    squeezeOutShare: goal.squeezeOut,
    lossPerCup: goal.lossPerCup,
    largestCup: resin.largestCup,
    ...(goal.workingRate !== undefined && {
      workingRate: goal.workingRate,
      usableLife: usableLife(resin, temperature),
    }),
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
