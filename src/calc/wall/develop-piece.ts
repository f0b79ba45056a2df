import { numberIn } from '../check.ts';
import { breaksWithin, type Core, coreOf, laidAt } from './core.ts';
import { checkEven, halfAngleOf } from './even-taper.ts';
import { chords, thinned } from './polyline.ts';
import { pieceIn } from './roll-at.ts';
import type { FlatPiece, Point, Roll } from './types.ts';

const TURN = 2 * Math.PI;

/** Below this a taper moves nothing by an atom's width, and the formula would divide by next to 0. */
const NO_TAPER = 1e-9;

/** Of the chord error allowed, what is left over for taking points out again. */
const THINNING = 0.1;

/** The piece at one place along it: where on the datum edge, on what radius, how many turns. */
type Line = { x: number; radius: number; turns: number };

type Sheet = { core: Core; sine: number; cosine: number };

/**
 * The flat shape of a piece, to be cut. On a cylinder its width at each station stands square to the
 * datum edge. On a tapered mandrel it is developed about the apex: every round line of the tube turns
 * toward the apex as it goes round, the ends are arcs, and the free edge is not straight.
 *
 * @param roll what `rollPieces` gives
 * @param piece its number in the roll, from 0
 * @param chordError how far the outline may be from the true curve, m, 1e-8 to 0.01; 0.0002 when not given
 * @returns see `FlatPiece`
 * @throws RangeError naming the field; `mandrel` when it bends under the piece, or tapers so much that
 *   the flat piece would run into itself
 *
 * Formula: along a round line (x', y') = (D/2 + t f/(2 pi)) (-sin(f sin a), cos(f sin a)) over the
 *   angle f from 0 to 2 pi N; a the half-angle of the mandrel. With no thickness, polar coordinates.
 * Source: development of a right circular cone, sector angle 2 pi sin(half-angle); do Carmo,
 *   Differential Geometry of Curves and Surfaces: geodesic curvature is kept in an isometry.
 *
 * @example
 * // 4 wraps of 0.3 mm on a mandrel from 40 to 30 mm in 2 m. How long is the datum edge?
 * developPiece({
 *   roll: rollPieces({
 *     mandrel: { stations: [{ at: 0, value: 0.04 }, { at: 2, value: 0.03 }], between: 'straight' },
 *     pieces: [
 *       {
 *         kind: 'cloth', thickness: 0.0003, start: 0, clock: 0, angle: 0, overlap: 0,
 *         wraps: { stations: [{ at: 0, value: 4 }, { at: 2, value: 4 }], between: 'straight' },
 *       },
 *     ],
 *     length: 2,
 *     step: 0.1,
 *   }),
 *   piece: 0,
 * }).length
 * // => 2
 */
export function developPiece(input: {
  roll: Roll;
  piece: number;
  chordError?: number | undefined;
}): FlatPiece {
  const rolled = pieceIn(input);
  const error =
    input.chordError === undefined ? 0.0002 : numberIn(input, 'chordError', 'm', { from: 1e-8, to: 0.01 });
  const sheet = sheetOf(input.roll, input.piece, largest(rolled.wraps), largest(rolled.width));
  const { from, to } = rolled;
  const [first, last] = [lineAt(sheet, from, false), lineAt(sheet, to, true)];
  const sides = [
    [{ x: 0, y: 0 }],
    chords((share) => alongLine(sheet, last, share), error),
    thinned(freeEdge(sheet, error * (1 - THINNING)), error * THINNING),
    chords((share) => alongLine(sheet, first, 1 - share), error).slice(1),
  ];
  return {
    outline: sides.flat(),
    length: last.x,
    halfAngle: Math.asin(sheet.sine),
    marks: rolled.spec[sheet.core.piece.by]?.stations.map(({ at }) => markAt(sheet, at, to)) ?? [],
  };
}

function sheetOf(roll: Roll, index: number, wraps: number, width: number): Sheet {
  const core = coreOf(roll, index);
  if (!core) throw new RangeError('piece must be in the roll');
  const { from, to, thickness } = core.piece;
  checkEven(core.mandrel, { from, to, wraps, width }, `pieces[${index}]`);
  const halfAngle = halfAngleOf(core.mandrel, from, to);
  const sine = Math.sin(halfAngle);
  const most = 1 / Math.abs(sine);
  if (wraps >= most) {
    throw new RangeError(
      `mandrel must taper less under pieces[${index}], or its wall be under ${Number((most * thickness).toPrecision(4))} m: ` +
        `the flat cloth of ${Number(wraps.toPrecision(4))} wraps would run into itself`,
    );
  }
  return { core, sine: Math.abs(sine) < NO_TAPER ? 0 : sine, cosine: Math.cos(halfAngle) };
}

function lineAt({ core, cosine }: Sheet, at: number, before: boolean): Line {
  const { startDiameter, wraps } = laidAt(core, at, before);
  return { x: (at - core.piece.from) / cosine, radius: startDiameter / 2, turns: wraps };
}

/** A point so far along a round line, as a share of its turns. */
function alongLine({ core, sine }: Sheet, { x, radius, turns }: Line, share: number): Point {
  const angle = TURN * turns * share;
  const growth = core.piece.thickness / TURN;
  if (sine === 0) return { x, y: angle * (radius + (growth * angle) / 2) };
  const turned = sine * angle;
  const half = Math.sin(turned / 2);
  // As it is when all is wound on the first radius, and what the growing radius adds.
  const grown = growth / (sine * sine);
  return {
    x: x - (2 * radius * half * half) / sine - grown * (Math.sin(turned) - turned * Math.cos(turned)),
    y: (radius * Math.sin(turned)) / sine + grown * (turned * Math.sin(turned) - 2 * half * half),
  };
}

/** From the far end back to end 0. */
function freeEdge(sheet: Sheet, error: number): Point[] {
  const breaks = breaksWithin(sheet.core).reverse();
  const points: Point[] = [];
  breaks.forEach(({ x: at, jump }, k) => {
    if (jump) points.push(...jumpAt(sheet, at, error));
    const next = breaks[k + 1]?.x;
    if (next === undefined) {
      points.push(alongLine(sheet, lineAt(sheet, at, false), 1));
      return;
    }
    // The very ends belong to this stretch, whatever comes beyond a jump there.
    const on = (share: number): Line => lineAt(sheet, at + share * (next - at), share < 1);
    points.push(...chords((share) => alongLine(sheet, on(share), 1), error));
  });
  return points;
}

/** Across a jump: along the round line, from what comes after to what comes before. */
function jumpAt(sheet: Sheet, at: number, error: number): Point[] {
  const [after, before] = [lineAt(sheet, at, false), lineAt(sheet, at, true)];
  return chords((share) => {
    const radius = after.radius + share * (before.radius - after.radius);
    return alongLine(
      sheet,
      { ...after, radius, turns: after.turns + share * (before.turns - after.turns) },
      1,
    );
  }, error);
}

function markAt(sheet: Sheet, station: number, to: number) {
  const at = sheet.core.piece.start + station;
  const line = lineAt(sheet, at, at >= to - 1e-9);
  return { at, x: line.x, edge: alongLine(sheet, line, 1) };
}

function largest(series: Float64Array): number {
  return series.reduce((most, value) => Math.max(most, value), 0);
}
