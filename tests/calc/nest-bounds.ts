import { type NestPiece, outlineArea, outlineBounds, type Point, placedOutline } from '#calc';

/** Shelf order worked out again: rectangles side by side until one does not fit. */
export function shelfLength(pieces: readonly NestPiece[], room: number, gap: number): number {
  let [shelf, next, across] = [0, 0, 0];
  for (const { outline, warpAngle, count } of pieces) {
    const flat = placedOutline({ outline, warpAngle, x: 0, y: 0, flipped: false });
    const { maxX, maxY } = outlineBounds({ outline: flat });
    for (let copy = 0; copy < count; copy += 1) {
      if (across > 0 && across + maxY + 2 * gap > room) {
        shelf = next;
        across = 0;
      }
      next = Math.max(next, shelf + maxX + 2 * gap);
      across += maxY + 2 * gap;
    }
  }
  return next;
}

const perimeter = (outline: readonly Point[]) =>
  outline.reduce((sum, a, k) => {
    const b = outline[(k + 1) % outline.length] ?? a;
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);

/** No layout can be shorter: all pieces with their masking side by side without a hole, or the longest alone. */
export function leastLength(pieces: readonly NestPiece[], room: number, gap: number): number {
  const area = pieces.reduce((sum, { outline, count }) => {
    return sum + count * (outlineArea({ outline }) + perimeter(outline) * gap);
  }, 0);
  const longest = pieces.map(({ outline, warpAngle }) => {
    const flat = placedOutline({ outline, warpAngle, x: 0, y: 0, flipped: false });
    const { minX, maxX } = outlineBounds({ outline: flat });
    return maxX - minX + 2 * gap;
  });
  return Math.max(area / room, ...longest);
}
