import type { Roll } from '#calc';
import type { Piece } from '#shared/record/piece.ts';
import { sampleNear } from './pictures/angles.ts';
import { convert, type GivenBy, stationsOnTube, type Under } from './shape-edits.ts';

/** What a piece of a roll is laid on at a place, and what it is made of. */
export function underPiece(roll: Roll, index: number, piece: Piece, at: number): Under | undefined {
  const rolled = roll.pieces[index];
  const startDiameter = rolled?.startDiameter[sampleNear(roll, at)];
  if (!rolled || startDiameter === undefined) return undefined;
  return { startDiameter, thickness: rolled.spec.thickness, overlap: piece.overlap };
}

export type Figures = Record<GivenBy, number> & { at: number };

/** Plies, wall and width at a station, from the one that is given; undefined where that cannot be. */
export function stationFigures(
  roll: Roll,
  index: number,
  piece: Piece,
  station: number,
): Figures | undefined {
  const here = stationsOnTube(piece)[station];
  const under = here && underPiece(roll, index, piece, here.at);
  if (!here || !under) return undefined;
  try {
    const to = (by: GivenBy) =>
      by === piece.shape.by ? here.value : convert({ [piece.shape.by]: here.value }, by, under);
    return { at: here.at, plies: to('plies'), width: to('width'), wall: to('wall') };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
