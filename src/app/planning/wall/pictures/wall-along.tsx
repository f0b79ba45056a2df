import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import type { Roll } from '#calc';
import { AlongAxis } from './along-axis.tsx';
import { coarse } from './coarse.ts';
import { type Layers, layersOf } from './layers.ts';
import { linear, type Scale, ticksUp } from './scale.ts';
import { areaPath, linePath } from './thin-line.ts';
import './pictures.css';

interface Props {
  roll: Roll;
  height?: number;
  /** Marks a place along the tube, m */
  at?: number;
  /** px the picture is drawn wide, where it is not as wide as its place. */
  wide?: number;
  children?: (x: Scale) => ComponentChildren;
}

const pad = { left: 34, right: 14, top: 12, bottom: 24 };
/** A band thinner than this has no room for its number, px */
const numbered = 14;

function drawn({ at, heights, most }: Layers, x: Scale, y: Scale) {
  const xs = at.map(x);
  const tops = heights.map((h) => h.map(y));
  const whole = tops.at(-1) ?? xs.map(() => y(0));
  return {
    ground: areaPath(xs, whole, y(0)),
    outline: linePath(xs, whole),
    between: tops.slice(0, -1).map((t) => linePath(xs, t)),
    numbers: heights.flatMap((h, piece) => numberPlace(h, heights[piece - 1], { xs, y, piece })),
    most,
  };
}

/** A piece's number stands where its band is thickest. */
function numberPlace(
  top: Float64Array,
  under: Float64Array | undefined,
  { xs, y, piece }: { xs: Float64Array; y: Scale; piece: number },
) {
  let [best, thick] = [-1, 0];
  top.forEach((t, i) => {
    const room = Math.abs(y(t) - y(under?.[i] ?? 0));
    if (room > thick + 0.5) [best, thick] = [i, room];
  });
  if (best < 0 || thick < numbered) return [];
  // Halfway along the stretch that is as thick as this.
  let end = best;
  while (end + 1 < top.length && Math.abs(y(top[end + 1] ?? 0) - y(under?.[end + 1] ?? 0)) > thick - 0.5) {
    end += 1;
  }
  const middle = Math.round((best + end) / 2);
  return [
    {
      text: String(piece + 1),
      x: xs[middle] ?? 0,
      y: (y(top[middle] ?? 0) + y(under?.[middle] ?? 0)) / 2 + 5,
    },
  ];
}

/** The wall as it grows piece on piece, along the tube. */
export function WallAlong({ roll: whole, height = 150, at, wide, children }: Props) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const width = wide ?? room.value;
  const roll = coarse(whole, width);
  const layers = layersOf(roll);
  const x = linear(0, roll.length, pad.left, width - pad.right);
  const foot = height - pad.bottom;
  const y = linear(0, layers.most, foot, pad.top);
  const paths = useMemo(() => drawn(layers, x, y), [roll, width, height]);
  const ticks = ticksUp(layers.quantity, layers.most, y);
  return (
    <div ref={ref} class="picture">
      <svg width={width} height={height} role="img" aria-label={layers.says}>
        <path
          class="picture-grid"
          d={ticks.map((t) => `M${pad.left} ${y(t.si).toFixed(1)}H${width - pad.right}`).join('')}
        />
        {ticks.map((t) => (
          <text key={t.label} x={pad.left - 8} y={y(t.si) + 4} text-anchor="end">
            {t.label}
          </text>
        ))}
        <path class="picture-ground" d={paths.ground} />
        <path class="picture-layer" d={paths.between.join('')} />
        <path class="picture-line" d={paths.outline} />
        {paths.between.length > 0 &&
          paths.numbers.map((n) => (
            <text key={n.text} class="picture-number" x={n.x} y={n.y} text-anchor="middle">
              {n.text}
            </text>
          ))}
        {at !== undefined && <line class="picture-cursor" x1={x(at)} x2={x(at)} y1={pad.top - 6} y2={foot} />}
        <AlongAxis x={x} length={roll.length} y={foot} width={width} />
        {children?.(x)}
      </svg>
    </div>
  );
}
