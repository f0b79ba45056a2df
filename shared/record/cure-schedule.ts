import * as z from 'zod/mini';
import { kelvin, positive } from './common.ts';
import type { Known } from './known.ts';

/** Of a free-standing postcure: tape, release, plugs and mandrel are off, and nothing holds its shape. */
const offMandrel = z.optional(z.boolean());

export const cureStage = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.looseObject({ kind: z.literal('ramp'), to: kelvin, /** K/s */ rate: positive, offMandrel }),
    z.looseObject({ kind: z.literal('hold'), /** s */ lasts: positive, offMandrel }),
    z.looseObject({ kind: z.literal('cool'), to: kelvin, /** K/s */ rate: positive, offMandrel }),
  ]),
);
export type CureStage = Known<z.infer<typeof cureStage>>;

export const cureSchedule = z.lazy(() =>
  z.looseObject({
    /** Where the oven begins, K */
    start: kelvin,
    stages: z.array(cureStage),
    /** The band in which a hold counts, K */
    holdLow: kelvin,
    holdHigh: z.optional(kelvin),
    /** Readings are due this often while holding, s */
    readEvery: positive,
    /** The same while it ramps or cools, s */
    readRamping: z.optional(positive),
  }),
);
export type CureSchedule = Known<z.infer<typeof cureSchedule>>;
