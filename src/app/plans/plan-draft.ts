import { type Signal, signal } from '@preact/signals';
import { fieldsOf, type MakingDraft, makingDraft, resinGoalOf } from '#app/making/draft.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { Plan } from '#shared/record/plan.ts';
import { type CureDraft, cureDraft, cureFieldsOf, scheduleOf } from './cure-draft.ts';

export interface PlanDraft extends MakingDraft, CureDraft {
  mandrel: Signal<string>;
  mandrelDiameter: QuantityInput;
  tubeLength: QuantityInput;
  plies: QuantityInput;
  serviceTemperature: QuantityInput;
  note: Signal<string>;
}

/** A dark tube in the sun (common practice, no source), K */
const darkInSun = 348.15;
export function planDraft(plan?: Plan): PlanDraft {
  return {
    ...makingDraft(plan, false),
    ...cureDraft(plan?.schedule),
    mandrel: signal(plan?.mandrel ?? ''),
    mandrelDiameter: quantityInput(plan?.mandrelDiameter, { quantity: 'diameter', min: 0.003, max: 1 }),
    tubeLength: quantityInput(plan?.tubeLength, { quantity: 'length', min: 0.05, max: 15 }),
    plies: quantityInput(plan?.plies, { quantity: 'number', min: 1, max: 60 }),
    serviceTemperature: quantityInput(plan?.serviceTemperature ?? darkInSun, {
      quantity: 'temperature',
      min: 273.15,
      max: 473.15,
    }),
    note: signal(plan?.note ?? ''),
  };
}

export function planFieldsOf(draft: PlanDraft): QuantityInput[] {
  return [...fieldsOf(draft), ...cureFieldsOf(draft), draft.serviceTemperature];
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
