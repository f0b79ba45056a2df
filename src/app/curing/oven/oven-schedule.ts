import { interpolateProfile, profilePoints, type Reading } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';

/** The hold that counts: the time asked for inside the band. */
export interface Hold {
  /** K */
  temperature: number;
  /** s in all */
  lasts: number;
  /** s from lighting the oven, by the schedule */
  begins: number;
  ends: number;
}

export interface Stretch {
  kind: 'ramp' | 'hold' | 'cool';
  from: number;
  to: number;
  temperature: number;
}

/** Its stages with when they are and what they come to. */
export function stretchesOf({ start, stages }: CureSchedule): Stretch[] {
  let time = 0;
  let temperature = start;
  return stages.map((stage) => {
    const from = time;
    if (stage.kind === 'hold') time += stage.lasts;
    else {
      time += Math.abs(stage.to - temperature) / stage.rate;
      temperature = stage.to;
    }
    return { kind: stage.kind, from, to: time, temperature };
  });
}

/** The hottest the schedule asks for, K */
export function hottestOf({ start, stages }: CureSchedule): number {
  return stages.reduce((most, s) => (s.kind === 'hold' ? most : Math.max(most, s.to)), start);
}

/** The part of it with the tube on its mandrel, up to the first stage without. */
export function onMandrel(schedule: CureSchedule): CureSchedule {
  const first = schedule.stages.findIndex((s) => s.offMandrel);
  return first < 0 ? schedule : { ...schedule, stages: schedule.stages.slice(0, first) };
}

/** All of it with the tube off its mandrel: a postcure that stands free. */
export const isFree = ({ stages }: CureSchedule): boolean =>
  stages.length > 0 && stages.every((s) => s.offMandrel);

export function holdOf(schedule: CureSchedule): Hold {
  const all = stretchesOf(schedule);
  const holds = all.filter((s) => s.kind === 'hold');
  const inBand = holds.filter((s) => s.temperature >= schedule.holdLow);
  const counted = inBand.length > 0 ? inBand : holds;
  const last = all.at(-1);
  return {
    temperature: counted[0]?.temperature ?? last?.temperature ?? schedule.start,
    lasts: counted.reduce((sum, s) => sum + s.to - s.from, 0),
    begins: counted[0]?.from ?? 0,
    ends: counted.at(-1)?.to ?? last?.to ?? 0,
  };
}

/** Where it cools to before the oven is opened; undefined when it never went up. */
export function coolsTo({ stages }: CureSchedule): number | undefined {
  return stages.filter((s) => s.kind === 'cool').at(-1)?.to;
}

/** The rate at which it is to warm up last before the hold, K/s */
export function warmsAt({ stages }: CureSchedule): number | undefined {
  return stages.filter((s) => s.kind === 'ramp').at(-1)?.rate;
}

export const scheduledAt = ({ start, stages }: CureSchedule, time: number): number =>
  interpolateProfile({ start, stages, time });

export const corners = ({ start, stages }: CureSchedule): Reading[] => profilePoints({ start, stages });
