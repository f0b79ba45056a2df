import { type Signal, signal } from '@preact/signals';
import { fieldsOf, type MakingDraft, makingDraft, resinGoalOf } from '#app/making/draft.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { Plan } from '#shared/record/plan.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { hottestOf } from './plan-cautions.ts';

export interface PlanDraft extends MakingDraft {
  mandrel: Signal<string>;
  mandrelDiameter: QuantityInput;
  tubeLength: QuantityInput;
  plies: QuantityInput;
  holdAt: QuantityInput;
  holdFor: QuantityInput;
  rampRate: QuantityInput;
  serviceTemperature: QuantityInput;
  note: Signal<string>;
}

/** A dark tube in the sun (common practice, no source), K */
const darkInSun = 348.15;
/** Closer to the start than this there is nothing to ramp, K */
const noRamp = 2;

const firstSchedule = starterSchedules['starter-schedule-66-3'].schedule;

function rateOf(schedule: CureSchedule): number {
  const ramp = schedule.stages.find((s) => s.kind === 'ramp');
  return ramp?.kind === 'ramp' ? ramp.rate : 2 / 60;
}

function holdOf(schedule: CureSchedule): number {
  return schedule.stages.reduce((sum, s) => sum + (s.kind === 'hold' ? s.lasts : 0), 0);
}

export function planDraft(plan?: Plan): PlanDraft {
  const schedule = plan?.schedule ?? firstSchedule;
  return {
    ...makingDraft(plan),
    mandrel: signal(plan?.mandrel ?? ''),
    mandrelDiameter: quantityInput(plan?.mandrelDiameter, { quantity: 'diameter', min: 0.003, max: 1 }),
    tubeLength: quantityInput(plan?.tubeLength, { quantity: 'length', min: 0.05, max: 15 }),
    plies: quantityInput(plan?.plies, { quantity: 'number', min: 1, max: 60 }),
    holdAt: quantityInput(hottestOf(schedule), { quantity: 'temperature', min: 283.15, max: 473.15 }),
    holdFor: quantityInput(holdOf(schedule), { quantity: 'duration', min: 600, max: 14 * 86400 }),
    rampRate: quantityInput(rateOf(schedule), { quantity: 'rampRate', positive: true, max: 10 / 60 }),
    serviceTemperature: quantityInput(plan?.serviceTemperature ?? darkInSun, {
      quantity: 'temperature',
      min: 273.15,
      max: 473.15,
    }),
    note: signal(plan?.note ?? ''),
  };
}

/** Warm up, hold, cool down. A hold at the shop's temperature needs no ramps. */
function scheduleOf(draft: PlanDraft): CureSchedule | undefined {
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

export function planFieldsOf(draft: PlanDraft): QuantityInput[] {
  const { mandrelDiameter, tubeLength, plies, holdAt, holdFor, rampRate, serviceTemperature } = draft;
  return [
    mandrelDiameter,
    tubeLength,
    ...fieldsOf(draft),
    plies,
    holdAt,
    holdFor,
    rampRate,
    serviceTemperature,
  ];
}

function clothAmountOf(draft: PlanDraft): Plan['clothAmount'] | undefined {
  const mass = draft.clothMass.si.value;
  const area = draft.clothArea.si.value;
  if (draft.amountBy.value === 'mass') return mass === undefined ? undefined : { by: 'mass', mass };
  return area === undefined ? undefined : { by: 'area', area };
}

/** The plan as typed; undefined while a field is missing. */
export function planOf(draft: PlanDraft): Plan | undefined {
  const clothAmount = clothAmountOf(draft);
  const goal = resinGoalOf(draft);
  const schedule = scheduleOf(draft);
  const mandrelDiameter = draft.mandrelDiameter.si.value;
  const tubeLength = draft.tubeLength.si.value;
  const plies = draft.plies.si.value;
  const serviceTemperature = draft.serviceTemperature.si.value;
  const name = draft.name.value.trim();
  if (!name || !clothAmount || !goal || !schedule || mandrelDiameter === undefined) return undefined;
  if (tubeLength === undefined || plies === undefined || serviceTemperature === undefined) return undefined;
  const note = draft.note.value.trim();
  return {
    name,
    mandrelDiameter,
    tubeLength,
    cloth: draft.cloth.value,
    clothAmount,
    plies,
    resin: draft.resin.value,
    ...(draft.release.value && { release: draft.release.value }),
    ...(draft.tape.value && { tape: draft.tape.value }),
    ...(draft.mandrel.value && { mandrel: draft.mandrel.value }),
    checklist: draft.checklist.value,
    goal,
    schedule,
    serviceTemperature,
    ...(note && { note }),
  };
}
