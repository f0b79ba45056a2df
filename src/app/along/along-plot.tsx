import { useRef } from 'preact/hooks';
import type { SectionAt } from '#app/carry/sections-along.ts';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { AlongAxis } from '#app/wall/pictures/along-axis.tsx';
import { linear, type Scale, textWidth, ticksIn, ticksUp } from '#app/wall/pictures/scale.ts';
import { areaPath, bandPath, linePath } from '#app/wall/pictures/thin-line.ts';
import { alongStep, snap } from '#app/wall/snapping.ts';
import type { AlongQuantity } from './along-quantities.ts';
import '#app/wall/pictures/pictures.css';
import './along.css';

interface Props {
  sections: readonly SectionAt[];
  /** Where pieces and mandrel have theirs, m */
  stations: readonly number[];
  of: AlongQuantity;
  unit: string;
  /** The place that is looked at, and what is there. */
  here: SectionAt;
  length: number;
  onPick: (at: number) => void;
}

const height = 196;
const pad = { right: 16, top: 24, bottom: 24 };
/** A thumb that comes so near to a station means it, px */
const near = 12;

function Rule({
  of,
  top,
  y,
  left,
  right,
}: {
  of: AlongQuantity;
  top: number;
  y: Scale;
  left: number;
  right: number;
}) {
  const major = ticksUp(of.quantity, top, y);
  const minor = ticksIn(of.quantity, 0, top, 20);
  const marks = [...minor.map((t) => [t.si, 5] as const), ...major.map((t) => [t.si, 10] as const)];
  return (
    <g>
      <path class="picture-grid" d={major.map((t) => `M${left} ${y(t.si).toFixed(1)}H${right}`).join('')} />
      <path
        class="picture-tick"
        d={`M${left} ${y(0)}V${y(top)}${marks.map(([si, long]) => `M${left} ${y(si).toFixed(1)}h${-long}`).join('')}`}
      />
      {major.map((t) => (
        <text key={t.label} x={left - 14} y={y(t.si) + 4} text-anchor="end">
          {t.label}
        </text>
      ))}
    </g>
  );
}

/** Where on the tube a thumb is: a station near it, else an even figure. */
function placeOf(px: number, x: Scale, { stations, length }: Pick<Props, 'stations' | 'length'>): number {
  const perPx = length / (x(length) - x(0));
  const [close] = stations
    .map((at) => ({ at, away: Math.abs(x(at) - px) }))
    .filter(({ away }) => away <= near)
    .sort((a, b) => a.away - b.away);
  return close?.at ?? snap((px - x(0)) * perPx, alongStep(perPx, settings.value.units), 0, length);
}

/** One quantity along the tube on a graduated rule; a thumb on it picks a place. */
export function AlongPlot({ sections, stations, of, unit, here, length, onPick }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const down = useRef(false);
  const least = sections.map(({ section }) => of.least(section) ?? 0);
  const most = of.most ? sections.map(({ section }) => of.most?.(section) ?? 0) : least;
  const top = Math.max(...most) * 1.08;
  const foot = height - pad.bottom;
  const y = linear(0, top, foot, pad.top);
  const labels = ticksUp(of.quantity, top, y).map((t) => textWidth(t.label));
  const left = Math.max(30, Math.ceil(Math.max(0, ...labels)) + 16);
  const right = width.value - pad.right;
  const x = linear(0, length, left, right);
  const xs = sections.map(({ at }) => x(at));
  const lines = [least, most].map((values) => values.map(y));
  const [low = [], high = []] = lines;
  const value = of.least(here.section) ?? 0;
  const pick = (event: PointerEvent) => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    onPick(placeOf(event.clientX - box.left, x, { stations, length }));
  };
  const end = () => {
    down.current = false;
  };
  return (
    <div ref={ref} class="picture">
      <svg
        class="along-plot"
        width={width.value}
        height={height}
        role="img"
        aria-label={`${of.name}, along the tube`}
        onPointerDown={(event) => {
          down.current = true;
          (event.currentTarget as Element).setPointerCapture(event.pointerId);
          pick(event);
        }}
        onPointerMove={(event) => down.current && pick(event)}
        onPointerUp={end}
        onPointerCancel={end}
      >
        <rect class="along-touch" width={width.value} height={height} />
        <path class="picture-ground" d={areaPath(xs, low, foot)} />
        <Rule of={of} top={top} y={y} left={left} right={right} />
        {of.most && <path class="along-band" d={bandPath(xs, high, low)} />}
        {of.most && <path class="picture-layer" d={linePath(xs, high)} />}
        <path class="picture-line" d={linePath(xs, low)} />
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
        <path class="picture-tick" d={stations.map((at) => `M${x(at).toFixed(1)} ${foot}v-7`).join('')} />
        <line class="picture-cursor" x1={x(here.at)} x2={x(here.at)} y1={pad.top - 8} y2={foot} />
        <circle class="along-here" cx={x(here.at)} cy={y(value)} r="7" />
        <text x={0} y={12}>
          {unit}
        </text>
        <text
          class="picture-number picture-over"
          x={Math.min(Math.max(x(here.at), left + 30), right - 24)}
          y={12}
          text-anchor="middle"
        >
          {show(here.at, 'length', 0)}
        </text>
      </svg>
    </div>
  );
}
