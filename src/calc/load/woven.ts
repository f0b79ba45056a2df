import { numberIn, positive } from '../check.ts';
import { laminaIn } from '../lamina.ts';
import { strengthIn } from './strength.ts';
import type { Arc, CarryingPly, LoadMaterial } from './types.ts';
import { arcIn } from './wall-arcs.ts';

/**
 * A woven ply as two half plies with all fibers one way, warp inside, weft outside.
 *
 * @param material of the half plies as if they lay straight: Pa, Poisson's ratio, strengths in Pa, density in kg/m3
 * @param crimpFactor what the waves of the weave leave of stiffness and strength along the fibers, above 0 to 1;
 *   0.85 to 0.95 is common for plain cloth (common practice, no source)
 * @param angle of the warp to the tube's axis, rad
 * @param thickness of the whole cloth, m, greater than 0
 * @param arc see `Arc`
 * @returns two plies
 * @throws RangeError naming the field
 *
 * Formula: e1, xt and xc times the crimp factor, all else as it is; half the thickness each.
 * Source: Kaw, section 2.4, for the plies; crimp factor common practice.
 *
 * @example
 * // Plain carbon cloth, 0.3 mm, warp along. How stiff is the warp's half along?
 * wovenPlies({
 *   material: { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3 },
 *   crimpFactor: 0.9,
 *   angle: 0,
 *   thickness: 0.0003,
 * })[0].e1
 * // => 9.45e10
 */
export function wovenPlies(input: {
  material: LoadMaterial;
  crimpFactor: number;
  angle: number;
  thickness: number;
  arc?: Arc | undefined;
}): [CarryingPly, CarryingPly] {
  const { material, arc } = input;
  laminaIn(material, 'material.');
  const crimp = numberIn(input, 'crimpFactor', '', { above: 0, to: 1 });
  const angle = numberIn(input, 'angle', 'rad', { from: -1000, to: 1000 });
  const thickness = positive(input, 'thickness', 'm') / 2;
  const given = material.strength && strengthIn(material.strength, 'material.strength.');
  const strength = given && { ...given, xt: given.xt * crimp, xc: given.xc * crimp };
  if (material.density !== undefined) positive(material, 'density', 'kg/m3', 'material.');
  arcIn(arc, '');
  const half = { ...material, e1: material.e1 * crimp, strength, thickness, arc };
  // What the waves take along may leave too little for Poisson's ratio; blame what was asked for.
  if (Math.abs(material.nu12) >= Math.sqrt(half.e1 / material.e2)) {
    throw new RangeError(`crimpFactor must leave nu12 below sqrt(e1/e2), got ${crimp}`);
  }
  return [
    { ...half, angle },
    { ...half, angle: angle + Math.PI / 2 },
  ];
}
