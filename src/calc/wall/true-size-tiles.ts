import { numberIn } from '../check.ts';
import type { FlatBounds, Tile, Tiling } from './types.ts';

/** ISO 216; ANSI/ASME Y14.1. Short side first, m. */
const PAPER = { a4: [0.21, 0.297], letter: [0.2159, 0.2794] } as const;

/** The 100 mm check length and its marks have to go on every sheet. */
const SMALLEST = 0.12;
const MOST_SHEETS = 2000;

/**
 * Sheets that a drawing takes at true size, the way round that takes fewer.
 *
 * @param bounds of the drawing, m
 * @param paper a4 or letter
 * @param margin that a printer leaves white on each side, m, at least 0
 * @param overlap of neighboring sheets, m, at least 0
 * @returns `sheet` m as it lies, `columns` along x, `rows` along y, `tiles` row by row from the lowest
 * @throws RangeError naming the field; `bounds` when more than 2000 sheets would be needed
 *
 * Source: ISO 216 for A4; ANSI/ASME Y14.1 for Letter.
 *
 * @example
 * // A piece of 3 m by 400 mm on A4, 10 mm margins, 10 mm of overlap. How many sheets along it?
 * trueSizeTiles({
 *   bounds: { minX: 0, minY: 0, maxX: 3, maxY: 0.4 },
 *   paper: 'a4',
 *   margin: 0.01,
 *   overlap: 0.01,
 * }).columns
 * // => 17
 */
export function trueSizeTiles(input: {
  bounds: FlatBounds;
  paper: keyof typeof PAPER;
  margin: number;
  overlap: number;
}): Tiling {
  const size = PAPER[input?.paper];
  if (size === undefined) throw new RangeError(`paper must be a4 or letter, got ${String(input?.paper)}`);
  const margin = numberIn(input, 'margin', 'm', { from: 0, to: (size[0] - SMALLEST) / 2 });
  const most = size[0] - 2 * margin - SMALLEST / 2;
  const overlap = numberIn(input, 'overlap', 'm', { from: 0, to: most });
  const bounds = boundsIn(input);
  const upright = tiling(bounds, size[0], size[1], margin, overlap);
  const across = tiling(bounds, size[1], size[0], margin, overlap);
  const best = across.columns * across.rows < upright.columns * upright.rows ? across : upright;
  if (best.columns * best.rows > MOST_SHEETS) {
    throw new RangeError(`bounds must fit on ${MOST_SHEETS} sheets, got ${best.columns * best.rows}`);
  }
  return { ...best, tiles: tilesOf(bounds, best, margin, overlap) };
}

function boundsIn({ bounds }: { bounds: FlatBounds }): FlatBounds {
  const limits = { from: -1000, to: 1000 };
  const minX = numberIn(bounds, 'minX', 'm', limits, 'bounds.');
  const minY = numberIn(bounds, 'minY', 'm', limits, 'bounds.');
  const maxX = numberIn(bounds, 'maxX', 'm', { from: minX, to: 1000 }, 'bounds.');
  const maxY = numberIn(bounds, 'maxY', 'm', { from: minY, to: 1000 }, 'bounds.');
  return { minX, minY, maxX, maxY };
}

function tiling(bounds: FlatBounds, width: number, height: number, margin: number, overlap: number) {
  return {
    sheet: { width, height },
    columns: sheetsFor(bounds.maxX - bounds.minX, width - 2 * margin, overlap),
    rows: sheetsFor(bounds.maxY - bounds.minY, height - 2 * margin, overlap),
  };
}

function sheetsFor(length: number, shown: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (shown - overlap) - 1e-9));
}

function tilesOf(
  { minX, minY }: FlatBounds,
  { sheet, columns, rows }: Omit<Tiling, 'tiles'>,
  margin: number,
  overlap: number,
): Tile[] {
  const [width, height] = [sheet.width - 2 * margin, sheet.height - 2 * margin];
  return Array.from({ length: columns * rows }, (_, k) => {
    const [row, column] = [Math.floor(k / columns), k % columns];
    const x = minX + column * (width - overlap);
    return { row, column, x, y: minY + row * (height - overlap), width, height };
  });
}
