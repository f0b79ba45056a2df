import { notNegative, numberIn, positive } from '../check.ts';
import { type Lamina, laminaIn } from '../lamina.ts';
import type { Assumed } from './types.ts';

/** A resin is alike in all directions: Pa, and Poisson's ratio. */
export type Resin = { readonly e: number; readonly nu: number };

/** Share of fiber that round fibers can have at all, packed like cells of a comb: pi/(2 sqrt 3) */
const DENSEST = 0.9069;

/**
 * Stiffness of a ply from its fiber and its resin.
 *
 * @param fiber `e1` along, `e2` across and `g12` of the fiber, Pa, greater than 0; `nu12`
 * @param resin `e`, Pa, greater than 0; `nu`, 0 to less than 0.5
 * @param fiberVolumeFraction 0.01 to 0.9069, the densest packing
 * @param xi2 how much the fiber's shape helps across; at least 0, 2 when not given, 0 is the lower bound
 * @param xi12 the same for shear; 1 when not given
 * @returns `e1`, `e2`, `g12`, Pa; `nu12`; `assumed`
 * @throws RangeError naming the field
 *
 * Formula: E1 and nu12 by the rule of mixtures; P = Pm (1 + xi eta Vf)/(1 - eta Vf), eta = (Pf - Pm)/(Pf + xi Pm).
 * Source: Halpin and Kardos, The Halpin-Tsai Equations: A Review, Polym. Eng. Sci. 16 (1976).
 *
 * @example
 * // Glass of 85 GPa in epoxy of 3.4 GPa, 70 % fiber. How stiff along, across, in shear?
 * laminaFromFiber({
 *   fiber: { e1: 85e9, e2: 85e9, g12: 35.42e9, nu12: 0.2 },
 *   resin: { e: 3.4e9, nu: 0.3 },
 *   fiberVolumeFraction: 0.7,
 * }).e2
 * // => 2.02e10
 */
export function laminaFromFiber(input: {
  fiber: Lamina;
  resin: Resin;
  fiberVolumeFraction: number;
  xi2?: number | undefined;
  xi12?: number | undefined;
}): Lamina & { readonly assumed: readonly Assumed[] } {
  const { fiber } = input;
  laminaIn(fiber, 'fiber.');
  const resin = resinIn(input);
  const share = volumeIn(input, 'fiberVolumeFraction');
  const xi2 = input.xi2 === undefined ? 2 : notNegative(input, 'xi2', '');
  const xi12 = input.xi12 === undefined ? 1 : notNegative(input, 'xi12', '');
  const across = (of: number, bare: number, xi: number) =>
    bare * raised((of - bare) / (of + xi * bare), xi, share);
  const lamina = {
    e1: share * fiber.e1 + (1 - share) * resin.e,
    e2: across(fiber.e2, resin.e, xi2),
    g12: across(fiber.g12, resin.g, xi12),
    nu12: share * fiber.nu12 + (1 - share) * resin.nu,
  };
  laminaIn(lamina, '');
  return { ...lamina, assumed: ['along by mixtures', 'across by Halpin-Tsai'] };
}

/** By how much fibers raise a resin's modulus across them. */
export function raised(eta: number, xi: number, share: number): number {
  return (1 + xi * eta * share) / (1 - eta * share);
}

export function volumeIn<Field extends string>(
  holder: { readonly [key in Field]?: number | null | undefined },
  field: Field,
): number {
  return numberIn(holder, field, '', { from: 0.01, to: DENSEST });
}

export function resinIn({ resin }: { resin: Resin }): Resin & { g: number } {
  const e = positive(resin, 'e', 'Pa', 'resin.');
  const nu = numberIn(resin, 'nu', '', { from: 0, below: 0.5 }, 'resin.');
  return { e, nu, g: e / (2 * (1 + nu)) };
}
