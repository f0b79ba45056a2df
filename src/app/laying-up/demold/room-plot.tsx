import { Hatch } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { linear, ticksIn } from '#app/planning/wall/pictures/scale.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { clearanceAt, coldShop, type Fit } from './demold-fit.ts';
import { showRoom } from './demold-words.ts';
import '#app/planning/wall/pictures/pictures.css';
import './demold.css';

interface Props {
  fit: Fit;
  /** K */
  now: number;
}

const height = 190;
const pad = { left: 40, right: 14, top: 24, bottom: 36 };

/** Room on the diameter as it cools: gripped is hatched, the present temperature and where it comes loose are marked. */
export function RoomPlot({ fit, now }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const from = Math.min(now - 5, coldShop);
  const to = Math.max(now, fit.set.temperature) + 8;
  const rooms = [from, to].map((t) => clearanceAt(fit, t));
  const [least, most] = [Math.min(...rooms, -5e-6), Math.max(...rooms, 1e-5)];
  const edge = (most - least) * 0.12;
  const x = linear(from, to, pad.left, width.value - pad.right);
  const y = linear(least - edge, most + edge, height - pad.bottom, pad.top);
  const { loose } = fit;
  const shown = loose !== null && loose > from && loose < to;
  const room = clearanceAt(fit, now);
  // A line that falls to the right leaves room at its upper right and its lower left.
  const nearEnd = x(now) > width.value * 0.65;
  const looseAtLeft = shown && x(loose) > pad.left + 140;
  return (
    <div ref={ref} class="picture">
      <svg
        width={width.value}
        height={height}
        role="img"
        aria-label={`Room on the diameter against temperature: ${showRoom(room)} at ${show(now, 'temperature', 0)}`}
      >
        <Hatch id="grips" />
        <rect
          fill="url(#grips-amber)"
          x={pad.left}
          width={width.value - pad.left - pad.right}
          y={y(0)}
          height={height - pad.bottom - y(0)}
        />
        {ticksIn('thickness', least, most, 4).map((t) => (
          <g key={t.label}>
            <line class="picture-grid" x1={pad.left} x2={width.value - pad.right} y1={y(t.si)} y2={y(t.si)} />
            <text x={pad.left - 5} y={y(t.si) + 4} text-anchor="end">
              {t.label}
            </text>
          </g>
        ))}
        <line class="room-none" x1={pad.left} x2={width.value - pad.right} y1={y(0)} y2={y(0)} />
        <path
          class="room-line"
          d={`M${x(from)} ${y(clearanceAt(fit, from))}L${x(to)} ${y(clearanceAt(fit, to))}`}
        />
        {shown && (
          <>
            <path class="picture-tick" d={`M${x(loose)} ${y(0)}V${height - pad.bottom}`} />
            <text
              class="picture-over picture-number"
              x={x(loose) + (looseAtLeft ? -6 : 6)}
              y={height - pad.bottom - 6}
              text-anchor={looseAtLeft ? 'end' : 'start'}
            >
              loose below {show(loose, 'temperature', 0)}
            </text>
          </>
        )}
        <circle class="room-now" cx={x(now)} cy={y(room)} r="6" />
        <text
          class="picture-over picture-number"
          x={nearEnd ? width.value - pad.right : x(now) + 10}
          y={room > 0 ? y(room) - 11 : y(0) - 8}
          text-anchor={nearEnd ? 'end' : 'start'}
        >
          now {show(now, 'temperature', 0)}
        </text>
        {ticksIn('temperature', from, to, 5).map((t) => (
          <text key={t.label} x={x(t.si)} y={height - pad.bottom + 16} text-anchor="middle">
            {t.label}
          </text>
        ))}
        <text x={pad.left - 34} y={12}>
          {unitFor('thickness', settings.value.units)} on the diameter
        </text>
        <text x={width.value - pad.right} y={height - 4} text-anchor="end">
          {unitFor('temperature', settings.value.units)}, part
        </text>
      </svg>
    </div>
  );
}
