import { theShelf, type WalledPlan, type WallShelf } from '#app/planning/wall/wall-model.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import type { CutPiece } from './cut-pieces.ts';

/** What comes off one roll. */
export interface ClothGroup {
  /** Of the cloth on the shelf. */
  doc: string;
  cloth: Cloth;
  pieces: CutPiece[];
}

/** The cloths of a wall, each with what is cut from it, in the order they are first wrapped. */
export function clothGroups(
  plan: WalledPlan,
  pieces: readonly CutPiece[],
  shelf: WallShelf = theShelf,
): ClothGroup[] {
  const groups = new Map<string, ClothGroup>();
  for (const one of pieces) {
    if (one.piece.kind !== 'cloth') continue;
    const doc = one.piece.material ?? plan.cloth;
    const cloth = shelf.cloth(doc);
    if (!cloth) continue;
    const group = groups.get(doc) ?? { doc, cloth, pieces: [] };
    group.pieces.push(one);
    groups.set(doc, group);
  }
  return [...groups.values()];
}

/** What is not cut off a roll of cloth: sheets of core and film. */
export const sheetPieces = (pieces: readonly CutPiece[]): CutPiece[] =>
  pieces.filter(({ piece }) => piece.kind !== 'cloth');
