import { type Recipe, recipe } from '#app/mix/recipe.ts';
import type { Roll, TubeMass } from '#calc';
import { blendedCloth } from './blend.ts';
import { clothMasses } from './plan-with-wall.ts';
import { masses, theShelf, type WalledPlan } from './wall-model.ts';

/** Resin that core faces of a wall keep, kg */
export function coreResin(roll: Roll, mass: TubeMass): number {
  return roll.pieces.reduce(
    (sum, { spec }, i) => sum + (spec.kind === 'core' ? (mass.pieces[i]?.resin ?? 0) : 0),
    0,
  );
}

/** What to mix for a wall of several cloths and cores; undefined when no cups can be made to work. */
export function wallRecipe(plan: WalledPlan, roll: Roll, shelf = theShelf): Recipe | undefined {
  const mass = masses(plan, roll, shelf);
  const resin = shelf.resin(plan.resin);
  if (!mass || !resin) return undefined;
  const parts = [...clothMasses(plan, mass)].flatMap(([id, dry]) => {
    const cloth = shelf.cloth(id);
    return cloth ? [{ cloth, mass: dry }] : [];
  });
  const cloth = blendedCloth(parts);
  if (!cloth) return undefined;
  try {
    const extraKept = coreResin(roll, mass);
    return recipe({ clothMass: mass.cloth, cloth, resin, goal: plan.goal, extraKept });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
