import { settings } from '#app/state/settings.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { fitLabels } from './labels.ts';
import { type Scale, ticksToEnd } from './scale.ts';

interface Props {
  x: Scale;
  /** Of the tube, m */
  length: number;
  /** Foot line, px */
  y: number;
  /** Of the whole picture, px */
  width: number;
}

/** Meters along the tube under a picture, end 0 at the left; the last figure carries the unit. */
export function AlongAxis({ x, length, y, width }: Props) {
  const ticks = ticksToEnd('length', length, Math.max(2, Math.floor(width / 80)));
  const unit = unitFor('length', settings.value.units);
  const labels = ticks.map((t, i) => ({
    x: x(t.si),
    text: i === ticks.length - 1 ? `${t.label} ${unit}` : t.label,
    weight: i === ticks.length - 1 ? 2 : i === 0 ? 1 : 0,
  }));
  const marks = ticks.map((t) => `M${x(t.si).toFixed(1)} ${y}v6`).join('');
  return (
    <g class="picture-axis">
      <path class="picture-tick" d={`M${x(0)} ${y}H${x(length)}${marks}`} />
      {fitLabels(labels, { from: 0, to: width, rows: 1 }).map((l) => (
        <text key={l.text} x={l.left + l.width / 2} y={y + 19} text-anchor="middle">
          {l.text}
        </text>
      ))}
    </g>
  );
}
