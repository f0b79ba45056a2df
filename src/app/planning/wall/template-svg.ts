import type { CutPiece } from '#app/planning/cutting/cut-pieces.ts';
import { outlineBounds, type Point } from '#calc';
import { type MarkLine, type MarkText, templateMarks } from './template-marks.ts';

/** Between the pieces of a file, m */
export const apart = 0.05;

const escaped = (text: string) =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);

/** Meters to millimeters, to a tenth of a micrometer. */
const mm = (m: number): string => String(Math.round(m * 1e7) / 1e4);

export const svgPath = (points: readonly Point[], close: boolean): string =>
  `${points.map((p, k) => `${k === 0 ? 'M' : 'L'}${mm(p.x)} ${mm(p.y)}`).join('')}${close ? 'Z' : ''}`;

const widths = { datum: 0.7, arrow: 0.35, station: 0.25 } as const;

const lineElement = ({ kind, points }: MarkLine) =>
  `<path d="${svgPath(points, false)}" fill="none" stroke="#14389c" stroke-width="${widths[kind]}"/>`;

const textElement = ({ at, text, size, anchor }: MarkText) =>
  `<text x="${mm(at.x)}" y="${mm(at.y)}" font-size="${mm(1.4 * size)}" text-anchor="${anchor}">${escaped(text)}</text>`;

/** Where each piece of a file lies, one under the other, so that none lies on another. */
export function stacked(pieces: readonly CutPiece[]): { piece: CutPiece; move: Point }[] {
  let y = apart;
  return pieces.map((piece) => {
    const { minX, minY, maxY } = outlineBounds({ outline: piece.flat.outline });
    const move = { x: apart - minX, y: y - minY };
    y += maxY - minY + apart;
    return { piece, move };
  });
}

function group(piece: CutPiece, move: Point): string {
  const { lines, texts } = templateMarks(piece);
  return [
    `<g id="piece-${piece.number}" transform="translate(${mm(move.x)} ${mm(move.y)})">`,
    `<title>${escaped(piece.name)}</title>`,
    `<path class="outline" d="${svgPath(piece.flat.outline, true)}" fill="none" stroke="#000" stroke-width="0.25"/>`,
    ...lines.map(lineElement),
    ...texts.map(textElement),
    '</g>',
  ].join('\n');
}

/** All pieces at true size: one unit of the drawing is a millimeter. */
export function templateSvg(title: string, pieces: readonly CutPiece[]): string {
  const width = Math.max(...pieces.map((p) => p.length)) + 2 * apart;
  const height = pieces.reduce((sum, p) => sum + p.width + apart, apart);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" font-family="sans-serif">`,
    `<title>${escaped(title)}</title>`,
    ...stacked(pieces).map(({ piece, move }) => group(piece, move)),
    '</svg>',
    '',
  ].join('\n');
}
