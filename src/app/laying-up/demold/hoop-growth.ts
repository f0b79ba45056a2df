import { buildShelf, walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { clothOf, rollOf, type WalledPlan, type WallShelf } from '#app/planning/wall/wall-model.ts';
import { type HeatedPly, laminateExpansion } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import { hoopShrinkage, laminas } from '#shared/reference/laminas.ts';

/** What the wall does around the hoop when it cools, where it grips hardest. */
export interface HoopGrowth {
  /** 1/K */
  hoop: number;
  /** Share it shrinks after gel. */
  shrinkage: number;
  /** Of the mandrel there, m; undefined where the build does not say */
  diameter: number | undefined;
  /** Whether its pieces were looked at one by one, or its cloth was taken to lie along and around. */
  by: 'pieces' | 'cloth';
  /** 'carbon', 'carbon and glass' */
  fibers: string;
}

/** A degree of cooling that weighs growth against shrinkage: from a usual cure to a shop, K */
const usualCooling = 45;
const quarter = Math.PI / 2;

/** Fibers nearer to the axis than to the hoop leave the hoop to the resin. */
function isHeld({ weave }: Cloth, angle: number): boolean {
  return weave !== 'unidirectional' || Math.abs(Math.sin(angle)) > Math.SQRT1_2;
}

function pliesOf({ fiber, weave }: Cloth, angle: number, thickness: number): HeatedPly[] | undefined {
  const lamina = laminas[fiber];
  if (!lamina) return undefined;
  if (weave === 'unidirectional') return [{ ...lamina, angle, thickness }];
  return [angle, angle + quarter].map((a) => ({ ...lamina, angle: a, thickness: thickness / 2 }));
}

interface Laid {
  cloth: Cloth;
  angle: number;
  thickness: number;
}

function growthOf(laid: readonly Laid[]): { hoop: number; shrinkage: number } | undefined {
  const plies = laid.map((l) => pliesOf(l.cloth, l.angle, l.thickness));
  if (plies.length === 0 || plies.includes(undefined)) return undefined;
  const held = laid.some((l) => isHeld(l.cloth, l.angle));
  return {
    hoop: laminateExpansion(plies.flatMap((p) => p ?? [])).hoop,
    shrinkage: held ? hoopShrinkage.held : hoopShrinkage.across,
  };
}

const fibersOf = (laid: readonly Laid[]) => [...new Set(laid.map((l) => l.cloth.fiber))].join(' and ');
const tightness = ({ hoop, shrinkage }: { hoop: number; shrinkage: number }) =>
  shrinkage + hoop * usualCooling;

/** Along the tube, where it grips hardest. Core and film are too soft to count. */
function ofPieces(plan: WalledPlan, shelf: WallShelf): HoopGrowth | undefined {
  const roll = rollOf(plan, shelf, 0.02);
  let worst: HoopGrowth | undefined;
  for (let i = 0; i < roll.at.length; i += 1) {
    const laid = roll.pieces.flatMap((rolled, k) => {
      const piece = plan.wall.pieces[k];
      const cloth = piece && clothOf(plan, piece, shelf);
      const thickness = rolled.thickness[i] ?? 0;
      return cloth && thickness > 0 ? [{ cloth, angle: piece.angle, thickness }] : [];
    });
    if (laid.length === 0) continue;
    const found = growthOf(laid);
    if (!found) return undefined;
    if (worst && tightness(found) <= tightness(worst)) continue;
    worst = { ...found, by: 'pieces', fibers: fibersOf(laid), diameter: roll.diameter[i] };
  }
  return worst;
}

/** How a build's wall grows around the hoop; undefined for a fiber of which nothing is known. */
export function hoopGrowth(header: BuildHeader): HoopGrowth | undefined {
  const plan = walledPlanOf(header);
  try {
    if (plan) return ofPieces(plan, buildShelf(header, plan));
  } catch (error) {
    // A wall that cannot be rolled still has its cloth.
    if (!(error instanceof RangeError)) throw error;
  }
  const laid = [{ cloth: header.cloth, angle: 0, thickness: 1e-3 }];
  const found = growthOf(laid);
  return found && { ...found, by: 'cloth', fibers: fibersOf(laid), diameter: header.mandrelDiameter };
}
