import { type Curve, curveOf, readCurve, SAME_PLACE } from './curve.ts';
import { breaksOf } from './grid.ts';
import { askedAt, isThere, type PieceCurve, pieceCurve, pliesOn, widthOn, wrapsOn } from './piece-curve.ts';
import type { Roll } from './types.ts';

/** A piece and all it lies on, to be read anywhere and not only at the samples of the roll. */
export type Core = {
  readonly mandrel: Curve;
  readonly pieces: readonly PieceCurve[];
  readonly piece: PieceCurve;
};

export function coreOf(roll: Roll, index: number): Core | undefined {
  const pieces = roll.pieces.slice(0, index + 1).map(({ spec }, k) => pieceCurve(spec, `pieces[${k}].`));
  const piece = pieces.pop();
  return piece && { mandrel: curveOf(roll.mandrel, 'mandrel.'), pieces, piece };
}

/** What the piece is rolled on, and the turns it makes there. */
export function laidAt(
  { mandrel, pieces, piece }: Core,
  x: number,
  before: boolean,
): { startDiameter: number; wraps: number } {
  let startDiameter = readCurve(mandrel, x, before);
  for (const under of pieces) {
    if (!isThere(under, x, before)) continue;
    startDiameter += 2 * wrapsAt(under, startDiameter, x, before) * under.thickness;
  }
  return { startDiameter, wraps: wrapsAt(piece, startDiameter, x, before) };
}

/** Places within the piece where it, or what it lies on, bends or jumps; its ends first and last. */
export function breaksWithin({ mandrel, pieces, piece }: Core): { x: number; jump: boolean }[] {
  const { from, to } = piece;
  const inside = breaksOf(Number.POSITIVE_INFINITY, mandrel, [...pieces, piece]).filter(
    ({ x }) => x > from + SAME_PLACE && x < to - SAME_PLACE,
  );
  return [{ x: from, jump: false }, ...inside, { x: to, jump: false }];
}

function wrapsAt(piece: PieceCurve, startDiameter: number, x: number, before: boolean): number {
  const asked = askedAt(piece, x, before);
  const plies = pliesOn(piece, startDiameter, asked);
  return wrapsOn(piece, startDiameter, plies, widthOn(piece, startDiameter, plies, asked));
}
