import { hottestOf } from '#app/oven/oven-schedule.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';

/** A cure being written down: hold at, hold for, how fast up. */
export interface CureDraft {
  holdAt: QuantityInput;
  holdFor: QuantityInput;
  rampRate: QuantityInput;
}

/** Closer to the start than this there is nothing to ramp, K */
const noRamp = 2;

export const firstSchedule: CureSchedule = starterSchedules['starter-schedule-66-3'].schedule;

function rateOf(schedule: CureSchedule): number {
  return schedule.stages.filter((s) => s.kind === 'ramp').at(0)?.rate ?? 2 / 60;
}

function holdOf(schedule: CureSchedule): number {
  return schedule.stages.reduce((sum, s) => sum + (s.kind === 'hold' ? s.lasts : 0), 0);
}

export function cureDraft(schedule: CureSchedule = firstSchedule): CureDraft {
  return {
    holdAt: quantityInput(hottestOf(schedule), { quantity: 'temperature', min: 283.15, max: 473.15 }),
    holdFor: quantityInput(holdOf(schedule), { quantity: 'duration', min: 600, max: 14 * 86400 }),
    rampRate: quantityInput(rateOf(schedule), { quantity: 'rampRate', positive: true, max: 10 / 60 }),
  };
}

export const cureFieldsOf = ({ holdAt, holdFor, rampRate }: CureDraft): QuantityInput[] => [
  holdAt,
  holdFor,
  rampRate,
];

/** Puts another schedule into the fields. */
export function fillCure(draft: CureDraft, schedule: CureSchedule): void {
  draft.holdAt.set(hottestOf(schedule));
  draft.holdFor.set(holdOf(schedule));
  draft.rampRate.set(rateOf(schedule));
}

/** Whether the fields still say what this schedule says. */
export function saysTheSame(draft: CureDraft, schedule: CureSchedule): boolean {
  return (
    draft.holdAt.si.value === hottestOf(schedule) &&
    draft.holdFor.si.value === holdOf(schedule) &&
    draft.rampRate.si.value === rateOf(schedule)
  );
}

/** Warm up, hold, cool down. A hold at the shop's temperature needs no ramps. */
export function scheduleOf(draft: CureDraft): CureSchedule | undefined {
  const at = draft.holdAt.si.value;
  const lasts = draft.holdFor.si.value;
  const rate = draft.rampRate.si.value;
  if (at === undefined || lasts === undefined || rate === undefined) return undefined;
  const { start } = firstSchedule;
  const hold = { kind: 'hold', lasts } as const;
  const room = Math.abs(at - start) <= noRamp;
  return {
    start: room ? at : start,
    stages: room
      ? [hold]
      : [{ kind: 'ramp', to: at, rate }, hold, { kind: 'cool', to: Math.min(at, 308.15), rate: 1.5 / 60 }],
    holdLow: at - 3,
    ...(!room && { holdHigh: at + 6 }),
    readEvery: room ? 6 * 3600 : 1800,
  };
}
