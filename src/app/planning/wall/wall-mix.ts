import { type Recipe, recipe } from '#app/laying-up/mix/recipe.ts';
import type { Roll } from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import { blendedCloth } from './blend.ts';
import { clothMasses } from './plan-with-wall.ts';
import { masses, rollOf, theShelf, type WalledPlan, type WallShelf } from './wall-model.ts';

interface WallCloth {
  /** All its cloths as one. */
  cloth: Cloth;
  /** kg, where the wall has a core */
  coreMass?: number;
  coreResin?: number;
}

function clothIn(plan: WalledPlan, roll: Roll, shelf: WallShelf): WallCloth | undefined {
  const mass = masses(plan, roll, shelf);
  if (!mass) return undefined;
  const parts = [...clothMasses(plan, mass)].flatMap(([id, dry]) => {
    const cloth = shelf.cloth(id);
    return cloth ? [{ cloth, mass: dry }] : [];
  });
  const cloth = blendedCloth(parts);
  const coreResin = roll.pieces.reduce(
    (sum, { spec }, i) => sum + (spec.kind === 'core' ? (mass.pieces[i]?.resin ?? 0) : 0),
    0,
  );
  return cloth && { cloth, ...(mass.core > 0 && { coreMass: mass.core, coreResin }) };
}

/** What a wall is mixed for; undefined when it cannot be rolled, or its resin is gone. */
export function wallCloth(plan: WalledPlan, shelf = theShelf): WallCloth | undefined {
  try {
    return clothIn(plan, rollOf(plan, shelf), shelf);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** What to mix for a wall of several cloths and cores; undefined when no cups can be made to work. */
export function wallRecipe(plan: WalledPlan, roll: Roll, shelf = theShelf): Recipe | undefined {
  const made = clothIn(plan, roll, shelf);
  const resin = shelf.resin(plan.resin);
  const clothMass = masses(plan, roll, shelf)?.cloth;
  if (!made || !resin || clothMass === undefined) return undefined;
  try {
    return recipe({ clothMass, cloth: made.cloth, resin, goal: plan.goal, extraKept: made.coreResin });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
