import { numberIn } from '../check.ts';
import { reserveOf } from './reserve.ts';
import { strengthIn } from './strength.ts';
import type { PlyStrength } from './types.ts';

export type PlyMode = 'along pulled' | 'along pressed' | 'across pulled' | 'across pressed' | 'shear';

/** Stress in a ply's own directions, Pa. */
export type PlyStress = { readonly s1: number; readonly s2: number; readonly s12: number };

/**
 * How many times a stress may grow until a ply gives, by two criteria.
 *
 * @param sx along x, Pa
 * @param sy across it, Pa
 * @param sxy shear, Pa
 * @param angle of the fibers to x, rad
 * @param strength `xt`, `xc`, `yt`, `yc`, `s`, Pa, each greater than 0
 * @returns `maxStress` and `tsaiWu`, reserves, 1e6 at most; `mode`, what gives first by the largest stress
 * @throws RangeError naming the field
 *
 * Formula: largest stress: the least of strength over stress. Tsai-Wu: a R^2 + b R = 1 with F12 = -sqrt(F11 F22)/2.
 * Source: Tsai and Wu, A General Theory of Strength for Anisotropic Materials, J. Compos. Mater. 5 (1971); Kaw,
 * section 2.8.
 *
 * @example
 * // Graphite/epoxy at 60 degrees under 2, -3 and 4 MPa. How many times as much by the largest stress?
 * plyReserve({
 *   sx: 2e6,
 *   sy: -3e6,
 *   sxy: 4e6,
 *   angle: Math.PI / 3,
 *   strength: { xt: 1500e6, xc: 1500e6, yt: 40e6, yc: 246e6, s: 68e6 },
 * }).maxStress
 * // => 16.33
 */
export function plyReserve(input: {
  sx: number;
  sy: number;
  sxy: number;
  angle: number;
  strength: PlyStrength;
}): { maxStress: number; mode: PlyMode; tsaiWu: number } {
  const [x, y, xy] = [numberIn(input, 'sx', 'Pa'), numberIn(input, 'sy', 'Pa'), numberIn(input, 'sxy', 'Pa')];
  const angle = numberIn(input, 'angle', 'rad', { from: -1000, to: 1000 });
  const strength = strengthIn(input.strength, 'strength.');
  const stress = inPly(x, y, xy, angle);
  return { ...largestStress(stress, strength), tsaiWu: tsaiWu(stress, strength) };
}

/** A stress turned into a ply's own directions. */
export function inPly(x: number, y: number, xy: number, angle: number): PlyStress {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    s1: c * c * x + s * s * y + 2 * c * s * xy,
    s2: s * s * x + c * c * y - 2 * c * s * xy,
    s12: c * s * (y - x) + (c * c - s * s) * xy,
  };
}

export function largestStress({ s1, s2, s12 }: PlyStress, { xt, xc, yt, yc, s }: PlyStrength) {
  const along = reserveOf(s1 < 0 ? xc : xt, s1);
  const across = reserveOf(s2 < 0 ? yc : yt, s2);
  const sheared = reserveOf(s, s12);
  const maxStress = Math.min(along, across, sheared);
  let mode: PlyMode = 'shear';
  if (maxStress === along) mode = s1 < 0 ? 'along pressed' : 'along pulled';
  else if (maxStress === across) mode = s2 < 0 ? 'across pressed' : 'across pulled';
  return { maxStress, mode };
}

export function tsaiWu({ s1, s2, s12 }: PlyStress, { xt, xc, yt, yc, s }: PlyStrength): number {
  // In shares of the strengths, so that squares of Pa neither vanish nor overflow.
  const [along, across] = [s1 / Math.sqrt(xt * xc), s2 / Math.sqrt(yt * yc)];
  const squared = along * along + across * across - along * across + (s12 / s) ** 2;
  const linear = s1 / xt - s1 / xc + s2 / yt - s2 / yc;
  return reserveOf(2, linear + Math.sqrt(linear * linear + 4 * squared));
}
