import { numberIn, positive } from '../check.ts';
import { snapped } from '../wall/piece-curve.ts';
import { readAt, rollIn, sampleAt } from '../wall/roll-at.ts';
import type { PieceSpec, Roll } from '../wall/types.ts';
import type { Arc, IdlePly, LoadMaterial, TubePly } from './types.ts';
import { wovenPlies } from './woven.ts';

/** What a piece is made of: a material, woven where a crimp factor is said; or nothing that carries. */
export type PieceMaterial =
  | (LoadMaterial & { readonly carries?: true | undefined; readonly crimpFactor?: number | undefined })
  | { readonly carries: false; readonly density?: number | undefined };

/**
 * The plies of a rolled tube at a station, from the bore outward, ready for `wallSection`.
 *
 * @param roll what `rollPieces` gives
 * @param at m from end 0, 0 to the length
 * @param materials one for each piece of the roll, in wrap order
 * @returns `innerDiameter`, m, and `plies`
 * @throws RangeError naming the field; `materials` when there are not as many as pieces
 *
 * Formula: a piece of N wraps lies floor N times all round, once more from its datum edge over the rest; a piece that
 * is rolled toward its `angle` lies at that angle to the axis.
 *
 * @example
 * // 2.25 wraps from the datum line on. How many plies are there, the last over a quarter?
 * pliesAt({
 *   roll: rollPieces({
 *     mandrel: { stations: [{ at: 0, value: 0.038 }, { at: 1, value: 0.038 }], between: 'straight' },
 *     pieces: [
 *       {
 *         kind: 'cloth', thickness: 0.0003, start: 0, clock: 0, angle: 0, overlap: 0,
 *         wraps: { stations: [{ at: 0, value: 2.25 }, { at: 1, value: 2.25 }], between: 'straight' },
 *       },
 *     ],
 *     length: 1,
 *     step: 0.1,
 *   }),
 *   at: 0.5,
 *   materials: [{ e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3 }],
 * }).plies.length
 * // => 3
 */
export function pliesAt(input: { roll: Roll; at: number; materials: readonly PieceMaterial[] }): {
  innerDiameter: number;
  plies: TubePly[];
} {
  const roll = rollIn(input);
  const place = sampleAt(roll, numberIn(input, 'at', 'm', { from: 0, to: roll.length }));
  const { materials } = input;
  if (!Array.isArray(materials) || materials.length !== roll.pieces.length) {
    throw new RangeError(`materials must be one for each of the ${roll.pieces.length} pieces`);
  }
  const plies = roll.pieces.flatMap(({ spec, wraps }, piece) => {
    const turns = snapped(readAt(wraps, place));
    const material = input.materials[piece];
    if (turns === 0 || material === undefined) return [];
    const whole = Math.floor(turns);
    const over = turns - whole;
    const layers: TubePly[] = [];
    const round = whole > 0 ? layer(spec, material, `materials[${piece}].`) : [];
    for (let k = 0; k < whole; k += 1) layers.push(...round);
    if (over > 0) {
      const arc = { from: spec.clock, to: spec.clock + over * 2 * Math.PI };
      layers.push(...layer(spec, material, `materials[${piece}].`, arc));
    }
    return layers;
  });
  return { innerDiameter: readAt(roll.diameter, place), plies };
}

function layer(spec: PieceSpec, material: PieceMaterial, path: string, arc?: Arc): TubePly[] {
  const { thickness, angle } = spec;
  if (material.carries === false) {
    if (material.density !== undefined) positive(material, 'density', 'kg/m3', path);
    const idle: IdlePly = { carries: false, thickness, density: material.density, arc };
    return [idle];
  }
  const { crimpFactor, ...own } = material;
  if (crimpFactor === undefined) return [{ ...own, angle, thickness, arc }];
  numberIn(material, 'crimpFactor', '', { above: 0, to: 1 }, path);
  return wovenPlies({ material: own, crimpFactor, angle, thickness, arc });
}
