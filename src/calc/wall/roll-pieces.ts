import { listOf, numberIn } from '../check.ts';
import { type Arcs, arcsFor, partOf, thickestOf, thinnestOf } from './around.ts';
import { type Curve, curveOf, ends, readStretch, SAME_PLACE, stretchAt } from './curve.ts';
import { type Grid, gridFor } from './grid.ts';
import { isThere, type PieceCurve, pieceCurve, pliesOn, widthOn, wrapsOn } from './piece-curve.ts';
import { stepFor } from './shape.ts';
import type { MandrelShape, PieceSpec, Roll, RolledPiece } from './types.ts';

/**
 * Pieces rolled one on the other on a mandrel: what each becomes and the wall they make, along the
 * tube. Area is preserved: a piece with a fraction of a wrap, or a lap, builds up the next one's core
 * by its mean.
 *
 * @param mandrel bare diameter with its release on, m, at least from 0 to the length
 * @param pieces in wrap order, each on the tube: `thickness` m, `start` m at least 0, `clock` and `angle`
 *   rad, `overlap` m at least 0, and exactly one of `wraps` (plies), `width` and `wall` (m), all greater
 *   than 0
 * @param length of the tube, m, greater than 0
 * @param step of the samples, m, greater than 0; no more than 200,000 of them
 * @param mayBeOpen true lets a tube be that has less than one ply of cloth somewhere
 * @returns see `Roll`
 * @throws RangeError naming the field: 'pieces[1].wraps.stations[2].value'
 *
 * Formula: w = pi n (D + n t) + overlap; the next core is D + 2 N t.
 * Source: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
 *
 * @example
 * // 3.5 wraps of 0.3 mm cloth on a 38 mm mandrel: what wall at its thickest?
 * rollPieces({
 *   mandrel: { stations: [{ at: 0, value: 0.038 }, { at: 1, value: 0.038 }], between: 'straight' },
 *   pieces: [
 *     {
 *       kind: 'cloth', thickness: 0.0003, start: 0, clock: 0, angle: 0, overlap: 0,
 *       wraps: { stations: [{ at: 0, value: 3.5 }, { at: 1, value: 3.5 }], between: 'straight' },
 *     },
 *   ],
 *   length: 1,
 *   step: 0.1,
 * }).wallMax[0]
 * // => 0.0012
 */
export function rollPieces(input: {
  mandrel: MandrelShape;
  pieces: readonly PieceSpec[];
  length: number;
  step: number;
  mayBeOpen?: boolean | undefined;
}): Roll {
  const length = numberIn(input, 'length', 'm', { from: 0.001, to: 1000 });
  const step = stepFor(input, length);
  const mandrel = curveOf(input.mandrel, 'mandrel.', 'm', { from: 1e-4, to: 100 });
  checkMandrel(mandrel, length);
  const specs = listOf('pieces', input.pieces, 0);
  const laid = specs.map((spec, index) => ({
    spec,
    curve: onTube(pieceCurve(spec, `pieces[${index}].`), index, length),
  }));
  const curves = laid.map(({ curve }) => curve);
  const grid = gridFor(length, step, mandrel, curves);
  const diameter = sampleMandrel(mandrel, grid);
  const outsideDiameter = diameter.slice();
  const pieces = laid.map(({ spec, curve }) => rolled(spec, curve, grid, outsideDiameter));
  const walls = wallsOf(grid, pieces);
  if (input.mayBeOpen !== true) checkClosed(grid, pieces);
  return { mandrel: input.mandrel, length, step, ...grid, diameter, pieces, ...walls, outsideDiameter };
}

function checkMandrel(mandrel: Curve, length: number): void {
  const { first, last } = ends(mandrel);
  if (first > SAME_PLACE) {
    throw new RangeError(`mandrel.stations[0].at must be at most 0 m, end 0 of the tube, got ${first}`);
  }
  if (length > last + SAME_PLACE) {
    throw new RangeError(`length must be at most ${last} m, the end of the mandrel, got ${length}`);
  }
}

function onTube(piece: PieceCurve, index: number, length: number): PieceCurve {
  const place = `pieces[${index}].start and its stations[].at`;
  if (piece.from < -SAME_PLACE) {
    throw new RangeError(`${place} must keep it on the tube: it begins ${piece.from} m before end 0`);
  }
  if (piece.to > length + SAME_PLACE) {
    throw new RangeError(
      `${place} must keep it on the tube: it reaches ${piece.to} m and the tube ends at ${length} m`,
    );
  }
  return piece;
}

