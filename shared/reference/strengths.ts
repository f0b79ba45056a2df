import type { Fiber } from '#shared/record/cloth.ts';
import type { LaminaRecord } from '#shared/record/lamina.ts';

const MPa = 1e6;
const GPa = 1e9;

/**
 * One ply of fibers all one way in epoxy, at the fiber volume the handbook made it with: Tsai and Hahn, Introduction to
 * Composite Materials (1980), tables 1.7 and 7.1, as repeated by Kaw, Mechanics of Composite Materials, table 2.1; from
 * memory. Autoclaved, so a hand layup's ply is reckoned down to its own fiber volume and its compression further.
 * Typical, not for design: a data sheet or a shop's own test replaces them. Of another fiber nothing is known.
 */
export const handbookLaminas = {
  carbon: {
    fiberVolumeFraction: 0.7,
    e1: 181 * GPa,
    e2: 10.3 * GPa,
    g12: 7.17 * GPa,
    nu12: 0.28,
    strengths: {
      alongTension: 1500 * MPa,
      alongCompression: 1500 * MPa,
      acrossTension: 40 * MPa,
      acrossCompression: 246 * MPa,
      shear: 68 * MPa,
    },
  },
  glass: {
    fiberVolumeFraction: 0.45,
    e1: 38.6 * GPa,
    e2: 8.27 * GPa,
    g12: 4.14 * GPa,
    nu12: 0.26,
    strengths: {
      alongTension: 1062 * MPa,
      alongCompression: 610 * MPa,
      acrossTension: 31 * MPa,
      acrossCompression: 118 * MPa,
      shear: 72 * MPa,
    },
  },
  aramid: {
    fiberVolumeFraction: 0.6,
    e1: 76 * GPa,
    e2: 5.5 * GPa,
    g12: 2.3 * GPa,
    nu12: 0.34,
    strengths: {
      alongTension: 1400 * MPa,
      alongCompression: 235 * MPa,
      acrossTension: 12 * MPa,
      acrossCompression: 53 * MPa,
      shear: 34 * MPa,
    },
  },
  other: undefined,
} as const satisfies Record<Fiber, LaminaRecord | undefined>;

/** As it is told on the screen. */
export const handbookSource =
  'Tsai and Hahn, Introduction to Composite Materials, 1980, table 1.7, from memory';

/**
 * Cured epoxy, alike in all directions: what a ply's figures are taken apart with, and mixed again at another fiber
 * volume. Of usual epoxies, Pa and Poisson's ratio (Callister; Kaw, table 3.2, from memory).
 */
export const epoxy = { e: 3 * GPa, nu: 0.35 } as const;

/** What crimp leaves of a plain weave along its fibers (common practice, no source: 0.9 to 0.95 for light cloth). */
export const plainWeaveCrimp = 0.92;

/** What a wet layup by hand keeps of a handbook's strength in compression (common practice, no source: 0.6 to 0.7). */
export const compressionKept = 0.65;

/** Plies drop no faster than this many times their thickness (common practice, no source). */
export const dropTaper = 20;
