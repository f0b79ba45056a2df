import * as z from 'zod/mini';
import { kelvin, positive } from './common.ts';
import type { Known } from './known.ts';

export const cureStage = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('ramp'), to: kelvin, /** K/s */ rate: positive }),
  z.looseObject({ kind: z.literal('hold'), /** s */ lasts: positive }),
  z.looseObject({ kind: z.literal('cool'), to: kelvin, /** K/s */ rate: positive }),
]);
export type CureStage = Known<z.infer<typeof cureStage>>;

export const cureSchedule = z.looseObject({
  /** Where the oven begins, K */
  start: kelvin,
  stages: z.array(cureStage),
  /** The band in which a hold counts, K */
  holdLow: kelvin,
  holdHigh: z.optional(kelvin),
  /** Readings are due this often while holding, s */
  readEvery: positive,
});
export type CureSchedule = Known<z.infer<typeof cureSchedule>>;
