import {
  flatPieces,
  rollOf,
  theShelf,
  type WalledPlan,
  type WallShelf,
} from '#app/planning/wall/wall-model.ts';
import { pieceName, wallProblem } from '#app/planning/wall/wall-words.ts';
import { type FlatPiece, fiberDrift, outlineArea, outlineBounds, type Roll, type RolledPiece } from '#calc';
import type { Piece } from '#shared/record/piece.ts';

/** A piece of the wall as it is marked out, cut and weighed. */
export interface CutPiece {
  id: string;
  /** Its number in wrap order, from 1. */
  number: number;
  name: string;
  piece: Piece;
  rolled: RolledPiece;
  flat: FlatPiece;
  /** m2 */
  area: number;
  /** Along the datum edge and square to it, m, at its longest and widest. */
  length: number;
  width: number;
  /** Warp to datum edge, rad */
  warpAngle: number;
}

/** Wraps in the middle of a piece. */
function middleWraps(roll: Roll, { from, to, wraps }: RolledPiece): number {
  const middle = (from + to) / 2;
  const i = roll.at.findIndex((at) => at >= middle);
  return wraps[i < 0 ? wraps.length - 1 : i] ?? 0;
}

/**
 * On a tapered mandrel the fiber turns against the tube axis as it goes round. Laid half of that the other way, the
 * direction wanted lies about mid-piece.
 */
function warpToDatum(roll: Roll, rolled: RolledPiece, { halfAngle }: FlatPiece): number {
  const wraps = middleWraps(roll, rolled);
  const { eachWay } = fiberDrift({ wraps, halfAngle: Math.abs(halfAngle) });
  return rolled.spec.angle + Math.sign(halfAngle) * eachWay;
}

/**
 * Every piece of a plan's wall, in wrap order.
 *
 * @throws RangeError when the wall cannot be rolled
 */
export function cutPieces(plan: WalledPlan, shelf: WallShelf = theShelf): CutPiece[] {
  const roll = rollOf(plan, shelf);
  return flatPieces(roll).flatMap((flat, i) => {
    const [piece, rolled] = [plan.wall.pieces[i], roll.pieces[i]];
    if (!piece || !rolled) return [];
    const { outline } = flat;
    const { minX, maxX, minY, maxY } = outlineBounds({ outline });
    return {
      id: piece.id,
      number: i + 1,
      name: pieceName(piece, i),
      piece,
      rolled,
      flat,
      area: outlineArea({ outline }),
      length: maxX - minX,
      width: maxY - minY,
      warpAngle: warpToDatum(roll, rolled, flat),
    };
  });
}

/** The pieces, or the sentence that says why there are none. */
export function piecesOrProblem(plan: WalledPlan, shelf: WallShelf = theShelf): CutPiece[] | string {
  try {
    return cutPieces(plan, shelf);
  } catch (error) {
    if (error instanceof RangeError) return wallProblem(error, plan.wall).says;
    throw error;
  }
}
