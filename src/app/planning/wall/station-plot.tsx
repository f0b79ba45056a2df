import type { Signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Roll } from '#calc';
import type { Piece } from '#shared/record/piece.ts';
import { AlongAxis } from './pictures/along-axis.tsx';
import { coarse } from './pictures/coarse.ts';
import { PieceCurve } from './pictures/piece-curve.tsx';
import { linear, type Scale, ticksUp } from './pictures/scale.ts';
import { type GivenBy, roomOf, stationsOnTube } from './shape-edits.ts';
import { alongStep, snap, upStep } from './snapping.ts';
import { type Spot, useStationDrag } from './station-drag.ts';
import { stationFigures } from './station-figures.ts';
import { quantityOf, sayPlies, sayValue } from './station-words.ts';
import './station-plot.css';

interface Props {
  roll: Roll;
  index: number;
  /** The station under a thumb. */
  held: Signal<number | undefined>;
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
const above = 144;
const bubble = 172;

/** What follows from what is dragged: the cloth, or the plies of a given cloth. */
function besides(roll: Roll, index: number, piece: Piece, station: number): string {
  const figures = stationFigures(roll, index, piece, station);
  if (!figures) return '';
  return piece.shape.by === 'width' ? sayPlies(figures.plies) : `${show(figures.width, 'length', 0)} wide`;
}

/** Room to drag upward: a third more than there is, and two notches at least. */
function topOf(most: number, by: GivenBy): number {
  return Math.max(most * 1.3, most + 2 * upStep(by, settings.value.units));
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
        <text key={t.label} x={pad.left - 12} y={y(t.si) + 4} text-anchor="end">
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
export function StationPlot({ roll, index, held, piece, length, chosen, onChoose, onMove }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { by } = piece.shape;
  const stations = stationsOnTube(piece);
  const most = stations.reduce((m, s) => Math.max(m, s.value), 0);
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
    const now = stations[station];
    const at = to.x === undefined ? now?.at : snap((to.x - pad.left) * perPx, along, room.min, room.max);
    const value = to.y === undefined ? now?.value : snap(up(to.y), step, step, frozen.current);
    // Between two notches nothing changes, and nothing is drawn.
    if (at === undefined || value === undefined || (at === now?.at && value === now.value)) return;
    onMove(station, { at, value }, gesture);
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
        <PieceCurve roll={coarse(roll, width.value)} index={index} by={by} x={x} y={y} />
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
          <span>{besides(roll, index, piece, held.value ?? 0)}</span>
        </p>
      )}
    </div>
  );
}
