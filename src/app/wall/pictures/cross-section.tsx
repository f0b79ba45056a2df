import { useId, useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { show } from '#app/state/show.ts';
import { pliesAround, type Roll } from '#calc';
import { isOver, sampleNear, turn, within } from './angles.ts';
import { arcPath, onCircle, ringPath } from './rings.ts';
import { textWidth } from './scale.ts';
import './pictures.css';

interface Props {
  roll: Roll;
  /** m from end 0 */
  at: number;
  pressedAt?: number | undefined;
  wide?: number;
  tallest?: number;
}

const margin = 46;
const factors = [1, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30];
/** The wall may take so much of the radius. */
const wallShare = 0.42;

interface Ring {
  piece: number;
  core: boolean;
  shape: string;
  plies: string;
}

/** How many times thicker the wall is drawn, so that its plies can be told apart. */
function thicker(bore: number, wall: number): number {
  return factors.filter((f) => wall * f <= wallShare * (bore + wall * f)).at(-1) ?? 1;
}

function draw(roll: Roll, at: number, radius: number) {
  const i = sampleNear(roll, at);
  const place = roll.at[i] ?? 0;
  const { steps, seams } = pliesAround({ roll, at: place });
  const bore = (roll.diameter[i] ?? 0) / 2;
  const wall = roll.wallMax[i] ?? 0;
  const factor = thicker(bore, wall);
  const px = radius / (bore + wall * factor);
  const rings: Ring[] = roll.pieces.map(({ spec }, piece) => ({
    piece,
    core: spec.kind !== 'cloth',
    shape: '',
    plies: '',
  }));
  for (const step of steps) {
    let r = bore * px;
    const middle = (step.from + step.to) / 2;
    roll.pieces.forEach(({ spec, wraps }, piece) => {
      const turns = wraps[i] ?? 0;
      const whole = Math.floor(turns + 1e-9);
      const here = whole + (isOver(middle, spec.clock, (turns - whole) * turn) ? 1 : 0);
      const ring = rings[piece];
      if (!ring || here === 0) return;
      const thick = spec.thickness * factor * px;
      ring.shape += ringPath(r, r + here * thick, step.from, step.to);
      for (let k = 1; k < here; k += 1) ring.plies += arcPath(r + k * thick, step.from, step.to);
      r += here * thick;
    });
  }
  const least = Math.min(...steps.map((s) => s.plies));
  const extra = steps.filter((s) => s.plies > least);
  return { rings, seams, steps, extra, factor, bore: bore * px, least, place };
}

interface Tag {
  angle: number;
  text: string;
}

/** Seams closer than this share one tag, rad */
const near = 0.42;

function tagsOf(seams: readonly { piece: number; outer: number }[], several: boolean): Tag[] {
  const tags: { angle: number; pieces: number[] }[] = [];
  for (const { piece, outer } of [...seams].sort((a, b) => a.outer - b.outer)) {
    const last = tags.at(-1);
    if (last && outer - last.angle < near) last.pieces.push(piece + 1);
    else tags.push({ angle: outer, pieces: [piece + 1] });
  }
  return tags.map((t) => ({ angle: t.angle, text: several ? `seam ${t.pieces.join(', ')}` : 'seam' }));
}

function SeamTag({ tag, radius }: { tag: Tag; radius: number }) {
  const foot = onCircle(radius + 1, tag.angle);
  const end = onCircle(radius + 13, tag.angle);
  const words = onCircle(radius + 17, tag.angle);
  const side = Math.sin(tag.angle);
  const half = textWidth(tag.text) / 2;
  // Beside the ring the words begin at it, above and below they stand over it.
  const x = words.x + side * half;
  return (
    <>
      <path class="picture-seam" d={`M${foot.x} ${foot.y}L${end.x} ${end.y}`} />
      <text x={x} y={words.y + 4 - Math.cos(tag.angle) * 4} text-anchor="middle">
        {tag.text}
      </text>
    </>
  );
}

function Load({ angle, bore }: { angle: number; bore: number }) {
  const tip = onCircle(bore - 3, angle);
  const turned = (angle * 180) / Math.PI;
  return (
    <>
      <path
        class="picture-load"
        d={`M${tip.x} ${tip.y}l-6 11h12Z`}
        transform={`rotate(${turned} ${tip.x} ${tip.y})`}
      />
      <text text-anchor="middle" y={-Math.cos(angle) < 0 ? 12 : -4}>
        pressed
      </text>
    </>
  );
}

/** The tube cut square at a station, seen from end 0, rolled clockwise. */
export function CrossSection({ roll, at, pressedAt, wide, tallest = 250 }: Props) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const width = wide ?? room.value;
  const radius = Math.min(width / 2 - margin - 12, tallest / 2 - 34);
  const cut = useMemo(() => draw(roll, at, radius), [roll, at, radius]);
  const size = 2 * radius + 68;
  const several = roll.pieces.length > 1;
  return (
    <div ref={ref} class="picture">
      <svg
        width={width}
        height={size}
        role="img"
        aria-label={`Cross-section at ${show(cut.place, 'length', 0)}`}
      >
        <defs>
          <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse">
            <path class="picture-core" d="M0 6L6 0" />
          </pattern>
        </defs>
        <g transform={`translate(${width / 2} ${size / 2})`}>
          {cut.rings.map((ring) => (
            <g key={ring.piece}>
              <path class={ring.piece % 2 === 0 ? 'picture-ground' : 'picture-plate'} d={ring.shape} />
              {ring.core && <path d={ring.shape} fill={`url(#${hatch})`} />}
              <path class="picture-layer" d={ring.plies} />
              <path class="picture-ring" d={ring.shape} />
            </g>
          ))}
          <path class="picture-line" d={cut.extra.map((s) => arcPath(radius + 5, s.from, s.to)).join('')} />
          {tagsOf(cut.seams, several).map((tag) => (
            <SeamTag key={tag.text} tag={tag} radius={radius} />
          ))}
          {pressedAt !== undefined && <Load angle={within(pressedAt)} bore={cut.bore} />}
        </g>
      </svg>
      <p class="picture-words">
        Seen from end 0, rolled clockwise, 0° at the top.
        {cut.extra.length > 0 && ' The blue arc is where one more ply lies.'}
        {cut.factor > 1 && ` The wall is drawn ${cut.factor} times thicker.`}
      </p>
    </div>
  );
}
