import { numberIn } from '../check.ts';
import { SAME_PLACE } from './curve.ts';
import type { Roll, RolledPiece } from './types.ts';

/** The roll of an input, as `rollPieces` gave it. */
export function rollIn(input: { roll: Roll }): Roll {
  if (input?.roll?.at instanceof Float64Array) return input.roll;
  throw new RangeError('roll must be what rollPieces gives');
}

/** The piece of a roll that an input names by its number, from 0. */
export function pieceIn(input: { roll: Roll; piece: number }): RolledPiece {
  const { pieces } = rollIn(input);
  const last = pieces.length - 1;
  const found = pieces[numberIn(input, 'piece', '', { from: 0, to: last })];
  if (found) return found;
  throw new RangeError(`piece must be a whole number, 0 to ${last}, got ${input.piece}`);
}

/** Where a place lies among the samples of a roll: after `i` by a share of the way to the next. */
export function sampleAt({ at, before, length }: Roll, x: number): { i: number; share: number } {
  let [low, high] = [0, at.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((at[middle] ?? 0) <= x + SAME_PLACE) low = middle;
    else high = middle - 1;
  }
  if (x >= length - SAME_PLACE || before[low] === 1) return { i: low, share: 0 };
  const [here = 0, next = 0] = [at[low], at[low + 1]];
  return { i: low, share: next > here ? Math.max(0, (x - here) / (next - here)) : 0 };
}

/** A series of a roll at a place among its samples. */
export function readAt(series: Float64Array, { i, share }: { i: number; share: number }): number {
  const here = series[i] ?? 0;
  return share === 0 ? here : here + share * ((series[i + 1] ?? here) - here);
}
