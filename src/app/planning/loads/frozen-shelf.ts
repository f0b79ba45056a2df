import { buildShelf } from '#app/planning/cutting/build-shelf.ts';
import { hasWall, theShelf, type WallShelf } from '#app/planning/wall/wall-model.ts';
import type { BuildHeader } from '#shared/record/build.ts';
import type { Plan } from '#shared/record/plan.ts';

/** Materials as a build froze them, whether its plan was drawn piece by piece or says only how many plies. */
export function frozenShelf(header: BuildHeader, plan: Plan): WallShelf {
  if (hasWall(plan)) return buildShelf(header, plan);
  return {
    cloth: (id) => (id === plan.cloth ? header.cloth : theShelf.cloth(id)),
    core: theShelf.core,
    release: (id) => (id === plan.release ? header.release : theShelf.release(id)),
    resin: (id) => (id === plan.resin ? header.resin : theShelf.resin(id)),
  };
}
