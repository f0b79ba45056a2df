import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { linear, ticksUp } from '#app/planning/wall/pictures/scale.ts';
import { linePath } from '#app/planning/wall/pictures/thin-line.ts';
import type { Stretch } from './stretches.ts';
import type { Station } from './take.ts';
import { plyWords } from './wanted-words.ts';
import '#app/planning/wall/pictures/pictures.css';
import './wanted.css';

interface Props {
  length: number;
  stretches: readonly Stretch[];
  /** Plies as they would be cut, and those of today's wall, at places along the tube. */
  cut: readonly Station[];
  today: readonly Station[];
  kept: (stretch: Stretch) => boolean;
}

const pad = { left: 30, right: 14, top: 26, bottom: 24 };
const height = 190;

/** Wanted plies as steps over today's wall: what is taken stands filled, what stays as it is only in outline. */
export function WantedPicture({ length, stretches, cut, today, kept }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const right = width.value - pad.right;
  const foot = height - pad.bottom;
  const most = Math.max(...stretches.map((s) => s.plies), ...[...cut, ...today].map((s) => s.value), 1);
  const x = linear(0, length, pad.left, right);
  const y = linear(0, most, foot, pad.top);
  const ticks = ticksUp('number', most, y).filter((t) => Number.isInteger(t.si));
  const steps = stretches.map((s) => ({
    stretch: s,
    box: { x: x(s.from), width: x(s.to) - x(s.from), y: y(s.plies), height: foot - y(s.plies) },
  }));
  const line = (stations: readonly Station[]) =>
    linePath(
      stations.map((s) => x(s.at)),
      stations.map((s) => y(s.value)),
    );
  const says = `Wanted plies along the tube: ${stretches.map((s) => plyWords(s.plies)).join(', ')}. Dotted: today's wall.`;
  return (
    <div ref={ref} class="picture">
      <svg width={width.value} height={height} role="img" aria-label={says}>
        <path class="picture-grid" d={ticks.map((t) => `M${pad.left} ${y(t.si)}H${right}`).join('')} />
        {ticks.map((t) => (
          <text key={t.label} x={pad.left - 8} y={y(t.si) + 4} text-anchor="end">
            {t.label}
          </text>
        ))}
        {steps.map(({ stretch, box }) => (
          <rect key={stretch.from} class={kept(stretch) ? 'wanted-kept' : 'wanted-taken'} {...box} />
        ))}
        <path class="wanted-today" d={line(today)} />
        <path class="picture-line" d={line(cut)} />
        {steps.map(
          ({ stretch, box }) =>
            box.width > 15 && (
              <text
                key={stretch.from}
                class="picture-number picture-over"
                x={box.x + box.width / 2}
                y={box.y - 7}
                text-anchor="middle"
              >
                {stretch.plies}
              </text>
            ),
        )}
        <AlongAxis x={x} length={length} y={foot} width={width.value} />
      </svg>
      <p class="picture-words">Filled: plies wanted. Blue line: as cut. Dotted: today's wall.</p>
    </div>
  );
}
