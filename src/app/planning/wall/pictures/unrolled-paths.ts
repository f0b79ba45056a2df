import { pliesAround, type Roll, seamAngle } from '#calc';
import { turn, within } from './angles.ts';
import type { Scale } from './scale.ts';
import { bandPath, linePath } from './thin-line.ts';

/** Each turn of each cloth as one even tone: where two lie on each other it is twice as dark. */
export function tones(roll: Roll, x: Scale, y: Scale): string[] {
  const xs = roll.at.map(x);
  return roll.pieces.flatMap(({ spec, wraps }) => {
    if (spec.kind !== 'cloth') return [];
    const most = Math.ceil(wraps.reduce((a, b) => Math.max(a, b), 0));
    return Array.from({ length: most }, (_, k) => {
      const share = wraps.map((n) => Math.min(1, Math.max(0, n - k)) * turn);
      const start = within(spec.clock);
      return [start, start - turn]
        .map((from) =>
          bandPath(
            xs,
            new Float64Array(xs.length).fill(y(from)),
            share.map((s) => y(from + s)),
          ),
        )
        .join('');
    });
  });
}

/** The free edge as often as it comes round. */
export function seamLines(roll: Roll, x: Scale, y: Scale): string {
  return roll.pieces
    .map((_, piece) => {
      const { at, angle } = seamAngle({ roll, piece });
      const xs = at.map(x);
      const turns = new Set(Array.from(angle, (a) => Math.floor(a / turn)));
      return [...turns]
        .map((n) =>
          linePath(
            xs,
            angle.map((a) => y(a - n * turn)),
          ),
        )
        .join('');
    })
    .join('');
}

export function startLines({ pieces }: Roll, x: Scale, y: Scale): string {
  return pieces.map((p) => `M${x(p.from)} ${y(within(p.spec.clock))}H${x(p.to)}`).join('');
}

export interface Count {
  x: number;
  y: number;
  plies: number;
}

export function counts(roll: Roll, x: Scale, y: Scale, columns: number): Count[] {
  return Array.from({ length: columns }, (_, c) => {
    const at = ((c + 0.5) / columns) * roll.length;
    const { steps } = pliesAround({ roll, at });
    return steps
      .filter((s) => y(s.to) - y(s.from) >= 20)
      .map((s) => ({ x: x(at), y: (y(s.from) + y(s.to)) / 2, plies: s.plies }));
  }).flat();
}