function sampleMandrel(mandrel: Curve, { at, before }: Grid): Float64Array {
  const diameter = new Float64Array(at.length);
  let stretch = 0;
  for (let i = 0; i < at.length; i += 1) {
    const x = at[i] ?? 0;
    stretch = stretchAt(mandrel, x, before[i] === 1, stretch);
    diameter[i] = readStretch(mandrel, stretch, x);
  }
  return diameter;
}

/** Rolls one piece on what is there, and builds it up. */
function rolled(
  spec: PieceSpec,
  piece: PieceCurve,
  { at, before }: Grid,
  outside: Float64Array,
): RolledPiece {
  const [plies, wraps] = [new Float64Array(at.length), new Float64Array(at.length)];
  const [width, thickness] = [new Float64Array(at.length), new Float64Array(at.length)];
  const startDiameter = outside.slice();
  let stretch = 0;
  for (let i = 0; i < at.length; i += 1) {
    const x = at[i] ?? 0;
    const isBefore = before[i] === 1;
    if (!isThere(piece, x, isBefore)) continue;
    stretch = stretchAt(piece.curve, x - piece.start, isBefore, stretch);
    const core = startDiameter[i] ?? 0;
    const asked = readStretch(piece.curve, stretch, x - piece.start);
    const makes = pliesOn(piece, core, asked);
    const wide = widthOn(piece, core, makes, asked);
    const turns = wrapsOn(piece, core, makes, wide);
    const adds = turns * piece.thickness;
    plies[i] = makes;
    width[i] = wide;
    wraps[i] = turns;
    thickness[i] = adds;
    outside[i] = (outside[i] ?? 0) + 2 * adds;
  }
  return { spec, from: piece.from, to: piece.to, startDiameter, plies, wraps, width, thickness };
}

function wallsOf({ at }: Grid, pieces: readonly RolledPiece[]) {
  const wallMin = new Float64Array(at.length);
  const wallMax = new Float64Array(at.length);
  const wallMean = new Float64Array(at.length);
  const arcs = arcsFor(pieces.length);
  for (let i = 0; i < at.length; i += 1) {
    let mean = 0;
    for (const piece of pieces) mean += piece.thickness[i] ?? 0;
    const base = wholeTurns(pieces, i);
    const count = fillArcs(pieces, i, arcs);
    wallMin[i] = base + thinnestOf(arcs, count);
    wallMax[i] = base + thickestOf(arcs, count);
    wallMean[i] = mean;
  }
  return { wallMin, wallMax, wallMean };
}

/** What all whole turns at a sample make, m. */
function wholeTurns(pieces: readonly RolledPiece[], i: number): number {
  let sum = 0;
  for (const { spec, wraps } of pieces) sum += Math.floor(wraps[i] ?? 0) * spec.thickness;
  return sum;
}

/** The fractions of a turn at a sample; returns how many there are. */
function fillArcs(pieces: readonly RolledPiece[], i: number, arcs: Arcs): number {
  let count = 0;
  for (const { spec, wraps } of pieces) {
    const turns = wraps[i] ?? 0;
    const share = turns - Math.floor(turns);
    if (share === 0) continue;
    arcs.start[count] = partOf(spec.clock / (2 * Math.PI));
    arcs.share[count] = share;
    arcs.thickness[count] = spec.thickness;
    count += 1;
  }
  return count;
}

/** A tube must have a ply of cloth all round, or it is no tube. */
function checkClosed({ at }: Grid, pieces: readonly RolledPiece[]): void {
  const cloth = pieces.filter(({ spec }) => spec.kind === 'cloth');
  const arcs = arcsFor(cloth.length);
  for (let i = 0; i < at.length; i += 1) {
    if (wholeTurns(cloth, i) > 0) continue;
    if (thinnestOf(arcs, fillArcs(cloth, i, arcs)) > 0) continue;
    throw new RangeError(
      `pieces must make at least one ply of cloth all round, and do not at ${Number((at[i] ?? 0).toFixed(4))} m`,
    );
  }
}
