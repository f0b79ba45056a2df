import { stretchesOf } from '#app/curing/oven/oven-schedule.ts';
import { HeatPlot } from '#app/parts/heat-plot.tsx';
import { show } from '#app/state/show.ts';
import { interpolateProfile, profilePoints } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import { formatDuration } from '#shared/units/time.ts';
import './schedule-line.css';

interface Props {
  schedule: CureSchedule;
  /** Of everything in the oven. */
  limits?: readonly OvenLimit[];
  /** The stage that is being written, drawn thicker. */
  stage?: number | undefined;
}

/** Limits this far above everything drawn would flatten the picture, K */
const nearEnough = 40;

/** The lowest limit, and those that the schedule comes near. */
function limitsNear(limits: readonly OvenLimit[], hottest: number): OvenLimit[] {
  const [first, ...others] = [...limits].sort((a, b) => a.highest - b.highest);
  return first ? [first, ...others.filter((l) => l.highest < hottest + nearEnough)] : [];
}

/** The cure as a builder would draw it: up, along, down, and the lines it must stay under. */
export function ScheduleLine({ schedule, limits = [], stage }: Props) {
  const { start, stages } = schedule;
  const points = profilePoints({ start, stages });
  const lasts = points.at(-1)?.time ?? 1;
  const hottest = points.reduce((most, p) => Math.max(most, p.temperature), start);
  const coldest = points.reduce((least, p) => Math.min(least, p.temperature), start);
  const near = limitsNear(limits, hottest);
  const open = stage === undefined ? undefined : stretchesOf(schedule)[stage];
  const top = near.reduce((most, l) => Math.max(most, l.highest + 8), Math.max(hottest + 2, start + 20));
  return (
    <HeatPlot
      label={`Up to ${show(hottest, 'temperature', 0)}, ${formatDuration(lasts)} in all`}
      height={150}
      from={0}
      to={lasts}
      coldest={coldest}
      hottest={top}
      limits={near.map((l) => ({ name: l.name, at: l.highest }))}
    >
      {({ x, y }) => (
        <>
          {open && (
            <line
              class="schedule-open"
              x1={x(open.from)}
              x2={x(open.to)}
              y1={y(interpolateProfile({ start, stages, time: open.from }))}
              y2={y(open.temperature)}
            />
          )}
          <polyline
            class="schedule-path"
            points={points.map((p) => `${x(p.time)},${y(p.temperature)}`).join(' ')}
          />
        </>
      )}
    </HeatPlot>
  );
}
