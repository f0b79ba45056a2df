import { curedPlyThickness, widthForWraps } from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Plan } from '#shared/record/plan.ts';
import { type RevisionOf, revisionVersion } from '#shared/record/revision.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterMandrels } from '#shared/reference/starter-mandrels.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { rounded } from './draw.ts';
import { device } from './journal.ts';
import { lowerMastLoads } from './loads.ts';
import { weighedCloth, weighedDoc } from './shelf.ts';
import { daysBack } from './shop-time.ts';
import { drawn, lowerMastWall, seatBeamWall, upperMastWall } from './walls.ts';

const celsius = (degrees: number) => Math.round(degrees * 100 + 27_315) / 100;

export function clothRevision(now: number): RevisionOf<'cloth'> {
  const doc = weighedDoc;
  return {
    record: 'revision',
    v: revisionVersion,
    type: 'cloth',
    doc,
    id: 'demo-cloth-carbon-plain-193-2',
    parents: [`${doc}-1`],
    at: daysBack(now, 41, '19:10'),
    device,
    body: weighedCloth,
  };
}

const taperedDoc = 'demo-mandrel-tapered';

/** Spun for the upper mast; how it tapers stands in the plan's wall. */
export function mandrelRevision(now: number): RevisionOf<'mandrel'> {
  return {
    record: 'revision',
    v: revisionVersion,
    type: 'mandrel',
    doc: taperedDoc,
    id: `${taperedDoc}-1`,
    parents: [],
    at: daysBack(now, 41, '19:32'),
    device,
    body: {
      name: 'Tapered aluminum, 39 to 24 mm',
      material: 'aluminum',
      diameter: 0.039,
      length: 2.1,
      wall: 0.0015,
      note: 'Spun for the upper mast. 39 mm at the thick end; 100 mm of each end stays bare.',
    },
  };
}

const dark = celsius(75);
const goal = { fiberVolumeFraction: 0.35, lossPerCup: 0.014, squeezeOut: 0.1 };

/** Area of a straight piece that makes so many whole plies, to a whole square centimeter. */
function areaFor(
  plan: Pick<Plan, 'mandrelDiameter' | 'tubeLength' | 'plies'>,
  cloth: Cloth,
  buildUp: number,
) {
  const width = widthForWraps({
    wraps: plan.plies,
    startDiameter: plan.mandrelDiameter + buildUp,
    plyThickness: curedPlyThickness({ ...cloth, fiberVolumeFraction: goal.fiberVolumeFraction }),
  });
  // 15 mm of overlap, so that the last ply does not only butt.
  return rounded((width + 0.015) * plan.tubeLength, 0.0001);
}

const onPlain = { cloth: weighedDoc, tape: 'starter-tape-polyester-25', goal } as const;
const slowAt66 = {
  resin: 'starter-resin-laminating-slow',
  schedule: starterSchedules['starter-schedule-66-3'].schedule,
} as const;

type Shape = Pick<Plan, 'name' | 'mandrelDiameter' | 'tubeLength' | 'plies'>;
const tube = (
  name: string,
  mandrel: keyof typeof starterMandrels,
  tubeLength: number,
  plies: number,
): Shape => ({
  name,
  mandrelDiameter: starterMandrels[mandrel].diameter,
  tubeLength,
  plies,
});

function lowerMast(): Plan {
  const shape = tube('Lower mast', 'starter-mandrel-aluminum-50', 2.1, 5);
  const twill = 'starter-cloth-carbon-twill-200';
  const { buildUp } = starterReleases['starter-release-polyester-sleeve'];
  return {
    ...shape,
    ...onPlain,
    cloth: twill,
    clothAmount: { by: 'area', area: areaFor(shape, starterCloths[twill], buildUp) },
    resin: 'starter-resin-warm-cure',
    release: 'starter-release-polyester-sleeve',
    mandrel: 'starter-mandrel-aluminum-50',
    checklist: 'starter-checklist-film-sleeve',
    schedule: starterSchedules['starter-schedule-74-5'].schedule,
    serviceTemperature: dark,
  };
}

