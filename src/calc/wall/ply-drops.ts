import { rollIn } from './roll-at.ts';
import type { PlyDrop, Roll } from './types.ts';

const STEEPEST = 20;
const SHORTEST = 0.006;

/** From one sample to another the wall goes one way: up with 1, down with -1. */
type Run = { first: number; last: number; way: number };

/** Rounding of a wall, m; less than an atom. */
const SAME_WALL = 1e-10;

/**
 * Where the wall changes faster than one ply in 20 times its thickness, or in 6 mm when that is more. One
 * ply that ends square by itself is let be; the ends of the tube are no drop.
 *
 * @param roll what `rollPieces` gives; its step is how finely this is looked for
 * @returns along the tube; `drop` in m of mean wall, `ratio` of length to thickness, `perPly` m
 * @throws RangeError naming the field
 *
 * Formula: no more than one ply within max(20 t, 6 mm); t the thickest cloth ply.
 * Source: common practice, no source.
 *
 * @example
 * // A sleeve of 3 plies of 0.3 mm ends all at once. How steep is it?
 * plyDrops({
 *   roll: rollPieces({
 *     mandrel: { stations: [{ at: 0, value: 0.038 }, { at: 1, value: 0.038 }], between: 'straight' },
 *     pieces: [1, 0.5].map((end) => ({
 *       kind: 'cloth', thickness: 0.0003, start: 0, clock: 0, angle: 0, overlap: 0,
 *       wraps: { stations: [{ at: 0, value: 3 }, { at: end, value: 3 }], between: 'straight' },
 *     })),
 *     length: 1,
 *     step: 0.1,
 *   }),
 * })[0]
 * // => { from: 0.5, to: 0.5, drop: 0.0009, ratio: 0, perPly: 0 }
 */
export function plyDrops(input: { roll: Roll }): PlyDrop[] {
  const { at, wallMean, pieces } = rollIn(input);
  const cloth = pieces.filter(({ spec }) => spec.kind === 'cloth');
  const ply = cloth.reduce((most, { spec }) => Math.max(most, spec.thickness), 0);
  if (ply === 0) return [];
  const window = Math.max(STEEPEST * ply, SHORTEST);
  const slack = 1 + 1e-6;
  const runs = [
    ...steepRuns(at, wallMean, window, ply * slack),
    ...steepRuns(at, withoutJumps(at, wallMean), window / 2, (ply / 2) * slack),
  ];
  return joined(runs).flatMap(({ first, last }) => {
    const [from, to] = narrowed(wallMean, first, last);
    const drop = Math.abs((wallMean[to] ?? 0) - (wallMean[from] ?? 0));
    if (drop <= SAME_WALL) return [];
    const long = (at[to] ?? 0) - (at[from] ?? 0);
    return [{ from: at[from] ?? 0, to: at[to] ?? 0, drop, ratio: long / drop, perPly: (long * ply) / drop }];
  });
}

/** The wall as if no ply ended square: what is left are ramps. */
function withoutJumps(at: Float64Array, wall: Float64Array): Float64Array {
  let jumped = 0;
  return wall.map((here, i) => {
    if (i > 0 && at[i] === at[i - 1]) jumped += here - (wall[i - 1] ?? 0);
    return here - jumped;
  });
}

/** Runs in order along the tube; those of one way that meet are one. */
function joined(runs: readonly Run[]): Run[] {
  const all: Run[] = [];
  for (const run of [...runs].sort((a, b) => a.first - b.first || a.last - b.last)) {
    const before = all[all.length - 1];
    if (before && before.way === run.way && run.first <= before.last)
      before.last = Math.max(before.last, run.last);
    else all.push({ ...run });
  }
  return all;
}

/** Runs of samples in which the wall goes one way by more than `most` within a window. */
function steepRuns(at: Float64Array, wall: Float64Array, window: number, most: number): Run[] {
  const runs: Run[] = [];
  let start = 0;
  for (let i = 0; i < at.length; i += 1) {
    while ((at[i] ?? 0) - (at[start] ?? 0) > window) start += 1;
    // With a step longer than the window a ramp between two samples must be seen all the same.
    const from = i > 0 ? Math.min(start, i - 1) : 0;
    const change = changeOver(at, wall, from, i, window);
    if (Math.abs(change) <= most) continue;
    const before = runs[runs.length - 1];
    if (before && before.last >= from && before.way === Math.sign(change)) before.last = i;
    else runs.push({ first: from, last: i, way: Math.sign(change) });
  }
  return runs;
}

/** Change of the wall over the last window's length before a sample. */
function changeOver(at: Float64Array, wall: Float64Array, from: number, to: number, window: number): number {
  const change = (wall[to] ?? 0) - (wall[from] ?? 0);
  const long = (at[to] ?? 0) - (at[from] ?? 0);
  return long > window ? (change * window) / long : change;
}

/** Leaves out what is level at both ends of a run. */
function narrowed(wall: Float64Array, first: number, last: number): [number, number] {
  let [from, to] = [first, last];
  while (from < to && Math.abs((wall[from + 1] ?? 0) - (wall[from] ?? 0)) <= SAME_WALL) from += 1;
  while (to > from && Math.abs((wall[to - 1] ?? 0) - (wall[to] ?? 0)) <= SAME_WALL) to -= 1;
  return [from, to];
}
