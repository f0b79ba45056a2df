import { useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { type Roll, type RolledPiece, seamAngle } from '#calc';
import { AlongAxis } from './along-axis.tsx';
import { isOver, turn } from './angles.ts';
import { coarse } from './coarse.ts';
import { stretchOf } from './flat-shape.tsx';
import { linear, type Scale } from './scale.ts';
import { areaPath, linePath } from './thin-line.ts';
import './pictures.css';

interface Props {
  roll: Roll;
  tallest?: number;
  at?: number;
  wide?: number;
}

const pad = { left: 14, right: 14, top: 10, bottom: 24 };

/** A seam is seen where no later piece lies over it. */
function isCovered(later: readonly RolledPiece[], i: number, angle: number): boolean {
  return later.some(({ spec, wraps }) => isOver(angle, spec.clock, (wraps[i] ?? 0) * turn));
}

interface Seams {
  front: string;
  back: string;
}

/** The free edges on the side that is looked at, and those behind it. */
function seamsOf(roll: Roll, x: Scale, r: (i: number) => number, middle: number): Seams {
  const found = { front: [] as string[], back: [] as string[] };
  roll.pieces.forEach((rolled, piece) => {
    const { angle } = seamAngle({ roll, piece });
    const first = rolled.wraps.findIndex((n) => n > 0);
    const later = roll.pieces.slice(piece + 1);
    let [xs, ys]: [number[], number[]] = [[], []];
    let side: keyof Seams | undefined;
    const close = () => {
      if (side && xs.length > 1) found[side].push(linePath(xs, ys));
      [xs, ys] = [xs.slice(-1), ys.slice(-1)];
    };
    angle.forEach((a, k) => {
      const i = first + k;
      const next = isCovered(later, i, a) ? undefined : Math.sin(a) >= 0 ? 'front' : 'back';
      if (next !== side) {
        close();
        if (side === undefined) [xs, ys] = [[], []];
        side = next;
      }
      if (side) {
        xs.push(x(roll.at[i] ?? 0));
        ys.push(middle - r(i) * Math.cos(a));
      }
    });
    close();
  });
  return { front: found.front.join(''), back: found.back.join('') };
}

/** Rings where a piece ends on the tube, and nothing later hides it. */
function endRings(roll: Roll, x: Scale, r: (i: number) => number, middle: number): string {
  const inside = (place: number) => place > 1e-6 && place < roll.length - 1e-6;
  return roll.pieces
    .flatMap((rolled, piece) =>
      [rolled.from, rolled.to].filter(inside).flatMap((place) => {
        const i = roll.at.findIndex((a) => a >= place - 1e-9);
        if (isCovered(roll.pieces.slice(piece + 1), i, turn / 4)) return [];
        const px = x(place).toFixed(1);
        return [`M${px} ${(middle - r(i)).toFixed(1)}V${(middle + r(i)).toFixed(1)}`];
      }),
    )
    .join('');
}

function draw(roll: Roll, width: number, tallest: number) {
  const x = linear(0, roll.length, pad.left, width - pad.right);
  const perMeter = (width - pad.left - pad.right) / roll.length;
  const most = roll.outsideDiameter.reduce((a, b) => Math.max(a, b), 0);
  const stretch = stretchOf(perMeter, most, tallest);
  const half = (most * perMeter * stretch) / 2;
  const middle = pad.top + half;
  const r = (i: number) => ((roll.outsideDiameter[i] ?? 0) / 2) * perMeter * stretch;
  const xs = roll.at.map(x);
  const top = roll.outsideDiameter.map((_, i) => middle - r(i));
  const mirror = `translate(0 ${2 * middle}) scale(1 -1)`;
  const seams = seamsOf(roll, x, r, middle);
  const rings = endRings(roll, x, r, middle);
  return {
    x,
    stretch,
    foot: middle + half,
    half: areaPath(xs, top, middle),
    mirror,
    seams,
    rings,
    line: linePath(xs, top),
  };
}

/** The finished tube from its 90° side, end 0 at the left, with the seams that will be seen on it. */
export function SideView({ roll: whole, tallest = 90, at, wide }: Props) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const width = wide ?? room.value;
  const roll = coarse(whole, width);
  const drawn = useMemo(() => draw(roll, width, tallest), [roll, width, tallest]);
  const { x, foot, mirror, seams } = drawn;
  return (
    <div ref={ref} class="picture">
      <svg
        width={width}
        height={foot + pad.bottom + 6}
        role="img"
        aria-label="The finished tube from the side, with its seams"
      >
        <path class="picture-ground" d={drawn.half} />
        <path class="picture-ground" d={drawn.half} transform={mirror} />
        <path class="picture-seam-hidden" d={seams.back} />
        <path class="picture-layer" d={drawn.rings} />
        <path class="picture-outline" d={drawn.line} />
        <path class="picture-outline" d={drawn.line} transform={mirror} />
        <path class="picture-seam" d={seams.front} />
        {at !== undefined && <line class="picture-cursor" x1={x(at)} x2={x(at)} y1={2} y2={foot + 4} />}
        <AlongAxis x={x} length={roll.length} y={foot + 6} width={width} />
      </svg>
      <p class="picture-words">
        {seams.back === '' ? '' : 'Dotted: the seam on the far side. '}
        {drawn.stretch > 1 && `Drawn ${drawn.stretch} times thicker than it is long.`}
      </p>
    </div>
  );
}
