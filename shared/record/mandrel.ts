import * as z from 'zod/mini';
import { kelvin, name, positive, text } from './common.ts';
import type { Known } from './known.ts';

export const mandrelMaterials = ['aluminum', 'steel', 'stainless', 'composite', 'foam', 'other'] as const;

export const mandrelBody = z.lazy(() =>
  z.looseObject({
    name,
    material: z.enum(mandrelMaterials),
    /** m, bare */
    diameter: positive,
    /** m */
    length: positive,
    /** What its end plugs and its masking stand, K; both are felt by the air */
    plugsTo: z.optional(kelvin),
    maskingTo: z.optional(kelvin),
    /** m; without it a solid bar */
    wall: z.optional(positive),
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type Mandrel = Known<z.infer<typeof mandrelBody>>;
