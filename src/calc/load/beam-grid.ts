import { listOf, numberIn, positive } from '../check.ts';
import { rootAt, type Span, spansOf } from './beam-spans.ts';
import type { Beam } from './types.ts';

/** Places closer than this are one place, m. */
export const SAME_PLACE = 1e-9;

/** Gauss and Legendre's points and weights from 0 to 1, four to a stretch. */
const POINTS = [0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970262];
const WEIGHTS = [0.17392742256872692, 0.326072577431273, 0.326072577431273, 0.17392742256872692];

/** The fourth root of a flexibility may change by this much within one stretch of the quadrature. */
const CHANGE = 0.15;

/** Between two places: where it is looked at from its left end, m, and weight times flexibility, bending and twist. */
export type Cell = {
  readonly long: number;
  readonly s: Float64Array;
  readonly bend: Float64Array;
  readonly turn: Float64Array;
};

/** The tube cut at every station, load and support: `x` one more than `cells`. */
export type Grid = { readonly x: Float64Array; readonly cells: readonly Cell[] };

export type Stations = { at: number[]; ei: number[]; gj: number[] };

/** Stations in order, two at least; two at one place are a step. */
export function stationsIn(beam: Pick<Beam, 'stations'>): Stations {
  const found: Stations = { at: [], ei: [], gj: [] };
  listOf('stations', beam.stations, 2).forEach((station, k) => {
    const path = `stations[${k}].`;
    const last = found.at[k - 1];
    found.at.push(numberIn(station, 'at', 'm', { from: last ?? -1000, to: 1000 }, path));
    found.ei.push(positive(station, 'ei', 'N m2', path));
    found.gj.push(positive(station, 'gj', 'N m2', path));
  });
  const long = (found.at.at(-1) ?? 0) - (found.at[0] ?? 0);
  if (long < 1e-6) throw new RangeError('stations[].at must run over some length of tube');
  return found;
}

/** Cuts the tube at its stations and at further places within it; no cell longer than `least`, when it is given. */
export function gridOf({ at, ei, gj }: Stations, places: readonly number[], least = 0): Grid {
  const x = merged(at, places, least);
  const [bends, turns] = [spansOf(at, ei), spansOf(at, gj)];
  const cells: Cell[] = [];
  let k = 0;
  for (let i = 0; i + 1 < x.length; i += 1) {
    const from = x[i] ?? 0;
    while (k < at.length - 2 && (at[k + 1] ?? 0) <= from + SAME_PLACE) k += 1;
    const [bend, turn] = [bends[k], turns[k]];
    if (bend && turn) cells.push(cellOf(from, (x[i + 1] ?? 0) - from, bend, turn));
  }
  return { x, cells };
}

function cellOf(from: number, long: number, bend: Span, turn: Span): Cell {
  const to = from + long;
  const change = Math.max(
    Math.abs(Math.log(rootAt(bend, to) / rootAt(bend, from))),
    Math.abs(Math.log(rootAt(turn, to) / rootAt(turn, from))),
  );
  const parts = Math.min(64, 1 + Math.floor(change / CHANGE));
  const size = parts * POINTS.length;
  const cell = {
    long,
    s: new Float64Array(size),
    bend: new Float64Array(size),
    turn: new Float64Array(size),
  };
  for (let p = 0; p < size; p += 1) {
    const g = p % POINTS.length;
    const s = (((p - g) / POINTS.length + (POINTS[g] ?? 0)) / parts) * long;
    const weight = ((WEIGHTS[g] ?? 0) * long) / parts;
    cell.s[p] = s;
    cell.bend[p] = weight / rootAt(bend, from + s) ** 4;
    cell.turn[p] = weight / rootAt(turn, from + s) ** 4;
  }
  return cell;
}

/** All places in order, each once; no stretch longer than `least` allows, when it is given. */
function merged(at: readonly number[], places: readonly number[], least: number): Float64Array {
  const all = [...at, ...places].sort((a, b) => a - b);
  const kept: number[] = [];
  for (const place of all) {
    const last = kept.at(-1);
    if (last !== undefined && place - last <= SAME_PLACE) continue;
    if (last !== undefined && least > 0) {
      const parts = Math.ceil((place - last) / least - 1e-9);
      for (let k = 1; k < parts; k += 1) kept.push(last + ((place - last) * k) / parts);
    }
    kept.push(place);
  }
  return Float64Array.from(kept);
}

/** The number of a place in a grid. */
export function placeIn(x: Float64Array, place: number): number {
  let [low, high] = [0, x.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((x[middle] ?? 0) < place - SAME_PLACE) low = middle + 1;
    else high = middle;
  }
  return low;
}
