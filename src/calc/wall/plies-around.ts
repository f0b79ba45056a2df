import { numberIn } from '../check.ts';
import { covers, partOf } from './around.ts';
import { snapped } from './piece-curve.ts';
import { pieceIn, readAt, rollIn, sampleAt } from './roll-at.ts';
import type { AroundSeam, AroundStep, Roll } from './types.ts';

const TURN = 2 * Math.PI;
const SAME_ANGLE = 1e-9;

/** A piece at one station: so many whole turns, and one more ply over a share of the turn. */
type Layer = {
  readonly piece: number;
  readonly cloth: boolean;
  readonly thickness: number;
  readonly whole: number;
  readonly start: number;
  readonly share: number;
};

/**
 * Plies of cloth and wall round the tube at a station, and where the edges of each piece lie. Where the
 * wall jumps it is what comes after.
 *
 * @param roll what `rollPieces` gives
 * @param at m from end 0, 0 to the length
 * @returns `steps` from 0 to 2 pi without a gap, `seams` of the pieces that are there, in wrap order
 * @throws RangeError naming the field
 *
 * Formula: a piece of N wraps lies floor N times all round, once more from its datum edge over the rest.
 *
 * @example
 * // 2.25 wraps from the datum line on. How many plies over the first quarter turn?
 * pliesAround({
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
 * }).steps[0]
 * // => { from: 0, to: 1.571, plies: 3, wall: 0.0009 }
 */
export function pliesAround(input: { roll: Roll; at: number }): { steps: AroundStep[]; seams: AroundSeam[] } {
  const roll = rollIn(input);
  const layers = layersOf(roll, numberIn(input, 'at', 'm', { from: 0, to: roll.length }));
  const cuts = layers.flatMap(({ start, share }) => [start, partOf(start + share)]);
  const steps: AroundStep[] = [];
  let from = 0;
  for (const to of [...cuts, 1].sort((a, b) => a - b)) {
    if (to - from < SAME_ANGLE) continue;
    steps.push({ from: from * TURN, to: to * TURN, ...stackAt(layers, (from + to) / 2) });
    from = to;
  }
  const seams = layers.map(({ piece, start, share }) => ({
    piece,
    inner: start * TURN,
    outer: partOf(start + share) * TURN,
  }));
  return { steps, seams };
}

/**
 * Where the free edge of a piece lies along the tube: the seam. The angle goes on counting past a turn,
 * so that the line can be drawn without a break.
 *
 * @param roll what `rollPieces` gives
 * @param piece its number in the roll, from 0
 * @returns `at` m from end 0 and `angle` rad, where the piece is
 * @throws RangeError naming the field
 *
 * Formula: clock + 2 pi N.
 *
 * @example
 * // 2.25 wraps from the datum line on. Where does the free edge lie?
 * seamAngle({
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
 *   piece: 0,
 * }).angle[0]
 * // => 14.14
 */
export function seamAngle(input: { roll: Roll; piece: number }): { at: Float64Array; angle: Float64Array } {
  const { spec, wraps } = pieceIn(input);
  const first = wraps.findIndex((turns) => turns > 0);
  const last = first + wraps.filter((turns) => turns > 0).length;
  const angle = wraps.slice(first, last).map((turns) => spec.clock + TURN * turns);
  return { at: input.roll.at.slice(first, last), angle };
}

function layersOf(roll: Roll, at: number): Layer[] {
  const place = sampleAt(roll, at);
  return roll.pieces.flatMap(({ spec, wraps }, piece) => {
    const turns = snapped(readAt(wraps, place));
    if (turns === 0) return [];
    const whole = Math.floor(turns);
    const { thickness, kind, clock } = spec;
    return [
      { piece, cloth: kind === 'cloth', thickness, whole, start: partOf(clock / TURN), share: turns - whole },
    ];
  });
}

function stackAt(layers: readonly Layer[], turn: number): { plies: number; wall: number } {
  let plies = 0;
  let wall = 0;
  for (const { cloth, thickness, whole, start, share } of layers) {
    const here = whole + (covers(start, share, turn) ? 1 : 0);
    if (cloth) plies += here;
    wall += here * thickness;
  }
  return { plies, wall };
}
