import type { Point } from './types.ts';

const DEEPEST = 16;

/**
 * A curve as straight lines that stay within a distance of it, its end left out so that curves can be
 * joined.
 *
 * @param at the curve from 0 to 1, smooth between
 */
export function chords(at: (share: number) => Point, error: number): Point[] {
  const points: Point[] = [];
  const halve = (s0: number, p0: Point, p: Point, p1: Point, s1: number, depth: number): void => {
    const middle = (s0 + s1) / 2;
    const left = at((s0 + middle) / 2);
    const right = at((middle + s1) / 2);
    const near = [left, p, right].every((one) => fromChord(one, p0, p1) <= error);
    if (near || depth >= DEEPEST) {
      points.push(p0);
      return;
    }
    halve(s0, p0, left, p, middle, depth + 1);
    halve(middle, p, right, p1, s1, depth + 1);
  };
  halve(0, at(0), at(0.5), at(1), 1, 0);
  return points;
}

/** The same line with no more points than it takes to stay within a distance of all of them. */
export function thinned(points: readonly Point[], error: number): Point[] {
  const keep = new Uint8Array(points.length).fill(0);
  const split = (first: number, last: number): void => {
    keep[first] = 1;
    keep[last] = 1;
    const [a, b] = [points[first], points[last]];
    if (!a || !b) return;
    let farthest = first;
    let distance = error;
    for (let k = first + 1; k < last; k += 1) {
      const point = points[k];
      const off = point ? fromChord(point, a, b) : 0;
      if (off <= distance) continue;
      farthest = k;
      distance = off;
    }
    if (farthest === first) return;
    split(first, farthest);
    split(farthest, last);
  };
  if (points.length > 1) split(0, points.length - 1);
  return points.filter((_, k) => keep[k] === 1);
}

/** Distance of a point from a stretch of straight line. */
function fromChord(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = dx * dx + dy * dy;
  const share = long === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / long));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
