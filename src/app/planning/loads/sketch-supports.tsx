import type { Scale } from '#app/planning/wall/pictures/scale.ts';
import type { Support } from '#shared/record/load-plan.ts';

interface Props {
  support: Support;
  x: Scale;
  /** Middle of the tube and half its height, px */
  y: number;
  half: number;
  length: number;
  hatch: string;
  chosen: boolean;
}

/** Nearer to an end than this share of the length it is built in like a wall that the tube sticks out of. */
const nearEnd = 0.02;

/** A wall, a clamp in the middle: hatched as masonry is sketched. */
function BuiltIn({ at, ...props }: Omit<Props, 'support'> & { at: number }) {
  const { x, y, half, length, hatch } = props;
  const px = x(at);
  const side = at <= length * nearEnd ? -1 : at >= length * (1 - nearEnd) ? 1 : 0;
  if (side !== 0) {
    return (
      <>
        <rect x={side < 0 ? px - 14 : px} y={y - 30} width={14} height={60} fill={`url(#${hatch}-wall)`} />
        <path class="sketch-line" d={`M${px} ${y - 30}V${y + 30}`} />
      </>
    );
  }
  return [y - half - 16, y + half].map((top) => (
    <g key={top}>
      <rect x={px - 10} y={top} width={20} height={16} fill={`url(#${hatch}-wall)`} />
      <path class="sketch-line" d={`M${px - 10} ${top}h20v16h-20Z`} />
    </g>
  ));
}

function Rest({ px, foot, hatch }: { px: number; foot: number; hatch: string }) {
  return (
    <>
      <path class="sketch-triangle" d={`M${px} ${foot}l10 17h-20Z`} />
      <rect x={px - 14} y={foot + 19} width={28} height={6} fill={`url(#${hatch}-wall)`} />
      <path class="sketch-line" d={`M${px - 14} ${foot + 19}h28`} />
    </>
  );
}

function Sleeve({ from, to, ...props }: Omit<Props, 'support'> & { from: number; to: number }) {
  const { x, y, half, hatch } = props;
  const [left, wide] = [x(from), Math.max(8, x(to) - x(from))];
  return [y - half - 9, y + half].map((top) => (
    <g key={top}>
      <rect x={left} y={top} width={wide} height={9} fill={`url(#${hatch}-wall)`} />
      <path class="sketch-line" d={`M${left} ${top}h${wide}v9h${-wide}Z`} />
    </g>
  ));
}

/** A support as a builder sketches it. */
export function SupportMark({ support, ...props }: Props) {
  const { x, y, half, hatch, chosen } = props;
  return (
    <g class={chosen ? 'sketch-chosen' : undefined}>
      {support.holds === 'builtIn' && <BuiltIn at={support.at} {...props} />}
      {support.holds === 'rests' && <Rest px={x(support.at)} foot={y + half} hatch={hatch} />}
      {support.holds === 'sleeve' && <Sleeve from={support.at} to={support.at + support.length} {...props} />}
    </g>
  );
}
