import type { Fiber } from '#shared/record/cloth.ts';

/**
 * kg/m3; a fiber of another kind has no usual one. Gibson 1994 and Hyer 1998 give standard carbon 1.77 to 1.80,
 * E-glass 2.54, aramid 1.44 to 1.47 g/cm3.
 */
export const fiberDensities = {
  carbon: 1790,
  glass: 2540,
  aramid: 1450,
  other: undefined,
} as const satisfies Record<Fiber, number | undefined>;
