import * as z from 'zod/mini';
import { kelvin, name, nonNegative, positive, text } from './common.ts';
import type { Known } from './known.ts';

/** What it pulls at a temperature, K, for each m of its width, N/m. */
export const pullPoint = z.lazy(() => z.looseObject({ temperature: kelvin, force: nonNegative }));
export type PullPoint = Known<z.infer<typeof pullPoint>>;

/** Shrink tape. Its limits are felt by the oven's air. */
export const tapeBody = z.lazy(() =>
  z.looseObject({
    name,
    /** m */
    width: positive,
    thickness: positive,
    /** Where it begins to shrink, K */
    shrinksFrom: kelvin,
    /** Where it pulls hardest, K */
    pullsFrom: kelvin,
    highestTemperature: kelvin,
    /** Measured pull, from cold to hot */
    shrinkForce: z.optional(z.array(pullPoint)),
    /** On one roll, m */
    rollLength: z.optional(positive),
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type Tape = Known<z.infer<typeof tapeBody>>;
