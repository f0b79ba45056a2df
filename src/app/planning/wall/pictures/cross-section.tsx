import { useId, useMemo } from 'preact/hooks';
import { useWidth } from '#app/parts/use-width.ts';
import { show } from '#app/state/show.ts';
import type { Roll } from '#calc';
import { within } from './angles.ts';
import { cutAt, type Tag, tagsOf } from './cut-at.ts';
import { arcPath, onCircle } from './rings.ts';
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
  const cut = useMemo(() => cutAt(roll, at, radius), [roll, at, radius]);
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
