import { extent, ticks } from 'd3-array';
import { useId } from 'preact/hooks';
import { Hatch } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { profilePoints } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { inUnits } from '#shared/units/format.ts';
import { formatDuration } from '#shared/units/time.ts';
import './schedule-line.css';

const height = 150;
const pad = { left: 34, right: 26, top: 18, bottom: 20 };

interface Props {
  schedule: CureSchedule;
  /** Lowest limit among what is in the oven, K */
  limit?: number | undefined;
}

/** The cure as a builder would draw it: up, along, down, and the line it must stay under. */
export function ScheduleLine({ schedule, limit }: Props) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const points = profilePoints({ start: schedule.start, stages: schedule.stages });
  const shown = (k: number) => inUnits(k, { quantity: 'temperature', system: settings.value.units }).value;
  const lasts = points.at(-1)?.time ?? 1;
  const all = [
    ...points.map((p) => p.temperature),
    ...(limit === undefined ? [] : [limit + 8]),
    schedule.start + 20,
  ];
  const [low = 0, high = 1] = extent(all.map(shown));
  const floor = low - 5;
  const x = (t: number) => pad.left + (t / lasts) * (width.value - pad.left - pad.right);
  const y = (degrees: number) =>
    height - pad.bottom - ((degrees - floor) / (high - floor)) * (height - pad.bottom - pad.top);
  const hours = ticks(0, lasts / 3600, 5);
  const top = limit === undefined ? undefined : y(shown(limit));
  const hottest = Math.max(...points.map((p) => p.temperature));
  return (
    <div ref={ref}>
      <svg
        class="schedule-line"
        width="100%"
        height={height}
        role="img"
        aria-label={`Up to ${show(hottest, 'temperature', 0)}, ${formatDuration(lasts)} in all`}
      >
        <Hatch id={hatch} />
        {ticks(floor, high, 4).map((t) => (
          <g key={t}>
            <line class="schedule-grid" x1={pad.left} x2={width.value - pad.right} y1={y(t)} y2={y(t)} />
            <text x={pad.left - 6} y={y(t) + 4} text-anchor="end">
              {t}
            </text>
          </g>
        ))}
        {top !== undefined && limit !== undefined && (
          <>
            <rect
              fill={`url(#${hatch}-amber)`}
              x={pad.left}
              width={Math.max(0, width.value - pad.left - pad.right)}
              y={top - 10}
              height={10}
            />
            <text class="schedule-limit" x={width.value - pad.right} y={top - 13} text-anchor="end">
              release limit {show(limit, 'temperature', 0)}
            </text>
          </>
        )}
        <polyline
          class="schedule-path"
          points={points.map((p) => `${x(p.time)},${y(shown(p.temperature))}`).join(' ')}
        />
        {hours.map((h) => (
          <text key={h} x={x(h * 3600)} y={height - 4} text-anchor="middle">
            {h} h
          </text>
        ))}
      </svg>
    </div>
  );
}
