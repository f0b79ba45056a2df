import type { WallShelf } from '#app/planning/wall/wall-model.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterCores } from '#shared/reference/starter-cores.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';

function from<T>(all: Record<string, T>): (id: string | undefined) => T | undefined {
  return (id) => (id === undefined ? undefined : all[id]);
}

/** The starters, looked up without a phone. */
export const starterWallShelf: WallShelf = {
  cloth: from(starterCloths),
  core: from(starterCores),
  release: from(starterReleases),
  resin: from(starterResins),
};
