import type { Roll, TubeMass } from '#calc';
import { masses, rollOf, theShelf, type WalledPlan } from './wall-model.ts';

/** Dry cloth of each kind in a wall, kg by the cloth's id, heaviest first. */
export function clothMasses(plan: WalledPlan, mass: TubeMass): Map<string, number> {
  const sums = new Map<string, number>();
  plan.wall.pieces.forEach((piece, i) => {
    if (piece.kind !== 'cloth') return;
    const id = piece.material ?? plan.cloth;
    sums.set(id, (sums.get(id) ?? 0) + (mass.pieces[i]?.dry ?? 0));
  });
  return new Map([...sums].sort(([, a], [, b]) => b - a));
}

/** Plies of cloth wanted at each sample, whatever else lies between them. */
export function clothPlies(roll: Roll): Float64Array {
  const plies = new Float64Array(roll.at.length);
  for (const piece of roll.pieces) {
    if (piece.spec.kind !== 'cloth') continue;
    for (let i = 0; i < plies.length; i += 1) plies[i] = (plies[i] ?? 0) + (piece.plies[i] ?? 0);
  }
  return plies;
}

/**
 * The plan with what follows from its wall: amount of cloth, plies at the thickest, bare diameter at end 0 and
 * the cloth there is most of, so that recipe, start and build need not know of walls.
 *
 * @throws RangeError when the wall cannot be rolled
 */
export function planWithWall(plan: WalledPlan, shelf = theShelf): WalledPlan {
  const roll = rollOf(plan, shelf);
  const mass = masses(plan, roll, shelf);
  const [main = plan.cloth] = mass ? clothMasses(plan, mass).keys() : [];
  const plies = clothPlies(roll).reduce((most, n) => Math.max(most, n), 0);
  return {
    ...plan,
    cloth: main,
    mandrelDiameter: (roll.diameter[0] ?? 0) - (shelf.release(plan.release)?.buildUp ?? 0),
    ...(mass && mass.cloth > 0 && { clothAmount: { by: 'mass', mass: mass.cloth } }),
    ...(plies > 0 && { plies: Number(plies.toFixed(6)) }),
  };
}
