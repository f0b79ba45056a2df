import { type FlatPiece, outlineBounds, type Point, type Tile, type Tiling, trueSizeTiles } from '#calc';

export type Paper = 'a4' | 'letter';

/** Left white by printers, and used for the check length and the words of a sheet, m */
export const sheetMargin = 0.015;
/** Shown on both of two neighbors, m */
export const sheetOverlap = 0.01;

const isInside = ({ x, y }: Point, { x: left, y: top, width, height }: Tile) =>
  x >= left && x <= left + width && y >= top && y <= top + height;

/** Whether a point lies inside an outline, by the crossings of a ray. */
function encloses(outline: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  outline.forEach((a, k) => {
    const b = outline[(k + 1) % outline.length] ?? a;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

/** Whether a stretch of line runs through a tile, by clipping it (Liang and Barsky 1984). */
function runsThrough(a: Point, b: Point, { x, y, width, height }: Tile): boolean {
  let [from, to] = [0, 1];
  const sides = [
    [a.x - b.x, a.x - x],
    [b.x - a.x, x + width - a.x],
    [a.y - b.y, a.y - y],
    [b.y - a.y, y + height - a.y],
  ] as const;
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return false;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  return from <= to;
}

function hasCloth(outline: readonly Point[], tile: Tile): boolean {
  return (
    outline.some(
      (a, k) => isInside(a, tile) || runsThrough(a, outline[(k + 1) % outline.length] ?? a, tile),
    ) || encloses(outline, { x: tile.x, y: tile.y })
  );
}

/** The sheets of a piece at true size, without those that would stay empty. */
export function sheetsFor({ outline }: FlatPiece, paper: Paper): Tiling {
  const bounds = outlineBounds({ outline });
  const tiling = trueSizeTiles({ bounds, paper, margin: sheetMargin, overlap: sheetOverlap });
  return { ...tiling, tiles: tiling.tiles.filter((tile) => hasCloth(outline, tile)) };
}

/** 'B3': the row from the datum edge, and the sheet from end 0. */
export function sheetName({ row, column }: Pick<Tile, 'row' | 'column'>): string {
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  const first = row >= 26 ? letters[Math.floor(row / 26) - 1] : '';
  return `${first}${letters[row % 26]}${column + 1}`;
}

/** Where sheets meet: the same crosses on all that show them, m. */
export function crossings({ columns, rows, tiles }: Tiling): Point[] {
  const [first] = tiles;
  if (!first) return [];
  const [dx, dy] = [first.width - sheetOverlap, first.height - sheetOverlap];
  const [x0, y0] = [first.x - first.column * dx, first.y - first.row * dy];
  return Array.from({ length: (columns + 1) * (rows + 1) }, (_, k) => ({
    x: x0 + (k % (columns + 1)) * dx + sheetOverlap / 2,
    y: y0 + Math.floor(k / (columns + 1)) * dy + sheetOverlap / 2,
  }));
}
