import { hasWall, theShelf, type WalledPlan, type WallShelf } from '#app/planning/wall/wall-model.ts';
import type { BuildHeader } from '#shared/record/build.ts';
import { planOfBuild } from './plan-of-build.ts';

/** The plan of a build, where it was drawn piece by piece. */
export function walledPlanOf(header: BuildHeader): WalledPlan | undefined {
  const plan = planOfBuild(header);
  return plan && hasWall(plan) ? plan : undefined;
}

/**
 * Materials as the build froze them; what it did not freeze one by one, as the shelf has them now. A wall of several
 * cloths froze one that stands for all of them, which is none of them.
 */
export function buildShelf(header: BuildHeader, plan: WalledPlan): WallShelf {
  const cloths = plan.wall.pieces.filter((p) => p.kind === 'cloth').map((p) => p.material ?? plan.cloth);
  const only = new Set(cloths).size === 1 ? cloths[0] : undefined;
  return {
    cloth: (id) => (id !== undefined && id === only ? header.cloth : theShelf.cloth(id)),
    core: theShelf.core,
    release: (id) => (id === plan.release ? header.release : theShelf.release(id)),
    resin: (id) => (id === plan.resin ? header.resin : theShelf.resin(id)),
  };
}
