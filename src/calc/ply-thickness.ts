import { numberIn, positive } from './check.ts';

/**
 * Thickness of one cured ply, void-free.
 *
 * @param arealWeight of the dry cloth, kg/m2, greater than 0
 * @param fiberDensity kg/m3, greater than 0
 * @param fiberVolumeFraction greater than 0, at most 1
 * @returns m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: w / (rf Vf).
 * Source: MIL-HDBK-17-1F, fiber volume from areal weight and ply thickness.
 *
 * @example
 * // How thick is a ply of 193 g/m2 carbon at 35 % fiber?
 * curedPlyThickness({ arealWeight: 0.193, fiberDensity: 1800, fiberVolumeFraction: 0.35 })
 * // => 0.0003063
 */
export function curedPlyThickness(input: {
  arealWeight: number;
  fiberDensity: number;
  fiberVolumeFraction: number;
}): number {
  const fiberThickness = positive(input, 'arealWeight', 'kg/m2') / positive(input, 'fiberDensity', 'kg/m3');
  return fiberThickness / numberIn(input, 'fiberVolumeFraction', '', { above: 0, to: 1 });
}

/**
 * Share of the wall's volume that is fiber, by its thickness. Voids and tape ridges count as wall,
 * so it reads lower than the figure by weight when there are any.
 *
 * @param plies under the thumb at that point, greater than 0
 * @param arealWeight of the dry cloth, kg/m2, greater than 0
 * @param fiberDensity kg/m3, greater than 0
 * @param wall m, greater than 0, and no thinner than the bare fiber
 * @returns greater than 0, at most 1
 * @throws RangeError naming the field; `wall` when it is thinner than its fiber alone
 *
 * Formula: n w / (rf h).
 * Source: ASTM D3171, method II.
 *
 * @example
 * // Four plies of 193 g/m2 carbon measure 1.22 mm. How much is fiber?
 * fiberVolumeFromThickness({ plies: 4, arealWeight: 0.193, fiberDensity: 1800, wall: 0.00122 })
 * // => 0.3515
 */
export function fiberVolumeFromThickness(input: {
  plies: number;
  arealWeight: number;
  fiberDensity: number;
  wall: number;
}): number {
  const cloth = positive(input, 'plies', 'plies') * positive(input, 'arealWeight', 'kg/m2');
  const bare = cloth / positive(input, 'fiberDensity', 'kg/m3');
  return bare / numberIn(input, 'wall', 'm', { from: bare });
}
