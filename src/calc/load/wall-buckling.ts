import { positive } from '../check.ts';
import { MOST_RESERVE, reserveOf } from './reserve.ts';
import { forcesIn, sectionIn } from './section-in.ts';
import type { StationForces, WallLaminate, WallSection } from './types.ts';

const TORSION_KNOCKDOWN = 0.67;

export type WallBuckling = {
  /** Until the shares add up to 1; without a safety factor, 1e6 at most */
  readonly reserve: number;
  /** Of what each would bear alone, that is used. */
  readonly shares: { readonly pressed: number; readonly bent: number; readonly twisted: number };
  /** What the wall bears of each alone, knocked down: N, N m, N m */
  readonly bears: { readonly axial: number; readonly moment: number; readonly torque: number };
  /** What real tubes reach of the theory. */
  readonly knockdown: { readonly axial: number; readonly moment: number; readonly torque: number };
};

/**
 * Local buckling of a tube's wall, pressed, bent and twisted together, the wall as thin all round as where it is
 * thinnest.
 *
 * @param section what `wallSection` gives
 * @param length between supports or ribs that keep it round, m, greater than 0; longer is weaker in torsion
 * @param moment N m
 * @param shear N; no part in it
 * @param torque N m
 * @param axial N, pulled is positive and helps nothing
 * @returns see `WallBuckling`
 * @throws RangeError naming the field
 *
 * Formula: N = (2/R) sqrt(least of D(h)/F(h)) over wave shapes h, D = D11 + (2 D12 + 4 D66) h + D22 h^2 and
 * F = a22 + (a66 + 2 a12) h + a11 h^2, a the inverse of A: the least that the waves of SP-8007 can find. Knock-down
 * 1 - 0.901 (1 - exp(-phi)) pressed, 0.731 for 0.901 bent, phi = sqrt(R/((D11 D22/(A11 A22))^(1/4)))/29.8. Torque
 * 21.75 D22^(5/8) (1/a11)^(3/8) R^(5/4)/L^(1/2), or that of a long tube, 2 pi R^2 1.52 D22^(3/4) (1/a11)^(1/4)/R^(3/2),
 * whichever is more, times 0.67. Shares add up, Rc + Rb + Rt = 1.
 * Source: NASA SP-8007, Buckling of Thin-Walled Circular Cylinders (1968), from memory; long tubes in torsion as in
 * Timoshenko and Gere, Theory of Elastic Stability, with the orthotropic wall put in.
 *
 * @example
 * // 150 N m on a 38 mm tube of 1.2 mm carbon along, 3 m. What reserve against a buckle in the wall?
 * wallBuckling({
 *   section: wallSection({
 *     innerDiameter: 0.038,
 *     plies: [{ e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0, thickness: 0.0012 }],
 *   }),
 *   length: 3,
 *   moment: 150,
 *   shear: 0,
 *   torque: 0,
 *   axial: 0,
 * }).reserve
 * // => 3.864
 */
export function wallBuckling(input: StationForces & { section: WallSection; length: number }): WallBuckling {
  const { laminate, radius } = sectionIn(input);
  const length = positive(input, 'length', 'm');
  const { moment, torque, axial } = forcesIn(input);
  const knockdown = { ...knockdownsOf(laminate, radius), torque: TORSION_KNOCKDOWN };
  const running = pressedRunning(laminate, radius);
  const bears = {
    axial: knockdown.axial * running * 2 * Math.PI * radius,
    moment: knockdown.moment * running * Math.PI * radius * radius,
    torque: knockdown.torque * torqueBorne(laminate, radius, length),
  };
  const shares = {
    pressed: Math.max(0, -axial) / bears.axial,
    bent: Math.abs(moment) / bears.moment,
    twisted: Math.abs(torque) / bears.torque,
  };
  const reserve = reserveOf(1, shares.pressed + shares.bent + shares.twisted);
  return { reserve: Math.min(reserve, MOST_RESERVE), shares, bears, knockdown };
}

/** Running load along the tube at which theory has its wall buckle, N/m. */
function pressedRunning({ d, flexibility: f }: WallLaminate, radius: number): number {
  const [d0, d1, d2] = [d[0][0], 2 * d[0][1] + 4 * d[2][2], d[1][1]];
  const [f0, f1, f2] = [f[1][1], f[2][2] + 2 * f[0][1], f[0][0]];
  const ratioAt = (h: number) => (d0 + d1 * h + d2 * h * h) / (f0 + f1 * h + f2 * h * h);
  let least = Math.min(d0 / f0, d2 / f2);
  // Where its slope is none.
  const [a, b, c] = [d2 * f1 - d1 * f2, d2 * f0 - d0 * f2, d1 * f0 - d0 * f1];
  const inside = b * b - a * c;
  if (inside >= 0) {
    const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside));
    for (const h of [q / a, c / q]) if (h > 0 && Number.isFinite(h)) least = Math.min(least, ratioAt(h));
  }
  return (2 / radius) * Math.sqrt(least);
}

function knockdownsOf({ a, d }: WallLaminate, radius: number): { axial: number; moment: number } {
  const thick = ((d[0][0] * d[1][1]) / (a[0][0] * a[1][1])) ** 0.25;
  const away = 1 - Math.exp(-Math.sqrt(radius / thick) / 29.8);
  return { axial: 1 - 0.901 * away, moment: 1 - 0.731 * away };
}

/** Torque at which theory has its wall buckle, N m. */
function torqueBorne({ d, flexibility }: WallLaminate, radius: number, length: number): number {
  const [along, around] = [1 / flexibility[0][0], d[1][1]];
  const moderate = (21.75 * around ** 0.625 * along ** 0.375 * radius ** 1.25) / Math.sqrt(length);
  // Two waves round: (2/3) 3^(1/4) sqrt(2^2 - 1).
  const long = 2 * Math.PI * Math.sqrt(radius) * (2 / 3) * 3 ** 0.75 * around ** 0.75 * along ** 0.25;
  return Math.max(moderate, long);
}
