import * as z from 'zod/mini';
import { positive, share } from './common.ts';
import type { Known } from './known.ts';

/** Strengths of one ply of fibers all one way, Pa, each above 0: tension and compression along and across, and in shear. */
export const laminaStrengths = z.lazy(() =>
  z.looseObject({
    alongTension: positive,
    alongCompression: positive,
    acrossTension: positive,
    acrossCompression: positive,
    shear: positive,
  }),
);
export type LaminaStrengths = Known<z.infer<typeof laminaStrengths>>;

/**
 * What a cloth's fibers do in epoxy, as one ply with all of them one way. A woven cloth is taken as two such plies of
 * half its weight, crossed. Stiffness and fiber volume belong together: one is never kept without the other.
 */
export const lamina = z.lazy(() =>
  z.looseObject({
    /** Fiber volume fraction the figures were found at. */
    fiberVolumeFraction: share,
    /** Pa along and across the fibers, and in shear */
    e1: positive,
    e2: positive,
    g12: positive,
    nu12: z.number().check(z.gt(-1), z.lt(1)),
    /** Without them only stiffness is reckoned. */
    strengths: z.optional(laminaStrengths),
    /** What a weave's crimp leaves of stiffness and strength along the fibers; 1 when absent. */
    crimp: z.optional(share),
  }),
);
export type LaminaRecord = Known<z.infer<typeof lamina>>;
