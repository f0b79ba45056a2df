import type { Factor } from '#app/made/learned/factors.ts';
import { useWidth } from '#app/parts/use-width.ts';
import { shownAs } from './factor-words.ts';
import './strip.css';

const height = 64;
const side = 14;
const line = 26;

/** Every build a dot on a line, the middle half a bar, the median a stroke, the book a triangle under it. */
export function Strip({ factor }: { factor: Factor }) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { kind, spread, book, sources } = factor;
  const values = [...sources.map((s) => s.value), ...(book === undefined ? [] : [book])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (most <= least) return null;
  const x = (v: number) => side + ((v - least) / (most - least)) * (width.value - 2 * side);
  return (
    <div ref={ref}>
      <svg
        class="strip"
        width="100%"
        height={height}
        role="img"
        aria-label={`From ${shownAs(kind, least)} to ${shownAs(kind, most)}`}
      >
        <line class="strip-line" x1={side} x2={width.value - side} y1={line} y2={line} />
        <rect
          class="strip-half"
          x={x(spread.lower)}
          width={Math.max(2, x(spread.upper) - x(spread.lower))}
          y={line - 9}
          height={18}
        />
        <line
          class="strip-median"
          x1={x(spread.median)}
          x2={x(spread.median)}
          y1={line - 15}
          y2={line + 15}
        />
        {sources.map((s) => (
          <circle key={s.to} class="strip-dot" cx={x(s.value)} cy={line} r={5} />
        ))}
        {book !== undefined && (
          <g transform={`translate(${x(book)} ${line + 6})`}>
            <path class="strip-book" d="M0 2 7 14H-7Z" />
            <text y={28} text-anchor={x(book) > width.value / 2 ? 'end' : 'start'}>
              book
            </text>
          </g>
        )}
      </svg>
    </div>
  );
}
