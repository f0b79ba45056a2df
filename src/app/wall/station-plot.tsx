import { useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Roll } from '#calc';
import type { Piece } from '#shared/record/piece.ts';
import { AlongAxis } from './pictures/along-axis.tsx';
import { linear, type Scale, ticksUp } from './pictures/scale.ts';
import { areaPath, linePath } from './pictures/thin-line.ts';
import { type GivenBy, roomOf, stationsOnTube } from './shape-edits.ts';
import { alongStep, snap, upStep } from './snapping.ts';
import { type Spot, useStationDrag } from './station-drag.ts';
import { quantityOf, sayValue } from './station-words.ts';
import './station-plot.css';

interface Props {
  roll: Roll;
  index: number;
  /** As it is being drawn; the curve is of the last that could be rolled. */
  piece: Piece;
  length: number;
  chosen: number;
  onChoose: (station: number) => void;
  onMove: (station: number, to: { at?: number; value?: number }, gesture: string) => void;
}

const pad = { left: 40, right: 18, top: 26, bottom: 26 };
const height = 218;
/** Where the number stands above the thumb, px */
const above = 118;
const bubble = 172;

function valuesOf(roll: Roll, index: number, by: GivenBy): Float64Array {
  const piece = roll.pieces[index];
  if (!piece) return new Float64Array(roll.at.length);
  if (by === 'width') return piece.width;
  const thick = piece.spec.thickness;
  return by === 'plies' ? piece.plies : piece.plies.map((n) => n * thick);
}

/** Room to drag upward: a third more than there is, and two notches at least. */
function topOf(most: number, by: GivenBy): number {
  return Math.max(most * 1.3, most + 2 * upStep(by, settings.value.units));
}

function Curve({ roll, index, by, x, y }: { roll: Roll; index: number; by: GivenBy; x: Scale; y: Scale }) {
  const paths = useMemo(() => {
    const ys = valuesOf(roll, index, by).map(y);
    const xs = roll.at.map(x);
    return { line: linePath(xs, ys), area: areaPath(xs, ys, y(0)) };
  }, [roll, index, by, x(1), y(1)]);
  return (
    <>
      <path class="picture-ground" d={paths.area} />
      <path class="picture-line" d={paths.line} />
    </>
  );
}

function Grid({ by, top, y, right }: { by: GivenBy; top: number; y: Scale; right: number }) {
  const ticks = ticksUp(quantityOf[by], top, y);
  return (
    <>
      <path
        class="picture-grid"
        d={ticks.map((t) => `M${pad.left} ${y(t.si).toFixed(1)}H${right}`).join('')}
      />
      {ticks.map((t) => (
        <text key={t.label} x={pad.left - 8} y={y(t.si) + 4} text-anchor="end">
          {t.label}
        </text>
      ))}
    </>
  );
}

function Handles({ spots, chosen }: { spots: readonly Spot[]; chosen: number }) {
  return (
    <>
      {spots.map((s, i) => (
        <g key={i}>
          <circle class="station-reach" cx={s.x} cy={s.y} r="28" />
          <circle
            class={i === chosen ? 'station-handle station-chosen' : 'station-handle'}
            cx={s.x}
            cy={s.y}
            r="9"
          />
        </g>
      ))}
    </>
  );
}

/** One piece along the tube, with its stations to be moved by a thumb. */
export function StationPlot({ roll, index, piece, length, chosen, onChoose, onMove }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { by } = piece.shape;
  const stations = stationsOnTube(piece);
  const most = stations.reduce((m, s) => Math.max(m, s.value), 0);
  const held = useSignal<number | undefined>(undefined);
  const frozen = useRef(topOf(most, by));
  // Under a thumb the scale stands still, or the line would run away from it.
  if (held.value === undefined) frozen.current = topOf(most, by);
  const right = width.value - pad.right;
  const foot = height - pad.bottom;
  const x = linear(0, length, pad.left, right);
  const y = linear(0, frozen.current, foot, pad.top);
  const handles: Spot[] = stations.map((s) => ({ x: x(s.at), y: y(s.value) }));
  const move = (station: number, to: { x: number | undefined; y: number | undefined }, gesture: string) => {
    const room = roomOf(piece, station, length);
    const perPx = length / (right - pad.left);
    const step = upStep(by, settings.value.units);
    const along = alongStep(perPx, settings.value.units);
    const up = (px: number) => ((foot - px) / (foot - pad.top)) * frozen.current;
    onMove(
      station,
      {
        ...(to.x !== undefined && { at: snap((to.x - pad.left) * perPx, along, room.min, room.max) }),
        ...(to.y !== undefined && { value: snap(up(to.y), step, step, frozen.current) }),
      },
      gesture,
    );
  };
  const events = useStationDrag({ held, handles, chosen, onChoose, onMove: move });
  const under = held.value === undefined ? undefined : stations[held.value];
  return (
    <div ref={ref} class="picture station-plot">
      <svg
        width={width.value}
        height={height}
        {...events}
        role="img"
        aria-label={`Stations of ${piece.name}`}
      >
        <Grid by={by} top={frozen.current} y={y} right={right} />
        <Curve roll={roll} index={index} by={by} x={x} y={y} />
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
        <Handles spots={handles} chosen={chosen} />
      </svg>
      {under && (
        <p
          class="station-bubble"
          style={{
            left: `${Math.min(Math.max(0, x(under.at) - bubble / 2), width.value - bubble)}px`,
            top: `${y(under.value) - above}px`,
            width: `${bubble}px`,
          }}
        >
          <strong>{sayValue(by, under.value)}</strong>
          <span>{show(under.at, 'length', 0)}</span>
        </p>
      )}
    </div>
  );
}
