import { finite, listOf, numberIn } from './check.ts';
import { add, type Matrix3, type Ply, type Row3, turnedPly } from './laminate.ts';

/** A ply that also says how it grows with heat, 1/K, along its fibers and across. */
export type HeatedPly = Ply & { readonly alpha1: number; readonly alpha2: number };

/** An expansion is written 23.6e-6; 23.6 is a slip. 1/K */
export const largestExpansion = 0.01;

/**
 * How the wall of a tube grows with heat. The wall stays round, so that it stretches and twists but does not
 * curl.
 *
 * @param plies at least one, in any order; as for `laminateStiffness`, with `angle` in rad from the tube's axis,
 *   and `alpha1`, `alpha2` in 1/K, from -0.01 to 0.01
 * @returns `axial`, `hoop` and `twist` (shear strain), 1/K
 * @throws RangeError naming the field: 'plies[0].alpha1'
 *
 * Formula: A^-1 times the sum of Q a h, with Q and a turned to the tube's axis.
 * Source: Kaw, Mechanics of Composite Materials, section 4.5, without curvature.
 *
 * @example
 * // Half along and half around, carbon/epoxy by hand: how does it grow?
 * laminateExpansion([
 *   { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, alpha1: 4e-7, alpha2: 4.5e-5, angle: 0, thickness: 1e-4 },
 *   { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, alpha1: 4e-7, alpha2: 4.5e-5, angle: Math.PI / 2, thickness: 1e-4 },
 * ]).hoop
 * // => 4.117e-6
 */
export function laminateExpansion(plies: readonly HeatedPly[]): {
  axial: number;
  hoop: number;
  twist: number;
} {
  const a: Matrix3 = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  const push: Row3 = [0, 0, 0];
  listOf('plies', plies, 1).forEach((ply, index) => {
    const path = `plies[${index}].`;
    const { stiffness, thickness, angle } = turnedPly(ply, path);
    const alpha1 = expansionIn(ply, 'alpha1', path);
    const alpha2 = expansionIn(ply, 'alpha2', path);
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const free: Row3 = [
      alpha1 * c * c + alpha2 * s * s,
      alpha1 * s * s + alpha2 * c * c,
      2 * (alpha1 - alpha2) * c * s,
    ];
    add(a, stiffness, thickness);
    const pushes = times(stiffness, free);
    push[0] += pushes[0] * thickness;
    push[1] += pushes[1] * thickness;
    push[2] += pushes[2] * thickness;
  });
  const [axial, hoop, twist] = solved(a, push);
  return { axial: finite(axial, 'plies'), hoop: finite(hoop, 'plies'), twist: finite(twist, 'plies') };
}

export function expansionIn<Field extends string>(
  holder: { readonly [key in Field]?: number | null | undefined },
  field: Field,
  path = '',
): number {
  return numberIn(holder, field, '1/K', { from: -largestExpansion, to: largestExpansion }, path);
}

const dot = (a: Row3, b: Row3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = ([x, y, s]: Matrix3, v: Row3): Row3 => [dot(x, v), dot(y, v), dot(s, v)];
const cross = (a: Row3, b: Row3): Row3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Cramer's rule, scaled first: three equal factors of 1e9 are not to overflow. */
function solved(matrix: Matrix3, right: Row3): Row3 {
  const scale = 1 / (matrix[0][0] + matrix[1][1]);
  const [x, y, s] = matrix.map((row) => row.map((value) => value * scale)) as Matrix3;
  const [u, v, w] = [cross(y, s), cross(s, x), cross(x, y)];
  const size = dot(x, u);
  const part = (i: 0 | 1 | 2) => (scale * (u[i] * right[0] + v[i] * right[1] + w[i] * right[2])) / size;
  return [part(0), part(1), part(2)];
}
