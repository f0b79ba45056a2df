import { HeatPlot } from '#app/parts/heat-plot.tsx';
import { show } from '#app/state/show.ts';
import { profilePoints } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { formatDuration } from '#shared/units/time.ts';
import './schedule-line.css';

interface Props {
  schedule: CureSchedule;
  /** Lowest limit among what is in the oven, K */
  limit?: number | undefined;
  /** What that limit is of. */
  limitName?: string | undefined;
}

/** The cure as a builder would draw it: up, along, down, and the line it must stay under. */
export function ScheduleLine({ schedule, limit, limitName = 'release limit' }: Props) {
  const points = profilePoints({ start: schedule.start, stages: schedule.stages });
  const lasts = points.at(-1)?.time ?? 1;
  const hottest = points.reduce((most, p) => Math.max(most, p.temperature), schedule.start);
  const coldest = points.reduce((least, p) => Math.min(least, p.temperature), schedule.start);
  return (
    <HeatPlot
      label={`Up to ${show(hottest, 'temperature', 0)}, ${formatDuration(lasts)} in all`}
      height={150}
      from={0}
      to={lasts}
      coldest={coldest}
      hottest={Math.max(hottest, schedule.start + 20, limit === undefined ? 0 : limit + 8)}
      limits={limit === undefined ? [] : [{ name: limitName, at: limit }]}
    >
      {({ x, y }) => (
        <polyline
          class="schedule-path"
          points={points.map((p) => `${x(p.time)},${y(p.temperature)}`).join(' ')}
        />
      )}
    </HeatPlot>
  );
}
