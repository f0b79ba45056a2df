import { ticks } from 'd3-array';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { inUnits } from '#shared/units/format.ts';
import { Hatch } from './hatch.tsx';
import { letterScale, useWidth } from './use-width.ts';
import './heat-plot.css';

export interface HeatScale {
  /** px of a time in s */
  x: (seconds: number) => number;
  /** px of a temperature in K */
  y: (kelvin: number) => number;
  /** px that the time axis is wide */
  width: number;
  /** px of the time axis */
  foot: number;
}

export interface PlotLimit {
  name: string;
  /** K */
  at: number;
}

interface Props {
  /** Said instead of the picture. */
  label: string;
  height: number;
  /** s, may begin before the oven was lit */
  from: number;
  to: number;
  /** K; room is left around them */
  coldest: number;
  hottest: number;
  limits?: readonly PlotLimit[];
  children: (scale: HeatScale) => ComponentChildren;
}

/** px round the plot, for letters of the usual size */
const usual = { left: 34, right: 26, top: 18, bottom: 20 };
const band = 10;
/** px a letter of a limit's name takes, of the usual size */
const letter = 6.6;

interface Room {
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** How many times the usual size letters are. */
  letters: number;
}

function roomFor(letters: number): Room {
  const { left, right, top, bottom } = usual;
  return {
    left: letters * left,
    right: letters * right,
    top: letters * top,
    bottom: letters * bottom,
    letters,
  };
}

interface LimitProps {
  limit: PlotLimit;
  scale: HeatScale;
}

/** Hatched from the limit up. */
function Limit({ limit, hatch, scale, left }: LimitProps & { hatch: string; left: number }) {
  const right = left + scale.width;
  const y = scale.y(limit.at);
  return (
    <>
      <rect class="heat-limit-ground" x={left} width={scale.width} y={y - band} height={band} />
      <rect fill={`url(#${hatch}-amber)`} x={left} width={scale.width} y={y - band} height={band} />
      <line class="heat-limit-line" x1={left} x2={right} y1={y} y2={y} />
    </>
  );
}

/** Neighbors stand at opposite ends, never on each other, over every line. Big letters: the names stand below. */
function LimitName({ limit, i, scale, pad }: LimitProps & { i: number; pad: Room }) {
  const value = show(limit.at, 'temperature', 0);
  const fits = Math.floor(scale.width / letter) - value.length - 1;
  const name = limit.name.length > fits ? `${limit.name.slice(0, fits - 1)}…` : limit.name;
  const atRight = i % 2 === 0;
  return (
    <text
      class="heat-limit"
      x={atRight ? pad.left + scale.width : pad.left}
      y={scale.y(limit.at) - band - 3}
      text-anchor={atRight ? 'end' : 'start'}
    >
      {pad.letters > 1.4 ? value : `${name} ${value}`}
    </text>
  );
}

/** Temperature over time as a builder draws it: degrees up the side, hours along the foot, limits hatched. */
export function HeatPlot({
  label,
  height: usualHeight,
  from,
  to,
  coldest,
  hottest,
  limits = [],
  children,
}: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const pad = roomFor(letterScale());
  const big = pad.letters > 1.4;
  const height = usualHeight * (big ? 1.5 : 1);
  const hatch = useId().replace(/[^\w-]/g, '');
  const inside = Math.max(1, width.value - pad.left - pad.right);
  const shown = (k: number) => inUnits(k, { quantity: 'temperature', system: settings.value.units }).value;
  const [low, high] = [shown(coldest) - 5, shown(hottest)];
  const lasts = Math.max(1, to - from);
  const degreesY = (degrees: number) =>
    height - pad.bottom - ((degrees - low) / Math.max(1, high - low)) * (height - pad.bottom - pad.top);
  const scale: HeatScale = {
    x: (seconds) => pad.left + ((seconds - from) / lasts) * inside,
    y: (kelvin) => degreesY(shown(kelvin)),
    width: inside,
    foot: height - pad.bottom,
  };
  return (
    <div ref={ref}>
      <svg class="heat-plot" width="100%" height={height} role="img" aria-label={label}>
        <Hatch id={hatch} />
        {ticks(low, high, big ? 2 : 4).map((t) => (
          <g key={t}>
            <line class="heat-grid" x1={pad.left} x2={pad.left + inside} y1={degreesY(t)} y2={degreesY(t)} />
            <text x={pad.left - 6} y={degreesY(t) + 4 * pad.letters} text-anchor="end">
              {t}
            </text>
          </g>
        ))}
        {limits.map((limit) => (
          <Limit key={`${limit.name} ${limit.at}`} {...{ limit, hatch, scale }} left={pad.left} />
        ))}
        {children(scale)}
        {limits.map((limit, i) => (
          <LimitName key={`${limit.name} ${limit.at}`} {...{ limit, i, scale, pad }} />
        ))}
        {ticks(from / 3600, to / 3600, big ? 2 : 5).map((h) => (
          <text key={h} x={scale.x(h * 3600)} y={height - 4} text-anchor="middle">
            {h} h
          </text>
        ))}
      </svg>
      {big && limits.map((l) => <p key={l.name}>{`${l.name} ${show(l.at, 'temperature', 0)}`}</p>)}
    </div>
  );
}
