import type { BuildHeader } from '#shared/record/build.ts';
import type { Piece, ShapeRecord, WallPlan } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { Revision, RevisionOf } from '#shared/record/revision.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { buildHeader } from '../../record/arbitraries.ts';

/** Straight between stations. */
const shape = (...stations: [at: number, value: number][]): ShapeRecord => ({
  stations: stations.map(([at, value]) => ({ at, value })),
  between: 'straight',
});

const pieceOf = (id: string, name: string, plies: ShapeRecord, more: Partial<Piece> = {}): Piece => ({
  id,
  name,
  kind: 'cloth',
  shape: { by: 'plies', plies },
  start: 0,
  clock: 0,
  angle: 0,
  overlap: 0.015,
  ...more,
});

const body = (name: string, tubeLength: number, wall: WallPlan): Plan => ({
  name,
  mandrelDiameter: wall.mandrel.stations[0]?.value ?? 0.05,
  tubeLength,
  cloth: 'starter-cloth-carbon-plain-193',
  clothAmount: { by: 'mass', mass: 0.3 },
  plies: 6,
  resin: 'starter-resin-laminating-slow',
  release: 'starter-release-polyester-sleeve',
  checklist: 'starter-checklist-film-sleeve',
  goal: { fiberVolumeFraction: 0.45, lossPerCup: 0.014, squeezeOut: 0.1 },
  schedule: starterSchedules['starter-schedule-66-3'].schedule,
  serviceTemperature: 313.15,
  wall,
});

/** Three plies, six at the partners, two at the head, and a sleeve of aramid at the heel. */
export const lowerMast = body('Lower mast', 2.4, {
  mandrel: shape([0, 0.0508], [2.4, 0.0508]),
  pieces: [
    pieceOf('skin', 'Skin', shape([0, 3], [0.5, 3], [0.6, 6], [0.85, 6], [1.4, 3], [2.4, 2])),
    pieceOf('heel', 'Heel sleeve', shape([0, 1], [0.4, 1]), {
      material: 'starter-cloth-aramid-170',
      clock: Math.PI,
      angle: Math.PI / 4,
    }),
  ],
});

/** A topmast on a tapered mandrel. */
export const upperMast = body('Upper mast', 1.8, {
  mandrel: shape([0, 0.044], [1.8, 0.03]),
  pieces: [pieceOf('skin', 'Skin', shape([0, 4], [0.6, 4], [1.8, 2]))],
});

/** Wider on the bias than its roll. */
export const yard = body('Yard', 1.5, {
  mandrel: shape([0, 0.0381], [1.5, 0.0381]),
  pieces: [
    pieceOf('bias', 'Bias skin', shape([0, 4], [1.5, 4]), { angle: Math.PI / 4 }),
    pieceOf('outer', 'Outer skin', shape([0, 1], [1.5, 1]), { clock: 1 }),
  ],
});

export function planRevision(doc: string, plan: Plan): RevisionOf<'plan'> {
  return {
    record: 'revision',
    v: 1,
    type: 'plan',
    doc,
    id: `${doc}-1`,
    parents: [],
    at: 1,
    device: 'phone-1',
    body: plan,
  } satisfies Revision;
}

export const walledPlans = [
  planRevision('lower-mast', lowerMast),
  planRevision('upper-mast', upperMast),
  planRevision('yard', yard),
];

/** A tube of the yard's plan, just started. */
export const yardBuild: BuildHeader = {
  ...buildHeader,
  id: 'yard-build',
  name: 'Yard',
  plan: planRevision('yard', yard),
  clothMass: 0.25,
};

/** A tube of the lower mast, just started. */
export const mastBuild: BuildHeader = {
  ...buildHeader,
  id: 'mast-build',
  name: 'Lower mast',
  plan: planRevision('lower-mast', lowerMast),
  clothMass: 0.3,
};
