import { findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { Piece } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import { shapeOf, stationsOnTube } from './shape-edits.ts';
import { sayPlies, sayValue } from './station-words.ts';

/** 'straight', 'bias 45°', 'warp 30°' */
export function directionWords(angle: number): string {
  const degrees = Math.round((angle * 1800) / Math.PI) / 10;
  if (degrees === 0) return 'straight';
  return Math.abs(degrees) === 45 ? `bias ${degrees}°` : `warp ${show(angle, 'angle')}`;
}

export function materialWords(plan: Plan, piece: Piece): string {
  if (piece.kind === 'film') return 'Film';
  const type = piece.kind === 'cloth' ? 'cloth' : 'core';
  const id = piece.kind === 'cloth' ? (piece.material ?? plan.cloth) : piece.material;
  return findDoc(type, id)?.body.name ?? 'Not on the shelf';
}

/** 'Carbon 193 · straight · 0 to 2400 mm · lap 15 mm' */
export function pieceLine(plan: Plan, piece: Piece): string {
  const stations = stationsOnTube(piece);
  const [first, last] = [stations[0]?.at ?? 0, stations.at(-1)?.at ?? 0];
  const from = show(first, 'length', 0).replace(/\s\D+$/, '');
  return [
    materialWords(plan, piece),
    ...(piece.kind === 'cloth' ? [directionWords(piece.angle)] : []),
    `${from} to ${show(last, 'length', 0)}`,
    ...(piece.overlap > 0 ? [`lap ${show(piece.overlap, 'length', 0)}`] : []),
  ].join(' · ');
}

/** '3 to 6 plies' */
export function pieceRange(piece: Piece): string {
  const { between, stations } = shapeOf(piece);
  const values = (between === 'step' ? stations.slice(0, -1) : stations).map((s) => s.value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const { by } = piece.shape;
  if (sayValue(by, least) === sayValue(by, most)) return sayValue(by, most);
  const start = sayValue(by, least).replace(/\s\D+$/, '');
  return `${start} to ${by === 'plies' ? sayPlies(most) : sayValue(by, most)}`;
}

/** '50.8 mm', '38 mm to 22 mm' */
export function mandrelLine(plan: Plan): string {
  const stations = plan.wall?.mandrel.stations ?? [];
  const [first, last] = [stations[0]?.value ?? 0, stations.at(-1)?.value ?? 0];
  if (stations.every((s) => s.value === first)) return show(first, 'diameter');
  return `${show(first, 'diameter')} to ${show(last, 'diameter')}`;
}
