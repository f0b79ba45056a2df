import { type Curve, SAME_PLACE } from './curve.ts';
import type { PieceCurve } from './piece-curve.ts';

/** Where to read a tube; `before` is 1 for what comes before a jump at that place. */
export type Grid = { readonly at: Float64Array; readonly before: Uint8Array };

type Break = { x: number; jump: boolean };

/**
 * Even steps from 0 to the length, with every place where something bends or jumps among them, so that
 * sums over the samples are right to the last step and pictures show corners where they are.
 */
export function gridFor(length: number, step: number, mandrel: Curve, pieces: readonly PieceCurve[]): Grid {
  const breaks = breaksOf(length, mandrel, pieces);
  const most = Math.ceil(length / step) + 2 * breaks.length + 3;
  const at = new Float64Array(most);
  const before = new Uint8Array(most);
  let count = 0;
  const add = (x: number, isBefore: number): void => {
    at[count] = x;
    before[count] = isBefore;
    count += 1;
  };
  let next = 0;
  // A step this near a break would only repeat it.
  const near = Math.max(SAME_PLACE, step * 1e-6);
  for (let i = 0; ; i += 1) {
    const x = i * step;
    const due = x >= length - near ? length : x;
    for (let one = breaks[next]; one && one.x <= due + near; one = breaks[next]) {
      if (one.jump) add(one.x, 1);
      add(one.x, 0);
      next += 1;
    }
    if (due === length) break;
    if (count === 0 || x - (at[count - 1] ?? 0) > near) add(x, 0);
  }
  add(length, 1);
  return { at: at.slice(0, count), before: before.slice(0, count) };
}

/** Places inside the tube where something bends or jumps, in order, each once. */
export function breaksOf(length: number, mandrel: Curve, pieces: readonly PieceCurve[]): Break[] {
  const all: Break[] = [];
  const add = (x: number, jump: boolean): void => {
    if (x > SAME_PLACE && x < length - SAME_PLACE) all.push({ x, jump });
  };
  for (const x of mandrel.at) add(x, mandrel.between === 'step');
  for (const { curve, start, from, to } of pieces) {
    for (const x of curve.at) add(start + x, curve.between === 'step');
    add(from, true);
    add(to, true);
  }
  all.sort((a, b) => a.x - b.x);
  const once: Break[] = [];
  for (const one of all) {
    const last = once[once.length - 1];
    if (last && one.x - last.x <= SAME_PLACE) last.jump ||= one.jump;
    else once.push({ ...one });
  }
  return once;
}
