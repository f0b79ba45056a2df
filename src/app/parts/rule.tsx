import { ticks } from 'd3-array';
import { useId } from 'preact/hooks';
import { Hatch } from './hatch.tsx';
import './rule.css';

export interface Zone {
  from: number;
  to: number;
  kind: 'amber' | 'stop';
}

interface Props {
  /** Said instead of the picture: 'Pot life, 16 of 30 min gone'. */
  label: string;
  from: number;
  to: number;
  /** How far the ink reaches. */
  value: number;
  /** Where it should reach. */
  target?: number | undefined;
  zones?: readonly Zone[];
  /** Unit behind the last figure. */
  unit?: string;
  /** Figure at a tick; the tick's own number by default. */
  figure?: (at: number) => string;
  tone?: 'blue' | 'amber' | 'stop';
  tall?: boolean;
  /** Where room is scarce, as in a strip. */
  slim?: boolean;
}

/** The graduated rule that everything measured is read off: length, number and hatch say the same thing. */
export function Rule({
  label,
  from,
  to,
  value,
  target,
  zones = [],
  unit,
  figure = String,
  tone = 'blue',
  tall,
  slim,
}: Props) {
  const hatch = useId().replace(/[^\w-]/g, '');
  const share = (at: number) => Math.min(1, Math.max(0, (at - from) / (to - from)));
  const percent = (at: number) => `${100 * share(at)}%`;
  const width = (a: number, b: number) => `${100 * Math.max(0, share(b) - share(a))}%`;
  const height = tall ? 56 : slim ? 16 : 30;
  const top = target === undefined ? 0 : 12;
  const major = majorTicks(from, to);
  const last = major.at(-1);
  // The last figure carries the unit and, near the end, leans inward: its neighbor gives way.
  const figured = major.filter(
    (t) => t === last || last === undefined || share(last) <= 0.93 || share(last) - share(t) > 0.17,
  );
  const minor = ticks(from, to, 24).filter((t) => t >= from && t <= to);
  return (
    <svg
      class={`rule rule-${tone}`}
      width="100%"
      style={{ height: `calc(${top + height}px + 1.125rem)` }}
      role="img"
      aria-label={label}
    >
      <Hatch id={hatch} />
      {zones.map((z) => (
        <g key={`${z.from}`}>
          <rect
            class={`zone-${z.kind}`}
            x={percent(z.from)}
            width={width(z.from, z.to)}
            y={top}
            height={height}
          />
          <rect
            fill={`url(#${hatch}-${z.kind})`}
            x={percent(z.from)}
            width={width(z.from, z.to)}
            y={top}
            height={height}
          />
        </g>
      ))}
      <rect class="rule-fill" x="0" width={width(from, value)} y={top} height={height} />
      <line class="rule-base" x1="0" x2="100%" y1={top + height} y2={top + height} />
      {minor.map((t) => (
        <line
          class="rule-tick"
          key={t}
          x1={percent(t)}
          x2={percent(t)}
          y1={top + height - 6}
          y2={top + height}
        />
      ))}
      {major.map((t) => (
        <line
          class="rule-tick"
          key={t}
          x1={percent(t)}
          x2={percent(t)}
          y1={top + height - 11}
          y2={top + height}
        />
      ))}
      {figured.map((t, i) => (
        <text
          key={t}
          class={(figured.length - 1 - i) % 2 === 1 ? 'rule-between' : undefined}
          x={percent(t)}
          y={top + height}
          dy="1.17em"
          text-anchor={anchor(share(t))}
        >
          {figure(t)}
          {unit && t === last ? ` ${unit}` : ''}
        </text>
      ))}
      {target !== undefined && (
        <>
          <defs>
            <path
              id={`${hatch}-target`}
              class="rule-target"
              d={`M-7 0H7L0 10Z M-1.5 8H1.5V${top + height}H-1.5Z`}
            />
          </defs>
          <use href={`#${hatch}-target`} x={percent(target)} />
        </>
      )}
    </svg>
  );
}

/** Figures that come out even at the end of the rule, where there are any. */
function majorTicks(from: number, to: number): number[] {
  const even = [6, 5, 4, 3].map((count) => ticks(from, to, count)).find((t) => t.at(-1) === to);
  return even ?? ticks(from, to, 6);
}

function anchor(share: number): 'start' | 'middle' | 'end' {
  if (share < 0.04) return 'start';
  return share > 0.93 ? 'end' : 'middle';
}
