import { finite, listOf, numberIn, positive } from './check.ts';
import { type Lamina, laminaIn, type ReducedStiffness } from './lamina.ts';

/** A ply of a laminate: `angle` of its fibers to the laminate's x, rad; `thickness`, m. */
export type Ply = Lamina & { readonly angle: number; readonly thickness: number };

/** Three rows of three, for x, y and shear. */
export type Matrix3 = [Row3, Row3, Row3];
export type Row3 = [number, number, number];

/**
 * Stiffness of a laminate about its middle plane: stretch, coupling and bending.
 *
 * @param plies bottom to top, at least one; each with `e1`, `e2`, `g12` in Pa, `nu12`, `angle` in rad and
 *   `thickness` in m, greater than 0
 * @returns `a` N/m, `b` N, `d` N m, 3 by 3
 * @throws RangeError naming the field: 'plies[2].nu12'
 *
 * Formula: A = sum Q (h1 - h0), B = sum Q (h1^2 - h0^2)/2, D = sum Q (h1^3 - h0^3)/3, with Q turned to x.
 * Source: Kaw, Mechanics of Composite Materials, sections 2.6 and 4.3.
 *
 * @example
 * // Three plies of 5 mm graphite/epoxy at 0, 30 and -45 degrees: what stiffness in stretch?
 * laminateStiffness([
 *   { e1: 181e9, e2: 10.3e9, g12: 7.17e9, nu12: 0.28, angle: 0, thickness: 0.005 },
 *   { e1: 181e9, e2: 10.3e9, g12: 7.17e9, nu12: 0.28, angle: Math.PI / 6, thickness: 0.005 },
 *   { e1: 181e9, e2: 10.3e9, g12: 7.17e9, nu12: 0.28, angle: -Math.PI / 4, thickness: 0.005 },
 * ]).a
 * // => [[1.739e9, 3.884e8, 5.663e7], [3.884e8, 4.533e8, -1.141e8], [5.663e7, -1.141e8, 4.525e8]]
 */
export function laminateStiffness(plies: readonly Ply[]): { a: Matrix3; b: Matrix3; d: Matrix3 } {
  const turned = listOf('plies', plies, 1).map((ply, index) => turnedPly(ply, `plies[${index}].`));
  const total = turned.reduce((sum, { thickness }) => sum + thickness, 0);
  const [a, b, d] = [zeros(), zeros(), zeros()];
  let foot = -total / 2;
  for (const { stiffness, thickness } of turned) {
    // By the middle of the ply: a difference of powers would lose a thin ply far from the middle plane.
    const middle = foot + thickness / 2;
    add(a, stiffness, thickness);
    add(b, stiffness, thickness * middle);
    add(d, stiffness, thickness * (middle * middle + (thickness * thickness) / 12));
    foot += thickness;
  }
  return { a, b, d };
}

/** A ply's stiffness in the laminate's directions, checked. */
export function turnedPly(ply: Ply, path: string): { stiffness: Matrix3; thickness: number; angle: number } {
  const own = laminaIn(ply, path);
  const angle = numberIn(ply, 'angle', 'rad', { from: -1000, to: 1000 }, path);
  return { stiffness: turned(own, angle), thickness: positive(ply, 'thickness', 'm', path), angle };
}

function turned({ q11, q12, q22, q66 }: ReducedStiffness, angle: number): Matrix3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [cc, ss, cs] = [c * c, s * s, c * s];
  const both = q12 + 2 * q66;
  const xx = q11 * cc * cc + 2 * both * cc * ss + q22 * ss * ss;
  const yy = q11 * ss * ss + 2 * both * cc * ss + q22 * cc * cc;
  const xy = (q11 + q22 - 4 * q66) * cc * ss + q12 * (cc * cc + ss * ss);
  const xs = cs * ((q11 - both) * cc - (q22 - both) * ss);
  const ys = cs * ((q11 - both) * ss - (q22 - both) * cc);
  const shear = (q11 + q22 - 2 * q12) * cc * ss + q66 * (cc - ss) * (cc - ss);
  return [
    [xx, xy, xs],
    [xy, yy, ys],
    [xs, ys, shear],
  ];
}

const zeros = (): Matrix3 => [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];

/** Adds so many times one matrix to another, in place. */
export function add(sum: Matrix3, { 0: x, 1: y, 2: s }: Matrix3, times: number): void {
  [x, y, s].forEach((row, i) => {
    row.forEach((value, j) => {
      const into = sum[i];
      if (into) into[j] = finite((into[j] ?? 0) + value * times, 'thickness');
    });
  });
}
