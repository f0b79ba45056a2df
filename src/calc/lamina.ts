import { type Bounds, finite, numberIn, positive } from './check.ts';

/** Elastic constants of one ply in its own directions, Pa; 1 along the fibers, 2 across. */
export type Lamina = {
  readonly e1: number;
  readonly e2: number;
  readonly g12: number;
  readonly nu12: number;
};

/** Of a ply in its own directions, Pa. */
export type ReducedStiffness = { q11: number; q12: number; q22: number; q66: number };

/**
 * Plane-stress stiffness of one ply in its own directions.
 *
 * @param e1 along the fibers, Pa, greater than 0
 * @param e2 across them, Pa, greater than 0
 * @param g12 shear modulus in the plane, Pa, greater than 0
 * @param nu12 Poisson's ratio, strain across for strain along; its size less than sqrt(e1/e2), beyond which a
 *   material would give out energy
 * @returns Pa
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: Q11 = E1/(1 - nu12 nu21), Q12 = nu12 E2/(1 - nu12 nu21), Q22 = E2/(1 - nu12 nu21), Q66 = G12, with
 * nu21 = nu12 E2/E1.
 * Source: Kaw, Mechanics of Composite Materials, section 2.4; the limit of nu12: Lempriere 1968.
 *
 * @example
 * // Graphite/epoxy with E1 181, E2 10.3, G12 7.17 GPa, nu12 0.28: what stiffness?
 * laminaStiffness({ e1: 181e9, e2: 10.3e9, g12: 7.17e9, nu12: 0.28 })
 * // => { q11: 1.818e11, q12: 2.897e9, q22: 1.035e10, q66: 7.17e9 }
 */
export function laminaStiffness(input: Lamina): ReducedStiffness {
  return laminaIn(input, '');
}

/** As `laminaStiffness`, for a ply in a list. */
export function laminaIn(input: Lamina, path: string): ReducedStiffness {
  const e1 = positive(input, 'e1', 'Pa', path);
  const e2 = positive(input, 'e2', 'Pa', path);
  const q66 = positive(input, 'g12', 'Pa', path);
  const nu12 = numberIn(input, 'nu12', '', poissonBounds(e1, e2), path);
  const q11 = finite(e1 / (1 - (nu12 * nu12 * e2) / e1), 'nu12');
  const q22 = (q11 * e2) / e1;
  return { q11, q12: nu12 * q22, q22, q66 };
}

/** What Poisson's ratio may be between the two moduli of a ply. */
export function poissonBounds(e1: number, e2: number): Bounds {
  const limit = Math.sqrt(e1 / e2);
  return { above: -limit, below: limit };
}
