/** Rounding of angles; a gap of less than this between two arcs is none. */
const SAME_ANGLE = 1e-9;

/** Parts of a turn with one more ply on them: from `start` over `share`, in turns, so thick in m. */
export type Arcs = {
  readonly start: Float64Array;
  readonly share: Float64Array;
  readonly thickness: Float64Array;
};

/** Room for so many arcs, to be filled again for every sample. */
export function arcsFor(most: number): Arcs {
  return {
    start: new Float64Array(most),
    share: new Float64Array(most),
    thickness: new Float64Array(most),
  };
}

/** An angle in turns, from 0 to less than 1. */
export function partOf(turns: number): number {
  const part = turns - Math.floor(turns);
  return part > 1 - SAME_ANGLE ? 0 : part;
}

/** Whether an arc lies over an angle, both from 0 to less than 1; its start belongs to it, its end does not. */
export function covers(start: number, share: number, turn: number): boolean {
  const after = turn < start ? turn - start + 1 : turn - start;
  return after > 1 - SAME_ANGLE || after < share - SAME_ANGLE;
}

/** Thickness of the first so many arcs where it is most: where one of them starts. */
export function thickestOf(arcs: Arcs, count: number): number {
  let most = 0;
  for (let k = 0; k < count; k += 1) most = Math.max(most, thicknessAt(arcs, count, arcs.start[k] ?? 0));
  return most;
}

/** Thickness of the first so many arcs where it is least: where one of them ends. */
export function thinnestOf(arcs: Arcs, count: number): number {
  let least = count === 0 ? 0 : Number.POSITIVE_INFINITY;
  for (let k = 0; k < count; k += 1) {
    least = Math.min(least, thicknessAt(arcs, count, partOf((arcs.start[k] ?? 0) + (arcs.share[k] ?? 0))));
  }
  return least;
}

function thicknessAt({ start, share, thickness }: Arcs, count: number, turn: number): number {
  let sum = 0;
  for (let k = 0; k < count; k += 1) {
    if (covers(start[k] ?? 0, share[k] ?? 0, turn)) sum += thickness[k] ?? 0;
  }
  return sum;
}
