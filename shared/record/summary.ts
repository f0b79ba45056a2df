import * as z from 'zod/mini';
import { id, nonNegative, positive, stamp } from './common.ts';
import type { Known } from './known.ts';

/** Raise when a fold or this shape changes: older summaries are thrown away and made anew. */
export const foldVersion = 1;

/** Facts of one build, folded from its entries; results are computed from them when shown. */
export const buildSummary = z.looseObject({
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
  clothMass: positive,
  fiber: z.string(),
  fiberDensity: positive,
  resinDensity: positive,
  wantedFiberVolume: positive,
  /** kg, with film left inside still in it */
  curedMass: z.optional(nonNegative),
  filmLeft: z.optional(nonNegative),
  /** Core in the wall, sheet and the resin its faces drink, kg */
  core: z.optional(nonNegative),
  resinMixed: z.optional(nonNegative),
  cups: nonNegative,
  ovenLoads: z.array(id),
});
export type BuildSummary = Known<z.infer<typeof buildSummary>>;

export const ovenSummary = z.looseObject({
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
});
export type OvenSummary = Known<z.infer<typeof ovenSummary>>;

export const summary = z.discriminatedUnion('of', [buildSummary, ovenSummary]);
export type Summary = Known<z.infer<typeof summary>>;
