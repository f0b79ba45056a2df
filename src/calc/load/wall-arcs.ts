import { listOf, numberIn, positive } from '../check.ts';
import { type Matrix3, turnedPly } from '../laminate.ts';
import { covers, partOf } from '../wall/around.ts';
import { inverse3, reducedBending, zeros3 } from './matrix.ts';
import { strengthIn } from './strength.ts';
import type { Arc, PlyStrength, TubePly, WallLaminate, WallPly } from './types.ts';

const TURN = 2 * Math.PI;
const SAME_TURN = 1e-9;

/** A ply that has been checked; `stiffness` in the tube's directions, none where it carries nothing. */
export type ReadyPly = {
  readonly stiffness: Matrix3 | undefined;
  readonly angle: number;
  readonly thickness: number;
  readonly density: number | undefined;
  readonly strength: PlyStrength | undefined;
  /** In turns; a share of 1 is all round. */
  readonly start: number;
  readonly share: number;
};

/** From one angle to the next, rad, these plies lie on each other, by their numbers. */
export type WallArc = {
  readonly from: number;
  readonly to: number;
  readonly stack: readonly number[];
  readonly thickness: number;
};

/** Plies in wrap order, each checked. */
export function readyPlies(plies: readonly TubePly[]): ReadyPly[] {
  // Whole wraps of one piece are one and the same ply, many times.
  const seen = new Map<TubePly, ReadyPly>();
  return listOf('plies', plies, 1).map((ply, index) => {
    const known = seen.get(ply);
    if (known) return known;
    const ready = readyPly(ply, `plies[${index}].`);
    seen.set(ply, ready);
    return ready;
  });
}

function readyPly(ply: TubePly, path: string): ReadyPly {
  const around = arcIn(ply?.arc, path);
  const density = ply?.density === undefined ? undefined : positive(ply, 'density', 'kg/m3', path);
  if (ply?.carries === false) {
    const thickness = positive(ply, 'thickness', 'm', path);
    return { stiffness: undefined, angle: 0, thickness, density, strength: undefined, ...around };
  }
  const strength = ply?.strength && strengthIn(ply.strength, `${path}strength.`);
  return { ...turnedPly(ply, path), density, strength, ...around };
}

/** Where an arc starts and over how much it goes, in turns; all round without one. */
export function arcIn(arc: Arc | undefined, path: string): { start: number; share: number } {
  if (arc === undefined) return { start: 0, share: 1 };
  const from = numberIn(arc, 'from', 'rad', { from: -1000, to: 1000 }, `${path}arc.`);
  const to = numberIn(arc, 'to', 'rad', { above: from, to: from + TURN + SAME_TURN }, `${path}arc.`);
  return { start: partOf(from / TURN), share: Math.min(1, (to - from) / TURN) };
}

/** Parts of the turn with one and the same stack, from 0 to 2 pi without a gap. */
export function arcsOf(plies: readonly ReadyPly[]): WallArc[] {
  const part = plies.filter(({ share }) => share < 1 - SAME_TURN);
  const cuts = part.flatMap(({ start, share }) => [start, partOf(start + share)]);
  const arcs: WallArc[] = [];
  let from = 0;
  for (const to of [...cuts, 1].sort((a, b) => a - b)) {
    if (to - from < SAME_TURN) continue;
    const middle = (from + to) / 2;
    const stack: number[] = [];
    let thickness = 0;
    let carries = false;
    plies.forEach((ply, index) => {
      if (ply.share < 1 - SAME_TURN && !covers(ply.start, ply.share, middle)) return;
      stack.push(index);
      thickness += ply.thickness;
      carries ||= ply.stiffness !== undefined;
    });
    if (!carries)
      throw new RangeError('plies must carry all round, got a part of the turn with none that does');
    arcs.push({ from: from * TURN, to: to * TURN, stack, thickness });
    from = to;
  }
  return arcs;
}

/** The stack of an arc as a laminate about the middle of its wall. */
export function laminateOf(plies: readonly ReadyPly[], { stack, thickness }: WallArc): WallLaminate {
  const [a, b, d] = [zeros3(), zeros3(), zeros3()];
  const own: WallPly[] = [];
  let foot = -thickness / 2;
  for (const index of stack) {
    const ply = plies[index];
    if (!ply) continue;
    const middle = foot + ply.thickness / 2;
    foot += ply.thickness;
    const { stiffness, angle, thickness: t, strength } = ply;
    if (!stiffness) continue;
    sumInto(a, stiffness, t);
    sumInto(b, stiffness, t * middle);
    sumInto(d, stiffness, t * (middle * middle + (t * t) / 12));
    own.push({ ply: index, stiffness, angle, thickness: t, middle, strength });
  }
  const flexibility = inverse3(a);
  return { a, b, flexibility, d: reducedBending(d, b, flexibility), thickness, plies: own };
}

/** As `add` of laminates, without its checks: this runs for every ply of every arc of every station in one frame. */
function sumInto(sum: Matrix3, [x, y, s]: Matrix3, times: number): void {
  const [sx, sy, ss] = sum;
  sx[0] += x[0] * times;
  sx[1] += x[1] * times;
  sx[2] += x[2] * times;
  sy[0] += y[0] * times;
  sy[1] += y[1] * times;
  sy[2] += y[2] * times;
  ss[0] += s[0] * times;
  ss[1] += s[1] * times;
  ss[2] += s[2] * times;
}
