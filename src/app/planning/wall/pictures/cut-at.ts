import { pliesAround, type Roll } from '#calc';
import { isOver, sampleNear, turn } from './angles.ts';
import { arcPath, ringPath } from './rings.ts';

const factors = [1, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30];
/** The wall may take so much of the radius. */
const wallShare = 0.42;

export interface Ring {
  piece: number;
  core: boolean;
  shape: string;
  plies: string;
}

/** How many times thicker the wall is drawn, so that its plies can be told apart. */
function thicker(bore: number, wall: number): number {
  return factors.filter((f) => wall * f <= wallShare * (bore + wall * f)).at(-1) ?? 1;
}

export function cutAt(roll: Roll, at: number, radius: number) {
  const i = sampleNear(roll, at);
  const place = roll.at[i] ?? 0;
  const { steps, seams } = pliesAround({ roll, at: place });
  const bore = (roll.diameter[i] ?? 0) / 2;
  const wall = roll.wallMax[i] ?? 0;
  const factor = thicker(bore, wall);
  const px = radius / (bore + wall * factor);
  const rings: Ring[] = roll.pieces.map(({ spec }, piece) => ({
    piece,
    core: spec.kind !== 'cloth',
    shape: '',
    plies: '',
  }));
  for (const step of steps) {
    let r = bore * px;
    const middle = (step.from + step.to) / 2;
    roll.pieces.forEach(({ spec, wraps }, piece) => {
      const turns = wraps[i] ?? 0;
      const whole = Math.floor(turns + 1e-9);
      const here = whole + (isOver(middle, spec.clock, (turns - whole) * turn) ? 1 : 0);
      const ring = rings[piece];
      if (!ring || here === 0) return;
      const thick = spec.thickness * factor * px;
      ring.shape += ringPath(r, r + here * thick, step.from, step.to);
      for (let k = 1; k < here; k += 1) ring.plies += arcPath(r + k * thick, step.from, step.to);
      r += here * thick;
    });
  }
  const least = Math.min(...steps.map((s) => s.plies));
  const extra = steps.filter((s) => s.plies > least);
  return { rings, seams, steps, extra, factor, bore: bore * px, least, place };
}

export interface Tag {
  angle: number;
  text: string;
}

/** Seams closer than this share one tag, rad */
const near = 0.42;

export function tagsOf(seams: readonly { piece: number; outer: number }[], several: boolean): Tag[] {
  const tags: { angle: number; pieces: number[] }[] = [];
  for (const { piece, outer } of [...seams].sort((a, b) => a.outer - b.outer)) {
    const last = tags.at(-1);
    if (last && outer - last.angle < near) last.pieces.push(piece + 1);
    else tags.push({ angle: outer, pieces: [piece + 1] });
  }
  return tags.map((t) => ({ angle: t.angle, text: several ? `seam ${t.pieces.join(', ')}` : 'seam' }));
}
