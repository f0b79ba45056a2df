import { ticks } from 'd3-array';
import { useId } from 'preact/hooks';
import { Hatch } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { linear } from '#app/planning/wall/pictures/scale.ts';
import { areaPath, linePath } from '#app/planning/wall/pictures/thin-line.ts';
import { place } from './load-words.ts';
import { usePlaceTouch } from './pick-place.tsx';
import { failingOf, leastOf, marginWords } from './ruling.ts';
import type { PlottedStation } from './station-margins.ts';
import '#app/planning/along/along.css';
import '#app/planning/wall/pictures/pictures.css';
import './loads.css';

interface Props {
  stations: readonly PlottedStation[];
  length: number;
  /** The picked station, m */
  at: number;
  onPick: (at: number) => void;
}

const pad = { left: 34, right: 16, top: 24, bottom: 24 };
const height = 204;
/** A margin above 3 is not told from one of 3 in the picture: what is near 0 has the room. */
const leastTop = 1;
const mostTop = 3;

function says({ stations, length }: Props): string {
  const least = leastOf({ stations, cases: [] });
  const fails = failingOf(stations).length > 0;
  return `Margin along the tube of ${Math.round(length * 1000)} mm, least ${marginWords(least?.margin ?? 0)}${fails ? ', below 0 in places: does not hold' : ''}`;
}

type Scale = (value: number) => number;
type Spans = ReturnType<typeof failingOf>;

/** Below 0, hatched. */
function Fails({ spans, x, y, hatch }: { spans: Spans; x: Scale; y: Scale; hatch: string }) {
  return spans.map(({ from, to }) => {
    const box = { x: x(from) - 3, width: x(to) - x(from) + 6, y: y(0), height: y(-1) - y(0) };
    return (
      <g key={from}>
        <rect class="zone-stop" {...box} />
        <rect fill={`url(#${hatch}-stop)`} {...box} />
      </g>
    );
  });
}

/** In words over the widest of them, and over the reading line, which would else cross them out. */
function FailWords({ spans, x, y }: { spans: Spans; x: Scale; y: Scale }) {
  if (spans.length === 0) return null;
  const widest = spans.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
  const middle = (x(widest.from) + x(widest.to)) / 2;
  return (
    <text
      class="margin-fails picture-over"
      x={Math.max(pad.left + 56, middle)}
      y={y(-1) - 8}
      text-anchor="middle"
    >
      does not hold
    </text>
  );
}

/** The least margin along the tube: above the line it holds. */
export function MarginPlot(props: Props) {
  const { stations, length, at, onPick } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const right = width.value - pad.right;
  const foot = height - pad.bottom;
  const most = Math.max(...stations.map((s) => s.least.margin));
  const top = Math.min(mostTop, Math.max(leastTop, most));
  const x = linear(0, length, pad.left, right);
  const y = linear(-1, top, foot, pad.top);
  const clipped = (margin: number) => y(Math.max(-1, Math.min(top, margin)));
  const xs = stations.map((s) => x(s.at));
  const ys = stations.map((s) => clipped(s.least.margin));
  const chosen = stations.find((s) => s.at === at);
  const spans = failingOf(stations);
  const touch = usePlaceTouch({ length, left: pad.left, right, onPick });
  return (
    <div ref={ref} class="picture">
      <svg
        class="along-plot"
        width={width.value}
        height={height}
        role="img"
        aria-label={says(props)}
        {...touch}
      >
        <Hatch id={hatch} />
        <path class="picture-ground" d={areaPath(xs, ys, y(0))} />
        <Fails spans={spans} x={x} y={y} hatch={hatch} />
        {ticks(-1, top, 4).map((t) => (
          <g key={t}>
            <path class="picture-grid" d={`M${pad.left} ${y(t)}H${right}`} />
            <text x={pad.left - 6} y={y(t) + 4} text-anchor="end">
              {t === 0 ? '0' : t < 0 ? `−${-t}` : `+${t}`}
            </text>
          </g>
        ))}
        <path class="margin-zero" d={`M${pad.left} ${y(0)}H${right}`} />
        <path class="picture-line" d={linePath(xs, ys)} />
        {chosen && (
          <>
            <path class="picture-cursor" d={`M${x(at)} ${pad.top}V${foot}`} />
            <text
              class="picture-number picture-over"
              x={Math.min(Math.max(x(at), pad.left + 30), right - 24)}
              y={12}
              text-anchor="middle"
            >
              {place(at)}
            </text>
            <circle class="along-here" cx={x(at)} cy={clipped(chosen.least.margin)} r="7" />
          </>
        )}
        <FailWords spans={spans} x={x} y={y} />
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
    </div>
  );
}
