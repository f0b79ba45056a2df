import type { Piece } from '#shared/record/piece.ts';
import type { Drawn, WallDraft } from './wall-draft.ts';
import { setPiece } from './wall-edits.ts';

/** One piece of a wall under the pencil. */
export interface PieceEdit {
  draft: WallDraft;
  piece: Piece;
  /** Its place in the wrap, from 0. */
  index: number;
  /** Of the tube, m */
  length: number;
  /** The last wall that could be rolled, and the piece's place in it; -1 when it is not in it yet. */
  drawn: Drawn;
  inRoll: number;
  /** Edits of one gesture are undone together. */
  set: (piece: Piece, gesture?: string) => void;
}

/** Undefined when there is no such piece. */
export function pieceEdit(draft: WallDraft, id: string): PieceEdit | undefined {
  const { wall, length } = draft.state.value;
  const index = wall.pieces.findIndex((p) => p.id === id);
  const piece = wall.pieces[index];
  const drawn = draft.drawn.value;
  if (!piece) return undefined;
  const set = (next: Piece, gesture?: string) => draft.change(setPiece(draft.state.peek(), next), gesture);
  const inRoll = drawn.plan.wall.pieces.findIndex((p) => p.id === id);
  return { draft, piece, index, length, drawn, inRoll, set };
}
