import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { scheduledAt, stretchesOf } from './oven-schedule.ts';

/** What of a schedule is still to come so many s after lighting: it begins where the schedule is then. */
export function scheduleAhead(schedule: CureSchedule, time: number): CureSchedule {
  const stretches = stretchesOf(schedule);
  const stages = schedule.stages.flatMap((stage, index) => {
    const stretch = stretches[index];
    if (!stretch || stretch.to <= time) return [];
    if (stage.kind !== 'hold' || stretch.from >= time) return [stage];
    return [{ ...stage, lasts: stretch.to - time }];
  });
  return { ...schedule, start: scheduledAt(schedule, time), stages };
}
