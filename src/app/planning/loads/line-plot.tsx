import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { linear, textWidth, ticksIn } from '#app/planning/wall/pictures/scale.ts';
import { areaPath, linePath } from '#app/planning/wall/pictures/thin-line.ts';
import { show } from '#app/state/show.ts';
import type { BeamSolution } from '#calc';
import { type LineKind, lineKinds, seriesOf } from './line-series.ts';
import { place } from './load-words.ts';
import { usePlaceTouch } from './pick-place.tsx';
import '#app/planning/along/along.css';
import '#app/planning/wall/pictures/pictures.css';
import './loads.css';

interface Props {
  solution: BeamSolution;
  kind: LineKind;
  length: number;
  /** The picked place, m */
  at: number;
  most: { at: number; value: number };
  onPick: (at: number) => void;
}

const height = 204;
const pad = { right: 16, top: 24, bottom: 26 };

/** From the least to the most there is, with 0 in it, and room for a line where all is nothing. */
function boundsOf(series: Float64Array): [least: number, most: number] {
  const [least, most] = [Math.min(0, ...series), Math.max(0, ...series)];
  return most > least ? [least, most] : [-1, 1];
}

/** One diagram along the tube: its line from 0, figures up the side, the greatest marked. */
export function LinePlot({ solution, kind, length, at, most, onPick }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { quantity, digits, label } = lineKinds[kind];
  const series = seriesOf(solution, kind);
  const [low, high] = boundsOf(series);
  const ticks = most.value === 0 ? [] : ticksIn(quantity, low, high, 5);
  const left = 12 + Math.max(22, ...ticks.map((t) => textWidth(t.label)));
  const right = width.value - pad.right;
  const foot = height - pad.bottom;
  const x = linear(0, length, left, right);
  // The tube goes down in the sketch the way the main load goes, and so it does here.
  const y = kind === 'aside' ? linear(low, high, pad.top, foot) : linear(low, high, foot, pad.top);
  const xs = Float64Array.from(solution.at, x);
  const ys = Float64Array.from(series, y);
  const touch = usePlaceTouch({ length, left, right, onPick });
  const values = [...solution.at].flatMap((place0, i) => (Math.abs(place0 - at) < 1e-9 ? [ys[i] ?? 0] : []));
  return (
    <div ref={ref} class="picture">
      <svg
        class="along-plot"
        width={width.value}
        height={height}
        role="img"
        aria-label={`${label} along the tube, greatest ${show(most.value, quantity, digits)} at ${place(most.at)}`}
        {...touch}
      >
        {ticks.map((t) => (
          <g key={t.label}>
            <path class="picture-grid" d={`M${left} ${y(t.si).toFixed(1)}H${right}`} />
            <text x={left - 7} y={y(t.si) + 4} text-anchor="end">
              {t.label}
            </text>
          </g>
        ))}
        <path class="picture-ground" d={areaPath(xs, ys, y(0))} />
        <path class="margin-zero" d={`M${left} ${y(0)}H${right}`} />
        <path class="picture-line" d={linePath(xs, ys)} />
        <path class="picture-cursor" d={`M${x(at)} ${pad.top - 8}V${foot}`} />
        <text
          class="picture-number picture-over"
          x={Math.min(Math.max(x(at), left + 30), right - 24)}
          y={12}
          text-anchor="middle"
        >
          {place(at)}
        </text>
        {values.map((v, i) => (
          <circle key={i} class="along-here" cx={x(at)} cy={v} r="7" />
        ))}
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
    </div>
  );
}
