import { numberIn } from '../check.ts';
import { rollIn } from './roll-at.ts';
import type { EdgeName, EdgePair, Roll } from './types.ts';

const TURN = 2 * Math.PI;

/** An edge's angle at every sample, in turns; NaN where it is not. */
type Edge = EdgeName & { readonly turns: Float64Array };

/**
 * Edges of different pieces that run side by side for too long, and would make a ridge and a weak line.
 * A piece's own two edges are left out: they lap or butt on purpose.
 *
 * @param roll what `rollPieces` gives
 * @param within m of arc on the outside, at least 0; 0.025 when not given
 * @param longerThan m along the tube, at least 0; 0.1 when not given
 * @returns in wrap order, then along the tube
 * @throws RangeError naming the field
 *
 * Source: common practice, no source.
 *
 * @example
 * // Two pieces of whole wraps started on the same line: how far do their edges run together?
 * edgesStack({
 *   roll: rollPieces({
 *     mandrel: { stations: [{ at: 0, value: 0.038 }, { at: 1, value: 0.038 }], between: 'straight' },
 *     pieces: [0, 0].map((clock) => ({
 *       kind: 'cloth', thickness: 0.0003, start: 0, clock, angle: 0, overlap: 0,
 *       wraps: { stations: [{ at: 0, value: 2 }, { at: 1, value: 2 }], between: 'straight' },
 *     })),
 *     length: 1,
 *     step: 0.1,
 *   }),
 * }).map(({ from, to }) => to - from)[0]
 * // => 1
 */
export function edgesStack(input: {
  roll: Roll;
  within?: number | undefined;
  longerThan?: number | undefined;
}): EdgePair[] {
  const roll = rollIn(input);
  const limits = {
    within: input.within === undefined ? 0.025 : numberIn(input, 'within', 'm', { from: 0, to: 100 }),
    longerThan:
      input.longerThan === undefined ? 0.1 : numberIn(input, 'longerThan', 'm', { from: 0, to: 1000 }),
  };
  const edges = edgesOf(roll);
  return edges.flatMap((first, k) =>
    edges
      .slice(k + 1)
      .filter((second) => second.piece !== first.piece)
      .flatMap((second) => runsOf(roll, first, second, limits)),
  );
}

function edgesOf({ pieces }: Roll): Edge[] {
  return pieces.flatMap(({ spec, wraps }, piece) => {
    const start = spec.clock / TURN;
    return [
      { piece, edge: 'datum', turns: wraps.map((turns) => (turns > 0 ? start : Number.NaN)) },
      { piece, edge: 'free', turns: wraps.map((turns) => (turns > 0 ? start + turns : Number.NaN)) },
    ];
  });
}

function runsOf(
  { at, outsideDiameter, step }: Roll,
  first: Edge,
  second: Edge,
  { within, longerThan }: { within: number; longerThan: number },
): EdgePair[] {
  const runs: EdgePair[] = [];
  const near = (i: number): boolean =>
    Math.PI * (outsideDiameter[i] ?? 0) * partBetween(first, second, i) <= within;
  // A run that counts is longer than two strides: looked at so far apart, none is missed.
  const stride = Math.max(1, Math.floor(longerThan / (2 * step)));
  for (let i = 0, end = 0; i < at.length; i += stride) {
    if (!near(i)) continue;
    let start = i;
    while (start > end && near(start - 1)) start -= 1;
    while (i + 1 < at.length && near(i + 1)) i += 1;
    end = i + 1;
    const [from, to] = [at[start] ?? 0, at[i] ?? 0];
    if (to - from <= longerThan) continue;
    let nearest = within;
    for (let k = start; k <= i; k += 1) {
      nearest = Math.min(nearest, Math.PI * (outsideDiameter[k] ?? 0) * partBetween(first, second, k));
    }
    runs.push({ first: nameOf(first), second: nameOf(second), from, to, nearest });
  }
  return runs;
}

function nameOf({ piece, edge }: Edge): EdgeName {
  return { piece, edge };
}

/** The shorter way round between two edges, as part of a turn. */
function partBetween(first: Edge, second: Edge, i: number): number {
  const turns = (first.turns[i] ?? 0) - (second.turns[i] ?? 0);
  return Math.abs(turns - Math.round(turns));
}
