import type { Signal } from '@preact/signals';
import { ticks } from 'd3-array';
import type { Made } from '#app/made/learned/made-facts.ts';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { inUnits } from '#shared/units/format.ts';
import type { NumberFact } from './facts.ts';
import { kindOf, Shape, shapesFor } from './shapes.tsx';
import type { Kind } from './tellings.ts';

const height = 270;
const pad = { left: 58, right: 18, top: 14, bottom: 40 };

export interface Place {
  made: Made;
  x: number;
  y: number;
}

/** Builds that have both figures, SI. */
export function placesOf(made: readonly Made[], x: NumberFact, y: NumberFact): Place[] {
  return made.flatMap((one) => {
    const [across, up] = [x.value(one), y.value(one)];
    return across === undefined || up === undefined ? [] : [{ made: one, x: across, y: up }];
  });
}

interface Axis {
  /** px of a figure, SI */
  at: (si: number) => number;
  marks: { px: number; text: string }[];
  unit: string;
}

function axisOf(fact: NumberFact, values: readonly number[], from: number, to: number, most: number): Axis {
  const system = settings.value.units;
  const { unit } = fact;
  const shown = (si: number) => (unit ? inUnits(si, { quantity: unit.quantity, system }).value : si);
  const figures = values.map(shown);
  const [least, greatest] = unit ? [Math.min(...figures), Math.max(...figures)] : [0, 3];
  // Figures that are all the same still need a line to stand on.
  const room = greatest > least ? 0.08 * (greatest - least) : Math.max(0.5, Math.abs(greatest) * 0.1);
  const [low, high] = [least - room, greatest + room];
  const px = (figure: number) => from + ((figure - low) / (high - low)) * (to - from);
  const marks = unit ? ticks(low, high, most) : [0, 1, 2, 3];
  return {
    at: (si) => px(shown(si)),
    marks: marks.map((m) => ({ px: px(m), text: unit ? String(m) : fact.shown(m) })),
    unit: unit ? inUnits(values[0] ?? 0, { quantity: unit.quantity, system }).unit : '',
  };
}

interface Props {
  made: readonly Made[];
  x: NumberFact;
  y: NumberFact;
  by: Kind;
  /** The build whose point was tapped. */
  picked: Signal<string | undefined>;
}

/** Every build a point; a tap anywhere picks the nearest, since a thumb is wider than a point. */
export function Scatter({ made, x, y, by, picked }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const places = placesOf(made, x, y);
  const shapes = shapesFor(made, by);
  const right = width.value - pad.right;
  const foot = height - pad.bottom;
  const xs = places.map((p) => p.x);
  const ys = places.map((p) => p.y);
  const across = axisOf(x, xs, pad.left, right, 4);
  const up = axisOf(y, ys, foot, pad.top, 5);
  const pick = (event: MouseEvent) => {
    const box = ref.current?.getBoundingClientRect();
    if (!box) return;
    const [px, py] = [event.clientX - box.left, event.clientY - box.top];
    const away = (p: Place) => Math.hypot(across.at(p.x) - px, up.at(p.y) - py);
    const nearest = places.reduce<Place | undefined>((n, p) => (n && away(n) <= away(p) ? n : p), undefined);
    picked.value = nearest?.made.build.subject;
  };
  const title = (axis: Axis, fact: NumberFact) => `${fact.label}${axis.unit ? `, ${axis.unit}` : ''}`;
  return (
    <div ref={ref}>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the two keys below step through the points */}
      <svg
        class="scatter"
        width="100%"
        height={height}
        role="img"
        aria-label={`${y.label} over ${x.label}, ${places.length} builds`}
        onClick={pick}
      >
        {up.marks.map((m) => (
          <g key={m.text}>
            <line class="scatter-grid" x1={pad.left} x2={right} y1={m.px} y2={m.px} />
            <text x={pad.left - 6} y={m.px + 4} text-anchor="end">
              {m.text}
            </text>
          </g>
        ))}
        {across.marks.map((m) => (
          <g key={m.text}>
            <line class="scatter-grid" x1={m.px} x2={m.px} y1={pad.top} y2={foot} />
            <text x={m.px} y={foot + 16} text-anchor="middle">
              {m.text}
            </text>
          </g>
        ))}
        <text class="scatter-title" x={right} y={height - 6} text-anchor="end">
          {title(across, x)}
        </text>
        {places.map((p) => {
          const shape = shapes.get(kindOf(p.made, by));
          const { subject } = p.made.build;
          return (
            <g key={subject} transform={`translate(${across.at(p.x)} ${up.at(p.y)})`}>
              {subject === picked.value && <circle class="scatter-picked" r={14} />}
              {shape && <Shape shape={shape} />}
            </g>
          );
        })}
      </svg>
    </div>
  );
}
