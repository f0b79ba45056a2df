import * as z from 'zod/mini';
import { id, name, nonNegative, positive, text } from './common.ts';
import type { Known } from './known.ts';

/** A tube or another part of a structure, so many times. */
export const structurePart = z.lazy(() =>
  z.looseObject({
    id,
    name,
    /** What it is built by; a fitting or a halyard has none. */
    plan: z.optional(id),
    quantity: z.number().check(z.gte(1), z.lte(999)),
    /** Most that one may weigh, kg */
    budget: z.optional(positive),
    /** One of them by plan, kg; without it the plan's own estimate counts */
    planned: z.optional(positive),
    /** One of them as weighed, kg; what has a plan is weighed by its builds */
    weighed: z.optional(positive),
    /** Where its center lies along the structure's axis, m */
    position: z.optional(z.number().check(z.gte(-1000), z.lte(1000))),
    /** The builds that became these parts. */
    builds: z.array(id),
  }),
);
export type StructurePart = Known<z.infer<typeof structurePart>>;

/** What tubes are made for: a mast set, a frame. */
export const structureBody = z.lazy(() =>
  z.looseObject({
    name,
    /** Most that all of it may weigh, kg */
    budget: z.optional(nonNegative),
    /** What positions are measured along: 'from the bow' */
    axis: z.optional(z.string().check(z.maxLength(200))),
    parts: z.array(structurePart),
    note: z.optional(text),
  }),
);
export type Structure = Known<z.infer<typeof structureBody>>;
