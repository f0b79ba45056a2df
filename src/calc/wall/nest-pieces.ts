import { listOf, numberIn } from '../check.ts';
import { type Copy, copyOf, lengthOf } from './nest-place.ts';
import { profileOf } from './nest-profile.ts';
import { shortestLayout } from './nest-search.ts';
import { outlineArea, outlineIn } from './outline.ts';
import { laidFlat } from './splice.ts';
import type { Nest, NestPiece, Unplaced } from './types.ts';

const MOST_COPIES = 500;
const SMALLEST = 1e-4;
/** A strip of cloth narrower than this is none, m. */
const NARROWEST = 0.01;
/** Layouts to try, and how many copies to lay in all of them: with many copies each takes long. */
const TRIES = 120;
const COPIES_LAID = 1200;

/**
 * Pieces laid out on a roll of cloth, warp along the roll, head to tail where that saves cloth. The same
 * input gives the same layout. Never longer than laying them side by side in the order given.
 *
 * @param pieces what to cut: `outline` m, `count` 1 or more, 500 in all; `warpAngle` rad
 * @param rollWidth m, greater than 0
 * @param gap allowance kept round each piece for its mask, m, at least 0: two pieces lie two gaps apart
 * @param selvage not used along each side of the roll, m, at least 0
 * @param spliceOverlap proposed where a piece is wider than the roll, m, at most half of what is left of
 *   the roll; 0.025 when not given
 * @param tries layouts to try, 1 to 1000; up to 120 when not given. 1 is for a picture that follows
 *   a finger
 * @returns `placements` with x along the roll and y across it from its edge, selvage and all; `length`
 *   of cloth; `share` of it used; `unplaced` with a splice for each
 * @throws RangeError naming the field; `rollWidth` when the allowance leaves nothing of it
 *
 * @example
 * // Two pieces 3 m long, from 400 to 200 mm wide, on a roll of 1.27 m. What length of cloth?
 * nestPieces({
 *   pieces: [
 *     {
 *       id: 'skin',
 *       outline: [{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 3, y: 0.2 }, { x: 0, y: 0.4 }],
 *       count: 2,
 *       warpAngle: 0,
 *     },
 *   ],
 *   rollWidth: 1.27,
 *   gap: 0.01,
 *   selvage: 0.01,
 * }).length
 * // => 3.02
 */
export function nestPieces(input: {
  pieces: readonly NestPiece[];
  rollWidth: number;
  gap: number;
  selvage: number;
  spliceOverlap?: number | undefined;
  tries?: number | undefined;
}): Nest {
  const gap = numberIn(input, 'gap', 'm', { from: 0, to: 1 });
  const selvage = numberIn(input, 'selvage', 'm', { from: 0, to: 1 });
  const taken = 2 * (gap + selvage);
  const rollWidth = numberIn(input, 'rollWidth', 'm', { from: taken + NARROWEST, to: 100 });
  const room = rollWidth - taken;
  const overlap =
    input.spliceOverlap === undefined
      ? Math.min(0.025, room / 2)
      : numberIn(input, 'spliceOverlap', 'm', { from: 0, to: room / 2 });
  const all = copiesOf(input.pieces, gap);
  const enough = Math.max(6, Math.min(TRIES, Math.floor(COPIES_LAID / Math.max(1, all.length))));
  const tries = input.tries === undefined ? enough : numberIn(input, 'tries', '', { from: 1, to: 1000 });
  const copies = all.filter(({ upright }) => upright.height <= room + 1e-9);
  const layout = shortestLayout(copies, { from: selvage, to: rollWidth - selvage }, tries);
  const length = lengthOf(layout);
  const area = layout.reduce((sum, { copy }) => sum + copy.area, 0);
  const wide = all.filter(({ copy, upright }) => copy === 0 && upright.height > room + 1e-9);
  return {
    placements: layout.map(({ copy, profile, x, y }) => ({
      id: copy.id,
      copy: copy.copy,
      x,
      y,
      flipped: profile === copy.flipped,
    })),
    length,
    share: length > 0 ? area / (length * rollWidth) : 0,
    unplaced: wide.map(({ id, upright }) => unplaced(id, upright.height, room, overlap)),
  };
}

function copiesOf(pieces: readonly NestPiece[], gap: number): Copy[] {
  let left = MOST_COPIES;
  return listOf('pieces', pieces, 0).flatMap((piece, index) => {
    const path = `pieces[${index}].`;
    const count = numberIn(piece, 'count', '', { from: 1, to: left }, path);
    if (!Number.isInteger(count)) throw new RangeError(`${path}count must be a whole number, got ${count}`);
    left -= count;
    const angle = numberIn(piece, 'warpAngle', 'rad', { from: -2 * Math.PI, to: 2 * Math.PI }, path);
    const outline = outlineIn(piece, path);
    const profile = profileOf(laidFlat(outline, -angle), gap);
    if (profile.width < SMALLEST || profile.height < SMALLEST) {
      throw new RangeError(`${path}outline must enclose some cloth, got a line`);
    }
    const one = copyOf(piece.id, 0, outlineArea({ outline }), profile);
    return Array.from({ length: count }, (_, copy) => ({ ...one, copy }));
  });
}

function unplaced(id: string, across: number, room: number, overlap: number): Unplaced {
  const strips = Math.ceil((across - overlap) / (room - overlap) - 1e-9);
  const advance = (across - overlap) / strips;
  const at = Array.from({ length: strips - 1 }, (_, k) => (k + 1) * advance + overlap);
  return { id, reason: 'wider than the roll', across, room, splice: { at, overlap } };
}
