import { finite, positive } from '../check.ts';
import type { TubePly, WallLaminate, WallSection } from './types.ts';
import { arcsOf, laminateOf, type ReadyPly, readyPlies, type WallArc } from './wall-arcs.ts';

/** Of a ring pinched between two fingers: pi/4 - 2/pi. Roark, Formulas for Stress and Strain, circular rings. */
export const PINCHED = Math.PI / 4 - 2 / Math.PI;

/**
 * What a tube is at one station: stiffness, mass, and its wall as a laminate where it is thinnest.
 *
 * @param innerDiameter m, greater than 0
 * @param plies from the bore outward, at least one; each with `e1`, `e2`, `g12` in Pa, `nu12`, `angle` in rad from
 *   the axis, `thickness` in m, and, where they are known, `density` in kg/m3 and `strength` in Pa; `arc` for a wrap
 *   that goes round only in part; `carries: false` for what only takes up room
 * @returns see `WallSection`
 * @throws RangeError naming the field; `plies` when a part of the turn has none that carries
 *
 * Formula: classical lamination theory of each arc, free to narrow and to shear: E t = 1/(A^-1)11, G t = 1/(A^-1)66.
 * EA and EI are sums of E over the ply's own sector of a ring, exact, about the center of stiffness. GJ is that of
 * one closed cell, 4 pi^2 over the integral of 1/(G r^3 t), which is exact for one even wall. Ring stiffness
 * D22/((pi/4 - 2/pi) R^3), with the mean of 1/D22 round the tube.
 * Source: Kaw, section 4.3; Bredt's second formula, Gere, Mechanics of Materials, torsion of thin tubes; Roark, rings.
 *
 * @example
 * // An aluminum tube of 38 mm bore, wall 1.25 mm. How stiff in bending, N m2?
 * wallSection({
 *   innerDiameter: 0.038,
 *   plies: [{ e1: 69e9, e2: 69e9, g12: 26e9, nu12: 0.327, angle: 0, thickness: 0.00125, density: 2700 }],
 * }).eiLeast
 * // => 2051
 */
export function wallSection(input: { innerDiameter: number; plies: readonly TubePly[] }): WallSection {
  const innerDiameter = positive(input, 'innerDiameter', 'm');
  const plies = readyPlies(input.plies);
  const arcs = arcsOf(plies);
  const laminates = arcs.map((arc) => laminateOf(plies, arc));
  const sums = summed(innerDiameter / 2, plies, arcs, laminates);
  const turn = 2 * Math.PI;
  const wallMean = sums.wall / turn;
  const radius = (innerDiameter + wallMean) / 2;
  const thinnest = laminates.reduce((least, one) => (one.thickness < least.thickness ? one : least));
  const known = plies.every(({ density }) => density !== undefined);
  finite(sums.ea / sums.twist, 'plies');
  return {
    innerDiameter,
    outsideDiameter: innerDiameter + 2 * wallMean,
    radius,
    wallMin: thinnest.thickness,
    wallMax: Math.max(...arcs.map(({ thickness }) => thickness)),
    wallMean,
    area: sums.area,
    massPerLength: known ? sums.mass : undefined,
    ea: sums.ea,
    ...principal(sums),
    gj: (turn * turn) / sums.twist,
    ringStiffness: turn / (sums.softness * PINCHED * radius ** 3),
    laminate: thinnest,
    strengthsKnown: plies.every(
      ({ stiffness, strength }) => stiffness === undefined || strength !== undefined,
    ),
  };
}

type Sums = ReturnType<typeof summed>;

function summed(
  bore: number,
  plies: readonly ReadyPly[],
  arcs: readonly WallArc[],
  laminates: readonly WallLaminate[],
) {
  const sums = { area: 0, mass: 0, ea: 0, y: 0, z: 0, yy: 0, zz: 0, yz: 0, twist: 0, softness: 0, wall: 0 };
  arcs.forEach(({ from, to, stack, thickness }, k) => {
    const laminate = laminates[k];
    if (!laminate) return;
    const turn = to - from;
    const [cos, sin] = [Math.sin(to) - Math.sin(from), Math.cos(from) - Math.cos(to)];
    const twice = (Math.sin(2 * to) - Math.sin(2 * from)) / 4;
    const both = (Math.sin(to) ** 2 - Math.sin(from) ** 2) / 2;
    let inner = bore;
    let polar = 0;
    for (const index of stack) {
      const ply = plies[index];
      if (!ply) continue;
      const t = ply.thickness;
      const outer = inner + t;
      const area = (t * (outer + inner)) / 2;
      sums.area += area * turn;
      sums.mass += area * turn * (ply.density ?? 0);
      if (ply.stiffness) {
        const { along, shear } = inWall(ply, laminate);
        const squares = outer * outer + inner * inner;
        const first = (along * t * (squares + outer * inner)) / 3;
        const second = (area * squares) / 2;
        sums.ea += along * area * turn;
        sums.y += first * cos;
        sums.z += first * sin;
        sums.yy += along * second * (turn / 2 + twice);
        sums.zz += along * second * (turn / 2 - twice);
        sums.yz += along * second * both;
        polar += shear * second;
      }
      inner = outer;
    }
    sums.twist += turn / polar;
    sums.softness += turn / laminate.d[1][1];
    sums.wall += turn * thickness;
  });
  return sums;
}

/** What modulus a ply shows in this wall, along and in shear, Pa: it narrows and shears with the others. */
function inWall({ stiffness }: ReadyPly, { flexibility: f }: WallLaminate): { along: number; shear: number } {
  if (!stiffness) return { along: 0, shear: 0 };
  const [x, , s] = stiffness;
  return {
    along: x[0] + (x[1] * f[1][0] + x[2] * f[2][0]) / f[0][0],
    shear: s[2] + (s[0] * f[0][2] + s[1] * f[1][2]) / f[2][2],
  };
}

/** Bending about the center of stiffness, in the two directions where it is least and most. */
function principal({ ea, y, z, yy, zz, yz }: Sums) {
  const [cy, cz] = [y / ea, z / ea];
  const [py, pz, pyz] = [yy - ea * cy * cy, zz - ea * cz * cz, yz - ea * cy * cz];
  const mean = (py + pz) / 2;
  const swing = Math.hypot((py - pz) / 2, pyz);
  const round = swing <= 1e-12 * mean;
  const stiff = Math.atan2(pyz, (py - pz) / 2) / 2;
  const soft = stiff + Math.PI / 2;
  const shift = Math.hypot(cy, cz);
  const centered = shift <= 1e-12;
  return {
    eiLeast: mean - swing,
    eiMost: mean + swing,
    softToward: round ? 0 : ((soft % Math.PI) + Math.PI) % Math.PI,
    shift: centered ? 0 : shift,
    shiftToward: centered ? 0 : Math.atan2(cz, cy),
  };
}
