import type { Roll } from '#calc';

export const turn = 2 * Math.PI;

/** An angle as 0 up to a whole turn. */
export const within = (angle: number): number => ((angle % turn) + turn) % turn;

/** Between two directions, 0 to half a turn. */
export function apart(a: number, b: number): number {
  const off = within(a - b);
  return Math.min(off, turn - off);
}

/** From an angle on, over so much of the turn. */
export const isOver = (angle: number, from: number, share: number): boolean =>
  share >= turn || within(angle - from) < share;

/** The sample of a roll at a place or just before it. */
export function sampleNear({ at }: Roll, place: number): number {
  let [low, high] = [0, at.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((at[middle] ?? 0) <= place + 1e-9) low = middle;
    else high = middle - 1;
  }
  return low;
}
