import { planWithWall } from '#app/planning/wall/plan-with-wall.ts';
import { hasWall, type WallShelf } from '#app/planning/wall/wall-model.ts';
import type { Piece, ShapeRecord, WallPlan } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import { fromShelf, weighedCloth, weighedDoc } from './shelf.ts';

const shape = (
  between: ShapeRecord['between'],
  ...stations: readonly (readonly [at: number, value: number])[]
): ShapeRecord => ({ between, stations: stations.map(([at, value]) => ({ at, value })) });

/** So much lap wherever a piece is no more than a turn or two, m */
const lap = 0.015;

function piece(id: string, name: string, plies: ShapeRecord, more: Partial<Piece> = {}): Piece {
  const cloth = { id, name, kind: 'cloth', shape: { by: 'plies', plies } } as const;
  return { ...cloth, start: 0, clock: 0, angle: 0, overlap: lap, ...more };
}

const degrees = (n: number) => (n * Math.PI) / 180;

/** Carbon: 3 plies, 6 where the mast goes through the deck, 2 at the head. Glass outside, where it rubs. */
export const lowerMastWall: WallPlan = {
  mandrel: shape('straight', [0, 0.0508], [2.4, 0.0508]),
  pressedAt: degrees(180),
  pieces: [
    piece('demo-lower-skin', 'Skin', shape('straight', [0, 3], [1.3, 3], [2.1, 2]), { clock: degrees(150) }),
    piece('demo-lower-partners', 'Partners', shape('straight', [0, 0.1], [0.11, 3], [0.4, 3], [0.9, 0.1]), {
      start: 0.4,
      clock: degrees(240),
    }),
    piece('demo-lower-glass', 'Glass outside', shape('straight', [0, 1], [0.95, 1]), {
      material: 'starter-cloth-glass-plain-100',
      clock: degrees(330),
    }),
  ],
};

/** On a mandrel that tapers: 3 plies at the ferrule, not quite 2 at the tip, faster at first. */
export const upperMastWall: WallPlan = {
  mandrel: shape('straight', [-0.1, 0.039], [2, 0.024]),
  pieces: [piece('demo-upper-skin', 'Skin', shape('smooth', [0, 3], [0.3, 3], [0.9, 2.2], [1.9, 1.8]))],
};

/** Foam between two skins: what the sliding seat of the canoe rests on. */
export const seatBeamWall: WallPlan = {
  mandrel: shape('straight', [0, 0.0508], [2.4, 0.0508]),
  pieces: [
    piece('demo-seat-inner', 'Inner skin', shape('straight', [0, 1], [1.3, 1])),
    piece('demo-seat-core', 'Core', shape('straight', [0, 1], [1.3, 1]), {
      kind: 'core',
      material: 'starter-core-imide-3',
      clock: degrees(90),
      overlap: 0,
    }),
    piece('demo-seat-outer', 'Outer skin', shape('straight', [0, 2], [1.3, 2]), { clock: degrees(180) }),
  ],
};

/** The demo's shelf, for what a drawn wall is made of. */
export const wallShelf: WallShelf = {
  cloth: (doc) => {
    if (doc === weighedDoc) return weighedCloth;
    return doc ? fromShelf('cloth', doc) : undefined;
  },
  core: (doc) => (doc ? fromShelf('core', doc) : undefined),
  release: (doc) => (doc ? fromShelf('release', doc) : undefined),
  resin: (doc) => (doc ? fromShelf('resin', doc) : undefined),
};

/** The plan with its wall drawn, and with what the wall says of cloth, plies and diameter. */
export function drawn(plan: Plan, wall: WallPlan): Plan {
  const walled = { ...plan, wall };
  if (!hasWall(walled)) throw new Error(`${plan.name} has no wall`);
  return planWithWall(walled, wallShelf);
}
