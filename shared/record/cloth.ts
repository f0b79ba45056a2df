import * as z from 'zod/mini';
import { name, positive, text } from './common.ts';
import type { Known } from './known.ts';
import { lamina } from './lamina.ts';

export const fibers = ['carbon', 'glass', 'aramid', 'other'] as const;
export type Fiber = (typeof fibers)[number];

/** Both ways alike, or all fibers along the warp. */
export const weaves = ['woven', 'unidirectional'] as const;

/** Dry cloth as it comes off the roll. */
export const clothBody = z.lazy(() =>
  z.looseObject({
    name,
    fiber: z.enum(fibers),
    /** kg/m3 */
    fiberDensity: positive,
    /** kg/m2 */
    arealWeight: positive,
    /** Taken as woven where nothing is said. */
    weave: z.optional(z.enum(weaves)),
    /** Width of the roll, m */
    rollWidth: z.optional(positive),
    /** For a square meter, in the builder's money. */
    price: z.optional(positive),
    /** Stiffness and strength of its fibers in epoxy; the handbook's for its fiber when absent. */
    lamina: z.optional(lamina),
    /** A starter value that a data sheet or a weighing replaces. */
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type Cloth = Known<z.infer<typeof clothBody>>;
