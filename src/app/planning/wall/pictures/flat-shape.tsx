import { useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { show } from '#app/state/show.ts';
import { type FlatPiece, outlineBounds } from '#calc';
import { fitLabels } from './labels.ts';
import { linear, type Scale, textWidth } from './scale.ts';
import { outlinePath } from './thin-line.ts';
import { WarpArrow } from './warp-arrow.tsx';
import './pictures.css';

interface Props {
  flat: FlatPiece;
  /** Warp to datum edge, rad; undefined for core and film. */
  angle: number | undefined;
  /** Most px the cloth itself may be high. */
  tallest?: number;
  wide?: number;
}

const pad = { left: 10, right: 14, top: 26, row: 17 };
/** Lower than this nothing can be read in it, px */
const lowest = 56;
const factors = [1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 50, 100];

/** How many times wider than long it is drawn, so that a long narrow piece can be read. */
export function stretchOf(perMeter: number, across: number, tallest: number): number {
  const fits = factors.filter((f) => across * perMeter * f <= tallest);
  return factors.find((f) => across * perMeter * f >= lowest && fits.includes(f)) ?? fits.at(-1) ?? 1;
}

interface Lay {
  x: Scale;
  y: Scale;
  width: number;
  low: number;
}

/** The last figure carries the unit for all. */
function unitOnce<T extends { text: string }>(labels: readonly T[]): T[] {
  return labels.map((l, i) => (i === labels.length - 1 ? l : { ...l, text: l.text.replace(/\s\D+$/, '') }));
}

/** Widths under the free edge, from the datum edge square down; equal neighbors say it once. */
function widths(flat: FlatPiece, { x, width }: Lay) {
  const most = Math.max(...flat.marks.map((m) => m.edge.y));
  const last = flat.marks.length - 1;
  const labels = flat.marks.map((m, i) => ({
    x: x(m.edge.x),
    text: show(m.edge.y, 'length', 0),
    weight: m.edge.y === most ? 3 : i === 0 || i === last ? 2 : 1,
  }));
  const once = labels.filter((l, i) => i === 0 || l.text !== labels[i - 1]?.text);
  return fitLabels(unitOnce(once), { from: 0, to: width, rows: 2, size: 13 });
}

function stations(flat: FlatPiece, { x, width }: Lay) {
  const labels = flat.marks.map((m, i) => ({
    x: x(m.x),
    text: show(m.x, 'length', 0),
    weight: i === 0 || i === flat.marks.length - 1 ? 2 : 1,
  }));
  return fitLabels(unitOnce(labels), { from: 0, to: width, rows: 1 });
}

function layOut(flat: FlatPiece, width: number, tallest: number) {
  const bounds = outlineBounds({ outline: flat.outline });
  const x = linear(bounds.minX, bounds.maxX, pad.left, width - pad.right);
  const perMeter = (width - pad.left - pad.right) / (bounds.maxX - bounds.minX);
  const across = bounds.maxY - bounds.minY;
  const stretch = stretchOf(perMeter, across, tallest);
  const low = pad.top + across * perMeter * stretch;
  const y = linear(bounds.minY, bounds.maxY, pad.top, low);
  return { x, y, low, width, stretch, across };
}

function Inside({ lay, flat, angle }: { lay: Lay; flat: FlatPiece; angle: number | undefined }) {
  const words = 'datum edge';
  const start = lay.x(0) + 8 + textWidth('end 0') + 16;
  const roomy = lay.x(flat.length) - start > textWidth(words) + 66;
  const head = lay.y(0) + 18;
  return (
    <>
      <text class="picture-over" x={lay.x(0) + 8} y={head}>
        end 0
      </text>
      {roomy && (
        <text class="picture-blue picture-over" x={start} y={head}>
          {words}
        </text>
      )}
      {angle !== undefined && (
        <WarpArrow angle={angle} x={roomy ? start + textWidth(words) + 34 : start + 16} y={head - 4} />
      )}
    </>
  );
}

/** The piece as it is cut: datum edge above, end 0 at the left, every width to mark from the datum edge. */
export function FlatShape({ flat, angle, tallest = 110, wide }: Props) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const width = wide ?? room.value;
  const lay = useMemo(() => layOut(flat, width, tallest), [flat, width, tallest]);
  const path = useMemo(() => outlinePath(flat.outline, lay.x, lay.y), [flat, lay]);
  const below = widths(flat, lay);
  const drops = flat.marks.map((m) => {
    const px = lay.x(m.edge.x).toFixed(1);
    return `M${px} ${lay.y(0).toFixed(1)}V${lay.y(m.edge.y).toFixed(1)}`;
  });
  const leads = below.map((l) => `M${l.x.toFixed(1)} ${lay.low}V${lay.low + 4 + l.row * pad.row}`);
  const rows = Math.max(0, ...below.map((l) => l.row)) + 1;
  const size = `${show(flat.length, 'length', 0)} long, ${show(lay.across, 'length', 0)} wide`;
  return (
    <div ref={ref} class="picture">
      <svg width={width} height={lay.low + 8 + rows * pad.row} role="img" aria-label={`Cut piece, ${size}`}>
        <path class="picture-cloth" d={path} />
        <path class="picture-dimension" d={drops.join('') + leads.join('')} />
        <path class="picture-datum" d={`M${lay.x(0)} ${lay.y(0)}H${lay.x(flat.length)}`} />
        <Inside lay={lay} flat={flat} angle={angle} />
        {stations(flat, lay).map((l) => (
          <text key={l.left} class="picture-second" x={l.left + l.width / 2} y={16} text-anchor="middle">
            {l.text}
          </text>
        ))}
        {below.map((l) => (
          <text
            key={l.left + l.row}
            class="picture-number"
            x={l.left + l.width / 2}
            y={lay.low + 18 + l.row * pad.row}
            text-anchor="middle"
          >
            {l.text}
          </text>
        ))}
      </svg>
      {lay.stretch > 1 && <p class="picture-words">Drawn {lay.stretch} times wider than it is long.</p>}
    </div>
  );
}
