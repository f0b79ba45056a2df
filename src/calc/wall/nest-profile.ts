import { thinned } from './polyline.ts';
import type { Point } from './types.ts';

/** Straight lines side by side, x ascending without a gap; y may jump from one to the next. */
type Edge = {
  readonly x0: Float64Array;
  readonly x1: Float64Array;
  readonly y0: Float64Array;
  readonly y1: Float64Array;
};

/**
 * What a piece takes up as it lies on the roll, allowance and all: everything between its lower and its
 * upper edge. Its cloth has its lowest x and y at 0; `width` and `height` are of the cloth alone.
 */
export type Profile = {
  readonly width: number;
  readonly height: number;
  readonly gap: number;
  /** How far its edges stand round the cloth: the gap, and a little more where a curve was simplified. */
  readonly reach: number;
  readonly low: Edge;
  readonly high: Edge;
};

const SAME = 1e-9;

/** A curve with many corners is laid out by fewer, and kept so much farther away. */
const COARSE = 0.0005;
const FEW = 24;

/** @param outline as it lies, lowest x and y at 0 */
export function profileOf(outline: readonly Point[], gap: number): Profile {
  const width = Math.max(...outline.map(({ x }) => x));
  const height = Math.max(...outline.map(({ y }) => y));
  const coarse = outline.length > FEW;
  const corners = coarse ? thinned([...outline, ...outline.slice(0, 1)], COARSE) : outline;
  const reach = coarse ? gap + COARSE : gap;
  const high = grown(upperEdge(corners), reach);
  const low = negated(grown(upperEdge(corners.map(({ x, y }) => ({ x, y: -y }))), reach));
  return { width, height, gap, reach, low, high };
}

/** The same piece turned by half a turn. */
export function turned({ low, high, ...same }: Profile): Profile {
  const { width, height } = same;
  return { ...same, low: reversed(high, width, height), high: reversed(low, width, height) };
}

/**
 * How much higher than piece `under` piece `over` must lie so that it is clear above it.
 *
 * @param shift how far `over` lies to the right of `under`
 * @returns -Infinity when they do not meet anywhere
 */
export function clearance(under: Profile, over: Profile, shift: number): number {
  const [high, low] = [under.high, over.low];
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0, k = 0; i < high.x0.length && k < low.x0.length; ) {
    const from = Math.max(at(high.x0, i), at(low.x0, k) + shift);
    const to = Math.min(at(high.x1, i), at(low.x1, k) + shift);
    if (to - from > SAME) {
      const here = along(high, i, from) - along(low, k, from - shift);
      const there = along(high, i, to) - along(low, k, to - shift);
      most = Math.max(most, here, there);
    }
    if (at(high.x1, i) < at(low.x1, k) + shift) i += 1;
    else k += 1;
  }
  return most;
}

/** The highest line over each x. */
function upperEdge(outline: readonly Point[]): Edge {
  const places = unique(outline.map(({ x }) => x));
  const sides = outline.map((a, k) => ({ a, b: outline[k + 1] ?? outline[0] ?? a }));
  const count = Math.max(0, places.length - 1);
  const edge = edgeOf(count);
  for (const { a, b } of sides) {
    const [left, right] = a.x < b.x ? [a, b] : [b, a];
    for (
      let k = firstAtLeast(places, left.x - SAME);
      k < count && at(places, k + 1) <= right.x + SAME;
      k += 1
    ) {
      const slope = (right.y - left.y) / (right.x - left.x);
      edge.y0[k] = Math.max(at(edge.y0, k), left.y + slope * (at(places, k) - left.x));
      edge.y1[k] = Math.max(at(edge.y1, k), left.y + slope * (at(places, k + 1) - left.x));
    }
  }
  edge.x0.set(places.subarray(0, count));
  edge.x1.set(places.subarray(1));
  return edge;
}

/**
 * The upper edge of a piece with a square of half-width `gap` drawn round it: between two corners it is
 * the highest of straight lines, which bends upward, so a straight line across is on the safe side.
 */
function grown(edge: Edge, gap: number): Edge {
  if (gap === 0) return edge;
  const corners = [...edge.x0, at(edge.x1, edge.x1.length - 1)];
  const places = unique(corners.flatMap((x) => [x - gap, x + gap]));
  const out = edgeOf(places.length - 1);
  for (let k = 0; k < out.x0.length; k += 1) {
    const [from, to] = [at(places, k), at(places, k + 1)];
    out.x0[k] = from;
    out.x1[k] = to;
    out.y0[k] = gap + highestWithin(edge, from + SAME / 4, gap);
    out.y1[k] = gap + highestWithin(edge, to - SAME / 4, gap);
  }
  return out;
}

function highestWithin(edge: Edge, x: number, reach: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < edge.x0.length; k += 1) {
    const from = Math.max(at(edge.x0, k), x - reach);
    const to = Math.min(at(edge.x1, k), x + reach);
    if (to >= from) most = Math.max(most, along(edge, k, from), along(edge, k, to));
  }
  return most;
}

function along({ x0, x1, y0, y1 }: Edge, k: number, x: number): number {
  const share = (x - at(x0, k)) / (at(x1, k) - at(x0, k));
  return at(y0, k) + share * (at(y1, k) - at(y0, k));
}

function negated({ x0, x1, y0, y1 }: Edge): Edge {
  return { x0, x1, y0: y0.map((y) => -y), y1: y1.map((y) => -y) };
}

function reversed({ x0, x1, y0, y1 }: Edge, width: number, height: number): Edge {
  return {
    x0: x1.map((x) => width - x).reverse(),
    x1: x0.map((x) => width - x).reverse(),
    y0: y1.map((y) => height - y).reverse(),
    y1: y0.map((y) => height - y).reverse(),
  };
}

function edgeOf(count: number): Edge {
  const lowest = (): Float64Array => new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  return { x0: new Float64Array(count), x1: new Float64Array(count), y0: lowest(), y1: lowest() };
}

function unique(xs: readonly number[]): Float64Array {
  const sorted = Float64Array.from(xs).sort();
  return sorted.filter((x, k) => k === 0 || x - (sorted[k - 1] ?? 0) > SAME);
}

function firstAtLeast(sorted: Float64Array, x: number): number {
  const found = sorted.findIndex((one) => one >= x);
  return found < 0 ? sorted.length : found;
}

function at(series: Float64Array, k: number): number {
  return series[k] ?? 0;
}
