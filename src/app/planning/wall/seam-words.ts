import { show } from '#app/state/show.ts';
import { pliesAround, type Roll } from '#calc';
import type { Piece } from '#shared/record/piece.ts';
import { apart, sampleNear, turn, within } from './pictures/angles.ts';
import { sayPlies } from './station-words.ts';
import { pieceName } from './wall-words.ts';

/** A seam nearer to the neutral axis than this is on it, rad */
const onAxis = Math.PI / 6;

const degrees = (angle: number) => show(within(angle), 'angle', 0);

interface Extra {
  from: number;
  to: number;
}

/** Where one more ply lies than at the thinnest, joined across the top. */
export function extraOf(steps: readonly { from: number; to: number; plies: number }[]): Extra[] {
  const least = Math.min(...steps.map((s) => s.plies));
  const runs: Extra[] = [];
  for (const step of steps) {
    if (step.plies <= least) continue;
    const last = runs.at(-1);
    if (last && step.from - last.to < 1e-6) last.to = step.to;
    else runs.push({ from: step.from, to: step.to });
  }
  const [first, last] = [runs[0], runs.at(-1)];
  if (first && last && first !== last && first.from < 1e-6 && turn - last.to < 1e-6) {
    return [...runs.slice(1, -1), { from: last.from, to: turn + first.to }];
  }
  return runs;
}

/** 'At 600 mm: 4 plies all round, one more from 0° to 140°.' */
export function aroundWords(roll: Roll, at: number): string {
  const place = roll.at[sampleNear(roll, at)] ?? 0;
  const { steps } = pliesAround({ roll, at: place });
  const least = Math.min(...steps.map((s) => s.plies));
  const most = Math.max(...steps.map((s) => s.plies));
  const where = extraOf(steps).map((e) => `${degrees(e.from)} to ${degrees(e.to)}`);
  const more = most - least === 1 ? 'one more' : `up to ${most - least} more`;
  return `${sayPlies(least)} all round${where.length > 0 ? `, ${more} from ${where.join(' and ')}` : ''}.`;
}

export interface SeamWord {
  says: string;
  /** False where something should be turned. */
  good: boolean;
}

function extraWord(steps: Parameters<typeof extraOf>[0], pressedAt: number): SeamWord[] {
  const [longest] = extraOf(steps).sort((a, b) => b.to - b.from - (a.to - a.from));
  if (!longest || longest.to - longest.from > turn * 0.95) return [];
  const off = apart((longest.from + longest.to) / 2, pressedAt);
  return off <= turn / 4
    ? [{ good: true, says: 'The extra ply lies on the side that is pressed, where it belongs.' }]
    : [
        {
          good: false,
          says: `The extra ply lies ${show(off, 'angle', 0)} away from the side that is pressed: turn the starting edge by about ${show(off, 'angle', 0)}.`,
        },
      ];
}

/** Whether extra ply and seams lie well for the main load at a station. */
export function seamWords(roll: Roll, pieces: readonly Piece[], at: number, pressedAt: number): SeamWord[] {
  const i = sampleNear(roll, at);
  const { steps, seams } = pliesAround({ roll, at: roll.at[i] ?? 0 });
  const joints = seams.flatMap(({ piece, outer }) => {
    const rolled = roll.pieces[piece];
    // Only where a piece goes round about once does its seam carry by itself: a butt or a single lap.
    if (rolled?.spec.kind !== 'cloth' || (rolled.wraps[i] ?? 0) >= 2) return [];
    const off = Math.abs(apart(outer, pressedAt) - turn / 4);
    const name = pieceName(pieces[piece], piece);
    return off < onAxis
      ? [
          {
            good: false,
            says: `The seam of ${name} lies at ${degrees(outer)}, on the neutral axis, where the load shears it: turn it by ${show(onAxis, 'angle', 0)} or more.`,
          },
        ]
      : [{ good: true, says: `The seam of ${name} lies off the neutral axis.` }];
  });
  return [...extraWord(steps, pressedAt), ...joints];
}
