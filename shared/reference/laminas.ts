import type { Fiber } from '#shared/record/cloth.ts';

/** One ply of fibers all one way: stiffness in Pa, growth in 1/K; 1 along the fibers, 2 across. */
export interface TypicalLamina {
  e1: number;
  e2: number;
  g12: number;
  nu12: number;
  alpha1: number;
  alpha2: number;
}

/**
 * Laid up wet by hand with epoxy, fiber volume about 45 %: typical, not for design. From fiber and epoxy by the rule
 * of mixtures, Halpin and Tsai, and Schapery, rounded; fibers and epoxy (3 GPa, 60e-6/K) as in Callister and Hyer,
 * from memory. Of another fiber nothing is known.
 */
export const laminas = {
  carbon: { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, alpha1: 0.4e-6, alpha2: 45e-6 },
  glass: { e1: 34e9, e2: 8e9, g12: 3e9, nu12: 0.29, alpha1: 7.7e-6, alpha2: 44e-6 },
  aramid: { e1: 57e9, e2: 4.5e9, g12: 1.8e9, nu12: 0.34, alpha1: -0.2e-6, alpha2: 75e-6 },
  other: undefined,
} as const satisfies Record<Fiber, TypicalLamina | undefined>;

/**
 * What a wall shrinks around the hoop after gel, as a share: a start, to be replaced by the shop's own (common
 * practice, no source). Fibers around the hoop hold it; across them only resin does.
 */
export const hoopShrinkage = { held: 3e-4, across: 3e-3 } as const;
