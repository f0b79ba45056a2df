import * as z from 'zod/mini';
import { id, kelvin, nonNegative, positive, stamp } from './common.ts';
import { ratingsOf } from './entry.ts';
import type { Known } from './known.ts';
import { lotKinds } from './lot.ts';
import { gaveWays } from './proof.ts';
import { releaseKinds } from './release-system.ts';

/** Raise when a fold or this shape changes: older summaries are thrown away and made anew. */
export const foldVersion = 6;

const deflection = z.number().check(z.gt(-100), z.lt(100));

/** Facts of one build, folded from its entries; results are computed from them when shown. */
export const buildSummary = z.lazy(() =>
  z.looseObject({
    of: z.literal('build'),
    /** Absent once closed, so that an index on it holds only what is open. */
    open: z.optional(z.literal(1)),
    subject: id,
    foldVersion: z.number(),
    name: z.string(),
    number: z.number(),
    startedAt: stamp,
    /** When its last entry happened. */
    lastAt: stamp,
    closedAt: z.optional(stamp),
    outcome: z.optional(z.enum(['good', 'rework', 'scrap'])),
    stage: z.optional(z.string()),
    /** Everything a search looks through, in lower case. */
    words: z.string(),
    plan: z.optional(id),
    /** What the plan revision it was started from says one weighs, kg */
    plannedMass: z.optional(positive),
    clothMass: positive,
    /** After cutting, kg; absent while the cloth stands at what it was started with */
    weighedCloth: z.optional(positive),
    fiber: z.string(),
    fiberDensity: positive,
    resinDensity: positive,
    wantedFiberVolume: positive,
    /** kg, with film left inside still in it */
    curedMass: z.optional(nonNegative),
    /** kg after end trim, film in it: what goes into a structure */
    trimmedMass: z.optional(nonNegative),
    filmLeft: z.optional(nonNegative),
    /** Core in the wall, sheet and the resin its faces drink, kg */
    core: z.optional(nonNegative),
    /** The resin of it alone, kg */
    coreResin: z.optional(nonNegative),
    resinMixed: z.optional(nonNegative),
    cups: nonNegative,
    ovenLoads: z.array(id),
    cloth: z.string(),
    /** kg/m2, as the shelf said */
    arealWeight: positive,
    /** What the plan says was cut, m2 */
    clothArea: z.optional(positive),
    /** Resin and hardener by name: two hardeners are two systems. */
    resin: z.string(),
    release: z.optional(z.string()),
    /** Film sleeves alone leave film inside. */
    releaseKind: z.optional(z.enum(releaseKinds)),
    tape: z.optional(z.string()),
    plies: z.optional(positive),
    /** Mean of the stations measured, m */
    wall: z.optional(positive),
    /** Of every cup that was used: kg as poured, and hardener to resin as the sheet asks. */
    poured: z.array(z.looseObject({ resin: positive, hardener: positive, wanted: positive })),
    /** Of every reading under a weight whose deflection the plan foretold, m */
    proof: z.optional(z.array(z.looseObject({ expected: deflection, measured: deflection }))),
    /** Of every squeeze whose ring stiffness the plan foretold: measured over planned */
    rings: z.optional(z.array(positive)),
    /** kg that hung, and where, when it gave way */
    gaveWay: z.optional(
      z.array(
        z.looseObject({
          how: z.enum(gaveWays),
          mass: positive,
          at: nonNegative,
          place: z.optional(nonNegative),
        }),
      ),
    ),
    /** Weighed after the work, kg */
    leftover: z.optional(nonNegative),
    wipings: z.optional(nonNegative),
    /** Of the first round, s; absent where ticks came later than the work */
    wetOutTime: z.optional(positive),
    wrapTime: z.optional(positive),
    /** As it was entered last before the work, K */
    shopTemperature: z.optional(kelvin),
    ratings: z.array(z.looseObject({ what: z.enum(ratingsOf), value: nonNegative })),
    notes: z.array(z.string()),
    photos: z.array(id),
    /** Words to them, by the photo */
    captions: z.optional(z.record(z.string(), z.string())),
    /** What it took from lots: m2, kg or m. */
    draws: z.array(z.looseObject({ of: z.enum(lotKinds), lot: id, amount: nonNegative, at: stamp })),
  }),
);
export type BuildSummary = Known<z.infer<typeof buildSummary>>;

export const ovenSummary = z.lazy(() =>
  z.looseObject({
    of: z.literal('ovenLoad'),
    /** Absent once closed, so that an index on it holds only what is open. */
    open: z.optional(z.literal(1)),
    subject: id,
    foldVersion: z.number(),
    number: z.number(),
    startedAt: stamp,
    lastAt: stamp,
    litAt: z.optional(stamp),
    offAt: z.optional(stamp),
    closedAt: z.optional(stamp),
    builds: z.array(id),
    readings: nonNegative,
    highestRead: z.optional(positive),
    /** What the schedule holds at, K */
    wantedHold: z.optional(kelvin),
    highestAir: z.optional(kelvin),
    /** By the sensor on each tube. */
    tubes: z.array(
      z.looseObject({
        build: id,
        round: positive,
        highest: z.optional(kelvin),
        /** Between readings, K/s */
        steepest: z.optional(nonNegative),
        /** Mean over the time in the hold band, K */
        held: z.optional(kelvin),
      }),
    ),
    /** Files of a logger */
    loggerFiles: z.optional(nonNegative),
  }),
);
export type OvenSummary = Known<z.infer<typeof ovenSummary>>;

export const summary = z.lazy(() => z.discriminatedUnion('of', [buildSummary, ovenSummary]));
export type Summary = Known<z.infer<typeof summary>>;
