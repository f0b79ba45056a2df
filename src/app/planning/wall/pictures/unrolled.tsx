import { useId, useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import type { Roll } from '#calc';
import { AlongAxis } from './along-axis.tsx';
import { turn, within } from './angles.ts';
import { coarse } from './coarse.ts';
import { linear } from './scale.ts';
import { type Count, counts, seamLines, startLines, tones } from './unrolled-paths.ts';
import './pictures.css';

interface Props {
  roll: Roll;
  height?: number;
  /** Where the main load presses, rad */
  pressedAt?: number | undefined;
  at?: number;
  wide?: number;
}

const pad = { left: 40, right: 14, top: 12, bottom: 24 };
const quarters = [0, 1, 2, 3, 4];
/** The darkest that figures are still read on. */
const darkest = 0.8;

function Counts({ counts }: { counts: readonly Count[] }) {
  return (
    <>
      <path
        class="picture-plate"
        d={counts.map((c) => `M${(c.x - 9).toFixed(1)} ${(c.y - 9).toFixed(1)}h18v18h-18Z`).join('')}
      />
      {counts.map((c) => (
        <text key={`${c.x} ${c.y}`} class="picture-number" x={c.x} y={c.y + 5} text-anchor="middle">
          {c.plies}
        </text>
      ))}
    </>
  );
}

/** The tube cut open along its top and laid flat: plies by tone and number, free edges, datum edges. */
export function Unrolled({ roll: whole, height = 190, pressedAt, at, wide }: Props) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const clip = useId().replace(/[^\w-]/g, '');
  const width = wide ?? room.value;
  const roll = coarse(whole, width);
  const right = pressedAt === undefined ? pad.right : 46;
  const x = linear(0, roll.length, pad.left, width - right);
  const foot = height - pad.bottom;
  const y = linear(0, turn, pad.top, foot);
  const drawn = useMemo(() => {
    const layers = tones(roll, x, y);
    return {
      layers,
      seams: seamLines(roll, x, y),
      starts: startLines(roll, x, y),
      counts: counts(roll, x, y, Math.max(3, Math.floor(width / 64))),
    };
  }, [roll, width, height, right]);
  const tone = darkest / Math.max(4, drawn.layers.length);
  return (
    <div ref={ref} class="picture">
      <svg
        width={width}
        height={height}
        role="img"
        aria-label="The tube unrolled: how many plies lie where, and the seams"
      >
        <clipPath id={clip}>
          <rect x={x(0)} y={y(0)} width={x(roll.length) - x(0)} height={foot - y(0)} />
        </clipPath>
        <g clip-path={`url(#${clip})`}>
          {drawn.layers.map((d, i) => (
            <path key={i} class="picture-tone" d={d} fill-opacity={tone} />
          ))}
          <path class="picture-start" d={drawn.starts} />
          <path class="picture-seam" d={drawn.seams} />
        </g>
        <rect class="picture-outline" x={x(0)} y={y(0)} width={x(roll.length) - x(0)} height={foot - y(0)} />
        <Counts counts={drawn.counts} />
        {quarters.map((q) => (
          <text key={q} x={pad.left - 6} y={y((q / 4) * turn) + 4} text-anchor="end">
            {q * 90}°
          </text>
        ))}
        {pressedAt !== undefined && (
          <g>
            <path class="picture-load" d={`M${width - right + 2} ${y(within(pressedAt))}l10 -6v12Z`} />
            <text x={width - right + 15} y={y(within(pressedAt)) + 4}>
              load
            </text>
          </g>
        )}
        {at !== undefined && <line class="picture-cursor" x1={x(at)} x2={x(at)} y1={y(0) - 8} y2={foot} />}
        <AlongAxis x={x} length={roll.length} y={foot} width={width} />
      </svg>
    </div>
  );
}
