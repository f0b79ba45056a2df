import { useId } from 'preact/hooks';
import { HatchLines } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { fitLabels, type Placed } from '#app/planning/wall/pictures/labels.ts';
import { linear, type Scale } from '#app/planning/wall/pictures/scale.ts';
import type { LoadRecord, Support } from '#shared/record/load-plan.ts';
import { loadFigure, loadTitle, supportWords } from './load-words.ts';
import { LoadMark, middleOf, mostOf } from './sketch-loads.tsx';
import { SupportMark } from './sketch-supports.tsx';
import '#app/planning/wall/pictures/pictures.css';
import './loads.css';

interface Props {
  length: number;
  supports: readonly Support[];
  loads: readonly LoadRecord[];
  /** Drawn in blue: the one that is being changed. */
  chosen?: string | undefined;
}

const side = 38;
const half = 7;
/** px of a row of figures over the loads; of arrows with their room, or of what holds it alone */
const row = 17;
const arrows = 54;
const held = 34;

function says({ supports, loads }: Props): string {
  const held = supports.length > 0 ? supports.map(supportWords).join(', ') : 'Held nowhere yet';
  const pulled = loads.map((l) => `${loadTitle(l)}, ${loadFigure(l)}`).join('; ');
  return `The tube along its length. ${held}. ${pulled || 'Nothing pulls on it yet'}.`;
}

/** Whether arrows stand over the tube, and under it. */
function sidesOf(loads: readonly LoadRecord[]): { over: boolean; under: boolean } {
  const forces = loads.flatMap((l) => {
    if (l.kind === 'point') return [l.force];
    if (l.kind === 'spread') return [l.atFrom, l.atTo];
    return l.kind === 'table' ? l.stations.map(({ value }) => value) : [];
  });
  return { over: forces.some((f) => f > 0), under: forces.some((f) => f < 0) };
}

/** The figures over what they belong to, in as many rows as they need. */
function figuresOf(loads: readonly LoadRecord[], x: Scale, width: number): Placed[] {
  const labels = loads.map((load) => ({
    x: x(middleOf(load)),
    text: loadFigure(load),
    weight: load.kind === 'point' ? 2 : 1,
  }));
  return fitLabels(labels, { from: 0, to: width, rows: 3, size: 14 });
}

/** The tube lying along the screen, with what holds it and what pulls on it, as on the back of an envelope. */
export function Sketch(props: Props) {
  const { length, supports, loads, chosen } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const x = linear(0, length, side, width.value - side);
  const most = mostOf(loads);
  const figures = figuresOf(loads, x, width.value);
  const { over, under } = sidesOf(loads);
  const words = row * (1 + Math.max(-1, ...figures.map((f) => f.row)));
  const middle = words + (over ? arrows : held) + half;
  const foot = middle + half + (under ? arrows : held);
  const shared = { x, y: middle, half, length };
  return (
    <div ref={ref} class="picture">
      <svg width={width.value} height={foot + 26} role="img" aria-label={says(props)}>
        <HatchLines id={`${hatch}-wall`} class="sketch-hatch" apart={5} />
        <rect class="sketch-tube" x={x(0)} y={middle - half} width={x(length) - x(0)} height={2 * half} />
        <path class="sketch-axis" d={`M${x(0) - 8} ${middle}H${x(length) + 8}`} />
        {supports.map((support) => (
          <SupportMark
            key={support.id}
            {...shared}
            support={support}
            hatch={hatch}
            chosen={support.id === chosen}
          />
        ))}
        {loads.map((load) => (
          <LoadMark key={load.id} {...shared} load={load} most={most} chosen={load.id === chosen} />
        ))}
        {figures.map((f, i) => (
          <text
            key={`${i} ${f.text}`}
            class="sketch-figure"
            x={f.left + f.width / 2}
            y={words - 4 - row * f.row}
            text-anchor="middle"
          >
            {f.text}
          </text>
        ))}
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
    </div>
  );
}
