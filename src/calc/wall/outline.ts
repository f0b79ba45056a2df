import { listOf, numberIn } from '../check.ts';
import type { FlatBounds, Offset, Point } from './types.ts';

const FARTHEST = 100;
const MOST_OFFSETS = 10_000;

/**
 * Area inside a flat outline.
 *
 * @param outline corners in order, m, three or more; the last joins the first
 * @returns m2
 * @throws RangeError naming the field
 *
 * Formula: half the sum of the cross products of neighboring corners.
 * Source: Meister 1769, the surveyor's formula.
 *
 * @example
 * // A piece 3 m long, 400 mm wide at one end and 200 at the other: how much cloth?
 * outlineArea({ outline: [{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 3, y: 0.2 }, { x: 0, y: 0.4 }] })
 * // => 0.9
 */
export function outlineArea(input: { outline: readonly Point[] }): number {
  const outline = outlineIn(input);
  const [first] = outline;
  let twice = 0;
  outline.forEach((a, k) => {
    const b = outline[k + 1] ?? first;
    // Counted from the first corner: far from 0 the products would lose their digits.
    if (first && b) twice += (a.x - first.x) * (b.y - first.y) - (b.x - first.x) * (a.y - first.y);
  });
  return Math.abs(twice) / 2;
}

/**
 * The smallest upright rectangle round a flat outline.
 *
 * @param outline corners, m, three or more
 * @returns m
 * @throws RangeError naming the field
 *
 * @example
 * // A piece 3 m long, 400 mm wide at one end and 200 at the other: what does it lie in?
 * outlineBounds({ outline: [{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 3, y: 0.2 }, { x: 0, y: 0.4 }] })
 * // => { minX: 0, minY: 0, maxX: 3, maxY: 0.4 }
 */
export function outlineBounds(input: { outline: readonly Point[] }): FlatBounds {
  const outline = outlineIn(input);
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

/**
 * What to mark with a rule: on perpendiculars to the datum edge, where the cloth begins and ends. At
 * every so many meters, at every sharp corner, and where else it is asked for. Where the edge jumps there
 * are two, before and after.
 *
 * @param outline a flat piece, its datum edge along y = 0, m
 * @param every m, greater than 0; no more than 10,000 of them
 * @param also more places, m, such as the `x` of the marks of a flat piece; beyond its ends they are left out
 * @returns in order of x, m; `from` is 0 along the datum edge
 * @throws RangeError naming the field
 *
 * @example
 * // A piece 3 m long, 400 mm wide at one end and 200 at the other. What to mark at 1.5 m?
 * offsetsFromDatum({
 *   outline: [{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 3, y: 0.2 }, { x: 0, y: 0.4 }],
 *   every: 1.5,
 * })[1]
 * // => { x: 1.5, from: 0, to: 0.3 }
 */
export function offsetsFromDatum(input: {
  outline: readonly Point[];
  every: number;
  also?: readonly number[] | undefined;
}): Offset[] {
  const outline = outlineIn(input);
  const { minX, maxX } = outlineBounds(input);
  const every = numberIn(input, 'every', 'm', { from: Math.max(1e-6, (maxX - minX) / MOST_OFFSETS) });
  const also = listOf('also', input.also ?? [], 0).map((x) => numberIn({ also: x }, 'also', 'm'));
  const places = [...corners(outline).map(({ x }) => x), ...also.filter((x) => x >= minX && x <= maxX)];
  for (let k = Math.ceil(minX / every - 1e-9); k * every <= maxX + 1e-9; k += 1) places.push(k * every);
  places.sort((a, b) => a - b);
  return places
    .filter((x, k) => k === 0 || x - (places[k - 1] ?? 0) > 1e-6)
    .flatMap((x) => offsetsAt(outline, Math.min(maxX, Math.max(minX, x)), minX, maxX));
}

/** An outline checked: three corners or more, each within 100 m. */
export function outlineIn(input: { outline: readonly Point[] }, path = ''): readonly Point[] {
  const outline = listOf(`${path}outline`, input?.outline, 3);
  const bounds = { from: -FARTHEST, to: FARTHEST };
  outline.forEach((point, index) => {
    numberIn(point, 'x', 'm', bounds, `${path}outline[${index}].`);
    numberIn(point, 'y', 'm', bounds, `${path}outline[${index}].`);
  });
  return outline;
}

/** Corners that turn by more than 15 degrees; the rest only follow a curve. */
function corners(outline: readonly Point[]): Point[] {
  return outline.filter((here, k) => {
    const before = outline[k - 1] ?? outline[outline.length - 1] ?? here;
    const after = outline[k + 1] ?? outline[0] ?? here;
    const [ax, ay] = [here.x - before.x, here.y - before.y];
    const [bx, by] = [after.x - here.x, after.y - here.y];
    return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > Math.PI / 12;
  });
}

function offsetsAt(outline: readonly Point[], x: number, minX: number, maxX: number): Offset[] {
  const inside = x > minX + 1e-6 && x < maxX - 1e-6;
  const jumps = outline.some((a, k) => {
    const b = outline[k + 1] ?? outline[0] ?? a;
    return Math.abs(a.x - x) < 1e-7 && Math.abs(b.x - x) < 1e-7 && Math.abs(a.y - b.y) > 1e-6;
  });
  if (!inside || !jumps) return [{ x, ...spanAt(outline, x) }];
  return [
    { x, ...spanAt(outline, x - 2e-7) },
    { x, ...spanAt(outline, x + 2e-7) },
  ];
}

function spanAt(outline: readonly Point[], x: number): { from: number; to: number } {
  let from = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  const take = (y: number): void => {
    from = Math.min(from, y);
    to = Math.max(to, y);
  };
  outline.forEach((a, k) => {
    const b = outline[k + 1] ?? outline[0] ?? a;
    if (Math.min(a.x, b.x) > x || Math.max(a.x, b.x) < x) return;
    if (a.x === b.x) [a.y, b.y].forEach(take);
    else take(a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y));
  });
  // Along the datum edge a rounding of the crossing is no offset.
  return { from: Math.abs(from) < 1e-12 ? 0 : from, to };
}
