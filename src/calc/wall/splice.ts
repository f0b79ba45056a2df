import { listOf, numberIn } from '../check.ts';
import { outlineIn } from './outline.ts';
import type { Point } from './types.ts';

/** Turns an outline and moves it so that its lowest x and y are 0. */
export function laidFlat(outline: readonly Point[], angle: number): Point[] {
  const spun = spin(outline, angle);
  const left = Math.min(...spun.map(({ x }) => x));
  const low = Math.min(...spun.map(({ y }) => y));
  return spun.map(({ x, y }) => ({ x: x - left, y: y - low }));
}

/**
 * The outline of a piece as it lies on the roll.
 *
 * @param outline of the flat piece, m
 * @param warpAngle warp to datum edge, rad
 * @param x along the roll, and
 * @param y across it, m: where its lowest x and y lie
 * @param flipped turned by half a turn
 * @returns m, x along the roll
 * @throws RangeError naming the field
 *
 * @example
 * // A strip of 2 m by 100 mm cut at a right angle to the warp: how far along the roll does it reach?
 * placedOutline({
 *   outline: [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 0.1 }, { x: 0, y: 0.1 }],
 *   warpAngle: Math.PI / 2,
 *   x: 0.5,
 *   y: 0.02,
 *   flipped: false,
 * })[2]
 * // => { x: 0.6, y: 0.02 }
 */
export function placedOutline(input: {
  outline: readonly Point[];
  warpAngle: number;
  x: number;
  y: number;
  flipped: boolean;
}): Point[] {
  const angle = warpAngleIn(input);
  const dx = numberIn(input, 'x', 'm', { from: -1000, to: 1e6 });
  const dy = numberIn(input, 'y', 'm', { from: -1000, to: 1000 });
  const flat = laidFlat(outlineIn(input), input.flipped ? Math.PI - angle : -angle);
  return flat.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

/**
 * Cuts a piece that is wider than the roll into strips along the warp that lap, as `nestPieces` proposes.
 *
 * @param outline of the flat piece, m
 * @param warpAngle warp to datum edge, rad
 * @param at heights of the cuts above the lowest point of the piece as it lies on the roll, m, ascending
 * @param overlap by which each next strip starts lower, m, at least 0
 * @returns outlines of the strips, each where it belongs in the piece
 * @throws RangeError naming the field
 *
 * Formula: clipping by half-planes.
 * Source: Sutherland and Hodgman, Reentrant Polygon Clipping, CACM 17 (1974).
 *
 * @example
 * // A piece 1.5 m wide, cut at 750 mm with 25 mm to lap. How high is the second strip?
 * splicePiece({
 *   outline: [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 1.5 }, { x: 0, y: 1.5 }],
 *   warpAngle: 0,
 *   at: [0.75],
 *   overlap: 0.025,
 * })[1].reduce((low, { y }) => Math.min(low, y), 9)
 * // => 0.725
 */
export function splicePiece(input: {
  outline: readonly Point[];
  warpAngle: number;
  at: readonly number[];
  overlap: number;
}): Point[][] {
  const angle = warpAngleIn(input);
  const outline = outlineIn(input);
  const overlap = numberIn(input, 'overlap', 'm', { from: 0, to: 1000 });
  const spun = spin(outline, -angle);
  const low = Math.min(...spun.map(({ y }) => y));
  const cuts = listOf('at', input.at, 1).map((_, k, all) => {
    const above = k === 0 ? 0 : (all[k - 1] ?? 0);
    return numberIn({ at: all[k] }, 'at', 'm', { above, to: 1000 });
  });
  return [...cuts, Number.POSITIVE_INFINITY].map((to, k) => {
    const from = k === 0 ? Number.NEGATIVE_INFINITY : (cuts[k - 1] ?? 0) - overlap;
    return spin(clipped(clipped(spun, low + from, 1), low + to, -1), angle);
  });
}

function warpAngleIn(input: { warpAngle: number }): number {
  return numberIn(input, 'warpAngle', 'rad', { from: -2 * Math.PI, to: 2 * Math.PI });
}

function spin(outline: readonly Point[], angle: number): Point[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return outline.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
}

/** What lies above a height, or below it with `side` -1. */
function clipped(outline: readonly Point[], height: number, side: 1 | -1): Point[] {
  if (!Number.isFinite(height)) return [...outline];
  return outline.flatMap((a, k) => {
    const b = outline[k + 1] ?? outline[0] ?? a;
    const [over, next] = [side * (a.y - height), side * (b.y - height)];
    const kept = over >= 0 ? [a] : [];
    if (over * next >= 0) return kept;
    const share = over / (over - next);
    return [...kept, { x: a.x + share * (b.x - a.x), y: height }];
  });
}
