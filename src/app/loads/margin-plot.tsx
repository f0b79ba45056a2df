import { ticks } from 'd3-array';
import { useId } from 'preact/hooks';
import { Hatch } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/wall/pictures/along-axis.tsx';
import { linear } from '#app/wall/pictures/scale.ts';
import { areaPath, linePath } from '#app/wall/pictures/thin-line.ts';
import { place } from './load-words.ts';
import { usePlaceTouch } from './pick-place.tsx';
import { failingOf, leastOf, marginWords } from './ruling.ts';
import type { PlottedStation } from './station-margins.ts';
import '#app/along/along.css';
import '#app/wall/pictures/pictures.css';
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

/** Below 0, hatched and in words. */
function Fails({
  stations,
  x,
  y,
  hatch,
}: Pick<Props, 'stations'> & { x: (m: number) => number; y: (v: number) => number; hatch: string }) {
  const found = failingOf(stations);
  if (found.length === 0) return null;
  const widest = found.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
  const middle = (x(widest.from) + x(widest.to)) / 2;
  return (
    <>
      {found.map(({ from, to }) => {
        const box = { x: x(from) - 3, width: x(to) - x(from) + 6, y: y(0), height: y(-1) - y(0) };
        return (
          <g key={from}>
            <rect class="zone-stop" {...box} />
            <rect fill={`url(#${hatch}-stop)`} {...box} />
          </g>
        );
      })}
      <text
        class="margin-fails picture-over"
        x={Math.max(pad.left + 56, middle)}
        y={y(-1) - 8}
        text-anchor="middle"
      >
        does not hold
      </text>
    </>
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
        <Fails stations={stations} x={x} y={y} hatch={hatch} />
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
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
    </div>
  );
}