/** After the oven ran away with the first one: nothing in it that gives way below the resin, and its wall drawn. */
function lowerMastAgain(): Plan {
  const plan: Plan = {
    ...lowerMast(),
    ...onPlain,
    ...slowAt66,
    release: 'starter-release-semi-permanent',
    checklist: 'starter-checklist-semi-permanent',
    serviceTemperature: celsius(60),
    loads: lowerMastLoads,
    note: 'White paint over it. Release changed: the film went brittle at 96 C on the first one. Wall drawn: thick only at the partners.',
  };
  return drawn(plan, lowerMastWall);
}

function upperMast(): Plan {
  return drawn(onWax(tube('Upper mast', 'starter-mandrel-aluminum-38', 1.9, 3), taperedDoc), upperMastWall);
}

/** Not made yet: what the sliding seat rests on. */
function seatBeam(): Plan {
  const plan: Plan = {
    ...onWax(tube('Seat beam', 'starter-mandrel-aluminum-50', 1.3, 3), 'starter-mandrel-aluminum-50'),
    note: 'Three cures: inner skin, core in two halves bedded in thickened resin, outer skin.',
  };
  return drawn(plan, seatBeamWall);
}

function onWax(shape: Shape, mandrel: string): Plan {
  const { buildUp } = starterReleases['starter-release-wax-pva'];
  return {
    ...shape,
    ...onPlain,
    ...slowAt66,
    clothAmount: { by: 'area', area: areaFor(shape, weighedCloth, buildUp) },
    release: 'starter-release-wax-pva',
    mandrel,
    checklist: 'starter-checklist-wax-pva',
    serviceTemperature: celsius(60),
  };
}

function sprit(hardener: 'fast' | 'slow'): Plan {
  const shape = tube('Sprit', 'starter-mandrel-aluminum-25', 1.5, 3);
  const { buildUp } = starterReleases['starter-release-polyester-sleeve'];
  const mass = rounded(areaFor(shape, weighedCloth, buildUp) * weighedCloth.arealWeight, 0.0001);
  return {
    ...shape,
    ...onPlain,
    ...slowAt66,
    resin: `starter-resin-laminating-${hardener}`,
    clothAmount: { by: 'mass', mass },
    release: 'starter-release-polyester-sleeve',
    mandrel: 'starter-mandrel-aluminum-25',
    checklist: 'starter-checklist-film-sleeve',
    serviceTemperature: celsius(60),
    ...(hardener === 'slow' && { note: 'SLOW from now on: FAST gelled before the second pass of tape.' }),
  };
}

export type PlanRevision = RevisionOf<'plan'>;

export function plans(now: number) {
  const revise = (doc: string, n: number, at: number, body: Plan): PlanRevision => ({
    record: 'revision',
    v: revisionVersion,
    type: 'plan',
    doc,
    id: `${doc}-${n}`,
    parents: n > 1 ? [`${doc}-${n - 1}`] : [],
    at,
    device,
    body,
  });
  const boom = tube('Boom', 'starter-mandrel-aluminum-38', 1.75, 3);
  return {
    boom: revise('demo-plan-boom', 1, daysBack(now, 40, '20:05'), onWax(boom, 'starter-mandrel-aluminum-38')),
    upperMast: revise('demo-plan-upper-mast', 1, daysBack(now, 40, '20:31'), upperMast()),
    sprit: revise('demo-plan-sprit', 1, daysBack(now, 33, '19:48'), sprit('fast')),
    spritSlow: revise('demo-plan-sprit', 2, daysBack(now, 28, '21:02'), sprit('slow')),
    lowerMast: revise('demo-plan-lower-mast', 1, daysBack(now, 25, '20:15'), lowerMast()),
    lowerMastAgain: revise('demo-plan-lower-mast', 2, daysBack(now, 18, '20:40'), lowerMastAgain()),
    seatBeam: revise('demo-plan-seat-beam', 1, daysBack(now, 5, '21:12'), seatBeam()),
  };
}
