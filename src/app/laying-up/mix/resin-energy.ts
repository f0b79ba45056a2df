import { fitActivation, type TimePoint } from '#calc';
import type { ResinSystem } from '#shared/record/resin-system.ts';

/** Where a data sheet gives one pot life only: middle of what epoxy and amine show (Sbirrazzuoli 2006, 55 to 60). */
export const assumedEnergy = 55_000;
/** Outside of these one of the points is likely a slip, J/mol (common practice, no source). */
export const usualEnergies = { from: 40_000, to: 90_000 };
/** What a cup can be reckoned with at all, J/mol */
const usable = { from: 20_000, to: 120_000 };

export interface FittedEnergy {
  /** J/mol */
  energy: number;
  /** Share by which the points stray from the line. */
  residual: number;
  /** 1 where it is assumed. */
  points: number;
}

/** An activation energy from points of one kind; nothing while they do not give one. */
export function energyOf(points: readonly TimePoint[]): FittedEnergy | undefined {
  if (new Set(points.map((p) => p.temperature)).size < 2) return undefined;
  return fitActivation(points);
}

/** Pot lives of the mass and the end that the first has: only they differ by temperature alone. */
export function lifePoints({ potLife, morePotLives = [] }: ResinSystem): TimePoint[] {
  const same = morePotLives.filter(
    (p) => p.ends === potLife.ends && Math.abs(p.mass / potLife.mass - 1) < 0.02,
  );
  return [potLife, ...same];
}

/** How the pot life of this resin follows temperature, from its own points where they make sense. */
export function lifeEnergy(resin: ResinSystem): FittedEnergy {
  const fitted = energyOf(lifePoints(resin));
  const fits = fitted && fitted.energy >= usable.from && fitted.energy <= usable.to;
  return fits ? fitted : { energy: assumedEnergy, residual: 0, points: 1 };
}
