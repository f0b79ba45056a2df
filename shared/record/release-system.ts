import * as z from 'zod/mini';
import { kelvin, name, nonNegative, text } from './common.ts';
import type { Known } from './known.ts';

export const releaseKinds = ['filmSleeve', 'waxAndPva', 'semiPermanent', 'other'] as const;

export const releaseSystemBody = z.lazy(() =>
  z.looseObject({
    name,
    kind: z.enum(releaseKinds),
    /** Felt by the part or the mandrel, K */
    highestTemperature: kelvin,
    /** Added to the mandrel's diameter, m */
    buildUp: nonNegative,
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type ReleaseSystem = Known<z.infer<typeof releaseSystemBody>>;
