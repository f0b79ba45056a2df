import { useRef } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import type { SectionAt } from '#app/planning/carry/sections-along.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { linear, type Scale, textWidth, ticksIn, ticksUp } from '#app/planning/wall/pictures/scale.ts';
import { areaPath, bandPath, linePath } from '#app/planning/wall/pictures/thin-line.ts';
import { alongStep, snap } from '#app/planning/wall/snapping.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { AlongQuantity } from './along-quantities.ts';
import '#app/planning/wall/pictures/pictures.css';
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

/** A thumb that goes down on the picture picks, and goes on picking until it lets go. */
function usePick(onPick: (px: number) => void) {
  const down = useRef(false);
  const pick = (event: PointerEvent) => {
    onPick(event.clientX - (event.currentTarget as Element).getBoundingClientRect().left);
  };
  const end = () => {
    down.current = false;
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      down.current = true;
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      pick(event);
    },
    onPointerMove: (event: PointerEvent) => down.current && pick(event),
    onPointerUp: end,
    onPointerCancel: end,
  };
}

/** Room for the figures up the side, px */
function leftOf(of: AlongQuantity, top: number): number {
  const labels = ticksUp(of.quantity, top, linear(0, top, height - pad.bottom, pad.top));
  return Math.max(30, Math.ceil(Math.max(0, ...labels.map((t) => textWidth(t.label)))) + 16);
}

function Curve({ sections, of, x, y }: Pick<Props, 'sections' | 'of'> & { x: Scale; y: Scale }) {
  const xs = sections.map(({ at }) => x(at));
  const low = sections.map(({ section }) => y(of.least(section) ?? 0));
  const { most } = of;
  const high = most && sections.map(({ section }) => y(most(section)));
  return (
    <>
      {high && <path class="along-band" d={bandPath(xs, high, low)} />}
      {high && <path class="picture-layer" d={linePath(xs, high)} />}
      <path class="picture-line" d={linePath(xs, low)} />
    </>
  );
}

/** One quantity along the tube on a graduated rule; a thumb on it picks a place. */
export function AlongPlot({ sections, stations, of, unit, here, length, onPick }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const most = of.most ?? of.least;
  const top = Math.max(...sections.map(({ section }) => most(section) ?? 0)) * 1.08;
  const [left, right, foot] = [leftOf(of, top), width.value - pad.right, height - pad.bottom];
  const x = linear(0, length, left, right);
  const y = linear(0, top, foot, pad.top);
  const xs = sections.map(({ at }) => x(at));
  const ground = areaPath(
    xs,
    sections.map(({ section }) => y(of.least(section) ?? 0)),
    foot,
  );
  const events = usePick((px) => onPick(placeOf(px, x, { stations, length })));
  const hereAt = x(here.at);
  return (
    <div ref={ref} class="picture">
      <svg
        class="along-plot"
        width={width.value}
        height={height}
        role="img"
        aria-label={`${of.name}, along the tube`}
        {...events}
      >
        <rect class="along-touch" width={width.value} height={height} />
        <path class="picture-ground" d={ground} />
        <Rule of={of} top={top} y={y} left={left} right={right} />
        <Curve sections={sections} of={of} x={x} y={y} />
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
        <path class="picture-tick" d={stations.map((at) => `M${x(at).toFixed(1)} ${foot}v-7`).join('')} />
        <line class="picture-cursor" x1={hereAt} x2={hereAt} y1={pad.top - 8} y2={foot} />
        <circle class="along-here" cx={hereAt} cy={y(of.least(here.section) ?? 0)} r="7" />
        <text x={0} y={12}>
          {unit}
        </text>
        <text
          class="picture-number picture-over"
          x={Math.min(Math.max(hereAt, left + 30), right - 24)}
          y={12}
          text-anchor="middle"
        >
          {show(here.at, 'length', 0)}
        </text>
      </svg>
    </div>
  );
}
