import { numberIn } from '../check.ts';
import { type Curve, curveOf, ends, readCurve, SAME_PLACE } from './curve.ts';
import type { PieceSpec } from './types.ts';

/** How a piece's shape is given, with the most it may be. */
const GIVEN = {
  wraps: { unit: 'plies', most: 1000 },
  width: { unit: 'm', most: 1000 },
  wall: { unit: 'm', most: 1 },
} as const;

const KINDS: readonly string[] = ['cloth', 'core', 'film'];

/** A piece that has been checked, ready to be laid. `from` and `to` are m from end 0 of the tube. */
export type PieceCurve = {
  readonly by: keyof typeof GIVEN;
  readonly curve: Curve;
  readonly start: number;
  readonly from: number;
  readonly to: number;
  readonly thickness: number;
  readonly overlap: number;
};

/**
 * Checks a piece and makes it ready to be laid.
 *
 * @param path where it is, for the message: 'pieces[0].'
 * @throws RangeError naming the field
 */
export function pieceCurve(spec: PieceSpec, path: string): PieceCurve {
  if (!KINDS.includes(spec?.kind)) {
    throw new RangeError(`${path}kind must be cloth, core or film, got ${String(spec?.kind)}`);
  }
  const { by, shape } = givenShape(spec, path);
  const overlap = numberIn(spec, 'overlap', 'm', { from: 0, to: 10 }, path);
  const floor = by === 'width' ? overlap : 0;
  const curve = curveOf(shape, `${path}${by}.`, GIVEN[by].unit, { above: floor, to: GIVEN[by].most });
  const start = numberIn(spec, 'start', 'm', { from: 0, to: 1000 }, path);
  numberIn(spec, 'clock', 'rad', { from: -1000, to: 1000 }, path);
  numberIn(spec, 'angle', 'rad', { from: -2 * Math.PI, to: 2 * Math.PI }, path);
  if (spec.arealWeight !== undefined) numberIn(spec, 'arealWeight', 'kg/m2', { above: 0 }, path);
  if (spec.density !== undefined) numberIn(spec, 'density', 'kg/m3', { above: 0 }, path);
  const { first, last } = ends(curve);
  return {
    by,
    curve,
    start,
    from: start + first,
    to: start + last,
    thickness: numberIn(spec, 'thickness', 'm', { from: 1e-6, to: 1 }, path),
    overlap,
  };
}

/** Whether a piece is at a place of the tube. */
export function isThere({ from, to }: PieceCurve, x: number, before: boolean): boolean {
  return before
    ? x > from + SAME_PLACE && x <= to + SAME_PLACE
    : x >= from - SAME_PLACE && x < to - SAME_PLACE;
}

/** What is asked of a piece at a place of the tube, in the way it is asked for. */
export function askedAt({ curve, start }: PieceCurve, x: number, before: boolean): number {
  return readCurve(curve, x - start, before);
}

type Laying = Pick<PieceCurve, 'by' | 'thickness' | 'overlap'>;

/** Plies everywhere that a piece makes of what is asked, on such a core. */
export function pliesOn({ by, thickness, overlap }: Laying, startDiameter: number, asked: number): number {
  if (by === 'width') return turns(asked - overlap, startDiameter, thickness);
  return snapped(by === 'wraps' ? asked : asked / thickness);
}

/** Width of cloth that these plies take, overlap and all. */
export function widthOn(
  { by, thickness, overlap }: Laying,
  startDiameter: number,
  plies: number,
  asked: number,
): number {
  if (by === 'width') return asked;
  return Math.PI * plies * (startDiameter + plies * thickness) + overlap;
}

/** Turns that the cloth makes, overlap and all. */
export function wrapsOn(
  { thickness, overlap }: Laying,
  startDiameter: number,
  plies: number,
  width: number,
): number {
  return overlap === 0 ? plies : turns(width, startDiameter, thickness);
}

/** w = pi N (D + N t) solved for N, in the form that does not subtract two near equals. */
function turns(width: number, startDiameter: number, thickness: number): number {
  const perTurn = width / Math.PI;
  return snapped(
    (2 * perTurn) / (startDiameter + Math.sqrt(startDiameter * startDiameter + 4 * thickness * perTurn)),
  );
}

/** A computed number a hair off a whole one is that one: its whole part would be one short. */
export function snapped(wraps: number): number {
  const whole = Math.round(wraps);
  return Math.abs(wraps - whole) < 1e-9 * Math.max(1, whole) ? whole : wraps;
}

function givenShape(spec: PieceSpec, path: string) {
  const given = (['wraps', 'width', 'wall'] as const).filter((by) => spec[by] !== undefined);
  const by = given[0];
  const shape = by && spec[by];
  if (by && shape && given.length === 1) return { by, shape };
  const got = given.length === 0 ? 'none' : given.join(' and ');
  throw new RangeError(`${path}wraps, width or wall must be given, exactly one of them, got ${got}`);
}
