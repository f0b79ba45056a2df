import { useId } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/wall/pictures/along-axis.tsx';
import { fitLabels } from '#app/wall/pictures/labels.ts';
import { linear } from '#app/wall/pictures/scale.ts';
import type { LoadRecord, Support } from '#shared/record/load-plan.ts';
import { loadFigure, loadTitle, supportWords } from './load-words.ts';
import { LoadMark, middleOf, mostOf } from './sketch-loads.tsx';
import { SupportMark } from './sketch-supports.tsx';
import '#app/wall/pictures/pictures.css';
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
/** px of the two rows of figures over the loads, the arrows under them, and the tube's middle */
const rows = 34;
const middle = rows + 56 + half;
const foot = middle + half + 56;
const height = foot + 26;

function says({ supports, loads }: Props): string {
  const held = supports.length > 0 ? supports.map(supportWords).join(', ') : 'Held nowhere yet';
  const pulled = loads.map((l) => `${loadTitle(l)}, ${loadFigure(l)}`).join('; ');
  return `The tube along its length. ${held}. ${pulled || 'Nothing pulls on it yet'}.`;
}

/** The figures over what they belong to; with no room over the tube for the way down to it. */
function Figures({ loads, x, width }: Pick<Props, 'loads'> & { x: (m: number) => number; width: number }) {
  const labels = loads.map((load) => ({
    x: x(middleOf(load)),
    text: loadFigure(load),
    weight: load.kind === 'point' ? 2 : 1,
  }));
  return (
    <>
      {fitLabels(labels, { from: 0, to: width, rows: 2, size: 14 }).map((l, i) => (
        <text
          key={`${i} ${l.text}`}
          class="sketch-figure"
          x={l.left + l.width / 2}
          y={rows - 6 - 16 * l.row}
          text-anchor="middle"
        >
          {l.text}
        </text>
      ))}
    </>
  );
}

/** The tube lying along the screen, with what holds it and what pulls on it, as on the back of an envelope. */
export function Sketch(props: Props) {
  const { length, supports, loads, chosen } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const x = linear(0, length, side, width.value - side);
  const most = mostOf(loads);
  const shared = { x, y: middle, half, length };
  return (
    <div ref={ref} class="picture sketch">
      <svg width={width.value} height={height} role="img" aria-label={says(props)}>
        <defs>
          <pattern
            id={`${hatch}-wall`}
            width="5"
            height="5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line class="sketch-hatch" x1="0" y1="0" x2="0" y2="5" />
          </pattern>
        </defs>
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
        <Figures loads={loads} x={x} width={width.value} />
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
    </div>
  );
}
