import * as z from 'zod/mini';
import { kelvin, name, positive, text } from './common.ts';
import type { Known } from './known.ts';

/** Shrink tape. Its limits are felt by the oven's air. */
export const tapeBody = z.looseObject({
  name,
  /** m */
  width: positive,
  thickness: positive,
  /** Where it begins to shrink, K */
  shrinksFrom: kelvin,
  /** Where it pulls hardest, K */
  pullsFrom: kelvin,
  highestTemperature: kelvin,
  typical: z.optional(z.boolean()),
  note: z.optional(text),
});
export type Tape = Known<z.infer<typeof tapeBody>>;
