import { planWithWall } from '#app/planning/wall/plan-with-wall.ts';
import type { WalledPlan, WallShelf } from '#app/planning/wall/wall-model.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Core } from '#shared/record/core.ts';
import type { Piece, ShapeRecord } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterCores } from '#shared/reference/starter-cores.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';

const of = <T>(list: object, id: string | undefined): T | undefined => (list as Record<string, T>)[id ?? ''];

/** The shelf as it comes. */
export const shelf: WallShelf = {
  cloth: (id) => of<Cloth>(starterCloths, id),
  core: (id) => of<Core>(starterCores, id),
  release: (id) => of<ReleaseSystem>(starterReleases, id),
  resin: (id) => of<ResinSystem>(starterResins, id),
};

export const carbon = 'starter-cloth-carbon-plain-193';
export const aramid = 'starter-cloth-aramid-170';

/** Stations as pairs of place and value. */
export const shape = (
  pairs: readonly (readonly [number, number])[],
  between: ShapeRecord['between'] = 'straight',
): ShapeRecord => ({ between, stations: pairs.map(([at, value]) => ({ at, value })) });

/** 3 plies, 6 at the partners, 2 at the head. */
export const lowerMastPlies = shape([
  [0, 3],
  [0.5, 3],
  [0.56, 6],
  [0.8, 6],
  [1.4, 3],
  [2.4, 2],
]);

let count = 0;

export function pieceOf(plies: ShapeRecord, change: Partial<Piece> = {}): Piece {
  count += 1;
  return {
    id: `piece-${count}`,
    name: `Piece ${count}`,
    kind: 'cloth',
    material: carbon,
    shape: { by: 'plies', plies },
    start: 0,
    clock: 0,
    angle: 0,
    overlap: 0,
    ...change,
  };
}

const base: Plan = {
  name: 'Lower mast',
  mandrelDiameter: 0.0508,
  tubeLength: 2.4,
  cloth: carbon,
  clothAmount: { by: 'mass', mass: 0.1 },
  plies: 3,
  resin: 'starter-resin-laminating-slow',
  release: 'starter-release-semi-permanent',
  checklist: 'starter-checklist-semi-permanent',
  goal: { fiberVolumeFraction: 0.35, lossPerCup: 0.015, squeezeOut: 0.1 },
  schedule: starterSchedules['starter-schedule-66-3'].schedule,
  serviceTemperature: 333,
};

const mandrel = shape([
  [0, 0.0508],
  [2.5, 0.0508],
]);

/** A plan with these pieces on a straight mandrel of 50.8 mm, 2.4 m long. */
export const wallOf = (pieces: readonly Piece[], change: Partial<Plan> = {}): WalledPlan => ({
  ...base,
  ...change,
  wall: { mandrel, pieces: [...pieces] },
});

export const withFollowing = (plan: WalledPlan): WalledPlan => planWithWall(plan, shelf);
