import * as z from 'zod/mini';
import { kelvin, name, nonNegative, positive, text } from './common.ts';
import type { Known } from './known.ts';

/** Foam or other sheet between the skins. */
export const coreBody = z.lazy(() =>
  z.looseObject({
    name,
    /** kg/m3 */
    density: positive,
    /** m */
    thickness: positive,
    /** Resin that a cut face drinks, kg/m2 of one face */
    faceResin: nonNegative,
    /** Where it softens, K; felt by the part */
    highestTemperature: kelvin,
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type Core = Known<z.infer<typeof coreBody>>;
