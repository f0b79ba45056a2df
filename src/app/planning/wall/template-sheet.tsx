import type { Point, Tile, Tiling } from '#calc';
import type { MarkText, TemplateMarks } from './template-marks.ts';
import { svgPath } from './template-svg.ts';
import { crossings, sheetMargin, sheetName } from './template-tiles.ts';

const mm = (m: number) => Math.round(m * 1e7) / 1e4;
/** Every sheet is a hair shorter than its paper, so that no empty page follows it, mm */
const spare = 0.3;

/** Tenths of the check length, mm */
const tenths = Array.from({ length: 11 }, (_, k) => 10 * k);

/** 100 mm to be measured before anything is cut: a printer that scales shows here. */
function CheckLength({ x, y }: { x: number; y: number }) {
  return (
    <g class="sheet-check">
      <path d={`M${x} ${y}H${x + 100}`} />
      <path
        d={tenths
          .map((t) => `M${x + t} ${y - (t % 100 === 0 ? 2.5 : 1.2)}v${t % 100 === 0 ? 5 : 2.4}`)
          .join('')}
      />
      <text x={x + 103} y={y + 1.2}>
        100 mm: measure it first
      </text>
    </g>
  );
}

function Words({ text: { at, text, size, anchor } }: { text: MarkText }) {
  return (
    <text x={mm(at.x)} y={mm(at.y)} font-size={mm(1.4 * size)} text-anchor={anchor}>
      {text}
    </text>
  );
}

interface Props {
  tiling: Tiling;
  tile: Tile;
  outline: readonly Point[];
  marks: TemplateMarks;
  /** 'Lower mast, 1 Skin' */
  title: string;
  /** Said at the foot of every sheet. */
  foot: string;
}

const cross = ({ x, y }: Point) => `M${mm(x) - 4} ${mm(y)}h8M${mm(x)} ${mm(y) - 4}v8`;

/** One sheet of paper at true size: its part of the piece, crosses to lay it by, and the check length. */
export function TemplateSheet({ tiling, tile, outline, marks, title, foot }: Props) {
  const { sheet, rows, columns } = tiling;
  const [width, height] = [mm(sheet.width), mm(sheet.height) - spare];
  const margin = mm(sheetMargin);
  const id = `sheet-${sheetName(tile)}`;
  const foots = mm(sheet.height) - margin + 5;
  return (
    <svg
      class="template-sheet"
      width={`${width}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`Sheet ${sheetName(tile)} of ${title}`}
    >
      <clipPath id={id}>
        <rect x={mm(tile.x)} y={mm(tile.y)} width={mm(tile.width)} height={mm(tile.height)} />
      </clipPath>
      <g transform={`translate(${margin - mm(tile.x)} ${margin - mm(tile.y)})`}>
        <g clip-path={`url(#${id})`}>
          <path class="sheet-outline" d={svgPath(outline, true)} />
          {marks.lines.map(({ kind, points }, i) => (
            <path key={i} class={`sheet-${kind}`} d={svgPath(points, false)} />
          ))}
          {marks.texts.map((text, i) => (
            <Words key={i} text={text} />
          ))}
          <path class="sheet-cross" d={crossings(tiling).map(cross).join('')} />
        </g>
      </g>
      <rect class="sheet-frame" x={margin} y={margin} width={mm(tile.width)} height={mm(tile.height)} />
      <CheckLength x={margin} y={margin - 6} />
      <text class="sheet-name" x={width - margin} y={margin - 4} text-anchor="end">
        {sheetName(tile)}
      </text>
      <text x={margin} y={foots}>
        {title}. Sheet {sheetName(tile)}: row {tile.row + 1} of {rows} from the datum edge, {tile.column + 1}{' '}
        of {columns} from end 0.
      </text>
      <text x={margin} y={foots + 4}>
        {foot}
      </text>
    </svg>
  );
}
