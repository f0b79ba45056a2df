import type { ComponentChildren } from 'preact';

interface SheetProps {
  /** What the picture shows, for who cannot see it. */
  says: string;
  children: ComponentChildren;
}

/** Every picture of a word is drawn on a sheet of this size, so that all read alike. */
export function Drawing({ says, children }: SheetProps) {
  return (
    <svg class="word-picture" viewBox="0 0 320 140" role="img" aria-label={says}>
      {children}
    </svg>
  );
}

interface LabelProps {
  x: number;
  y: number;
  at?: 'start' | 'middle' | 'end';
  strong?: boolean;
  children: ComponentChildren;
}

export function Label({ x, y, at = 'middle', strong, children }: LabelProps) {
  return (
    <text x={x} y={y} text-anchor={at} class={strong ? 'word-label word-label-strong' : 'word-label'}>
      {children}
    </text>
  );
}

/** A dimension line between two places, with a head at each end. */
export function Span({ x1, x2, y }: { x1: number; x2: number; y: number }) {
  return (
    <path
      class="word-thin"
      d={`M${x1} ${y}H${x2}M${x1 + 6} ${y - 4}L${x1} ${y}L${x1 + 6} ${y + 4}M${x2 - 6} ${y - 4}L${x2} ${y}L${x2 - 6} ${y + 4}`}
    />
  );
}

/** A spiral of cloth round a mandrel, one step a ply. */
export function spiral(
  turns: number,
  { x, y, from, step }: { x: number; y: number; from: number; step: number },
) {
  const points: string[] = [];
  const steps = Math.round(turns * 48);
  for (let i = 0; i <= steps; i++) {
    const angle = (i / 48) * 2 * Math.PI - Math.PI / 2;
    const radius = from + (i / 48) * step;
    points.push(`${(x + radius * Math.cos(angle)).toFixed(1)} ${(y + radius * Math.sin(angle)).toFixed(1)}`);
  }
  return `M${points.join('L')}`;
}
