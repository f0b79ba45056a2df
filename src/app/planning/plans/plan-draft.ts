import { type Signal, signal } from '@preact/signals';
import { type CureDraft, cureDraft, scheduleOf } from '#app/curing/cure/cure-draft.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { fieldsOf, type MakingDraft, makingDraft, resinGoalOf } from '#app/planning/making/draft.ts';
import { planWithWall } from '#app/planning/wall/plan-with-wall.ts';
import { plyThickness, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { findDoc } from '#app/state/documents.ts';
import { widthForWraps } from '#calc';
import type { Plan } from '#shared/record/plan.ts';
import { darkInSun } from '#shared/reference/service-margin.ts';

export interface PlanDraft extends MakingDraft {
  cure: CureDraft;
  mandrel: Signal<string>;
  mandrelDiameter: QuantityInput;
  tubeLength: QuantityInput;
  plies: QuantityInput;
  serviceTemperature: QuantityInput;
  note: Signal<string>;
  /** What the plan has to carry, set on screens of its own. */
  loads: Plan['loads'];
  /** A new plan whose wall is drawn next. */
  fromWall: Signal<boolean>;
}

export function planDraft(plan?: Plan): PlanDraft {
  return {
    ...makingDraft(plan, false),
    cure: cureDraft(plan?.schedule),
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
    loads: plan?.loads,
    fromWall: signal(plan === undefined),
  };
}

export function planFieldsOf(draft: PlanDraft): QuantityInput[] {
  const { clothMass, clothArea, mandrelDiameter, tubeLength, plies, serviceTemperature } = draft;
  const amount = [clothMass, clothArea];
  const follows = draft.walled
    ? [...amount, mandrelDiameter, tubeLength, plies]
    : draft.fromWall.value
      ? amount
      : [];
  const typed = [...fieldsOf(draft), serviceTemperature];
  return typed.filter((field) => !follows.includes(field));
}

/** Until the wall is drawn: so much as its plies make without a lap. */
function amountToBegin(draft: PlanDraft): Plan['clothAmount'] | undefined {
  const wraps = draft.plies.si.value;
  const startDiameter = draft.mandrelDiameter.si.value;
  const length = draft.tubeLength.si.value;
  const cloth = findDoc('cloth', draft.cloth.value)?.body;
  const fiberVolumeFraction = draft.goal.fiberVolume.si.value;
  if (!wraps || !startDiameter || !length || !cloth || !fiberVolumeFraction) return undefined;
  const width = widthForWraps({
    wraps,
    startDiameter,
    plyThickness: draft.plyThickness.si.value ?? plyThickness(cloth, fiberVolumeFraction),
  });
  return { by: 'area', area: width * length };
}

function clothAmountOf(draft: PlanDraft): Plan['clothAmount'] | undefined {
  if (draft.walled) return draft.walled.clothAmount;
  if (draft.fromWall.value) return amountToBegin(draft);
  const mass = draft.clothMass.si.value;
  const area = draft.clothArea.si.value;
  if (draft.amountBy.value === 'mass') return mass === undefined ? undefined : { by: 'mass', mass };
  return area === undefined ? undefined : { by: 'area', area };
}

/** With what follows from its wall anew: another release or fiber volume is another width of cloth. */
function followed(plan: Plan, walled: WalledPlan | undefined): Plan {
  if (!walled) return plan;
  const drawn = { ...plan, wall: walled.wall };
  try {
    return planWithWall(drawn);
  } catch (error) {
    // A wall that cannot be rolled any more is kept for the builder to mend.
    if (error instanceof RangeError) return drawn;
    throw error;
  }
}

/** The plan as typed; undefined while a field is missing. */
export function planOf(draft: PlanDraft): Plan | undefined {
  const clothAmount = clothAmountOf(draft);
  const goal = resinGoalOf(draft);
  const schedule = scheduleOf(draft.cure);
  const mandrelDiameter = draft.mandrelDiameter.si.value;
  const tubeLength = draft.tubeLength.si.value;
  const plies = draft.plies.si.value;
  const serviceTemperature = draft.serviceTemperature.si.value;
  const name = draft.name.value.trim();
  if (!name || !clothAmount || !goal || !schedule || mandrelDiameter === undefined) return undefined;
  if (tubeLength === undefined || plies === undefined || serviceTemperature === undefined) return undefined;
  const note = draft.note.value.trim();
  const ply = draft.plyThickness.si.value;
  const plan: Plan = {
    name,
    mandrelDiameter,
    tubeLength,
    cloth: draft.cloth.value,
    clothAmount,
    plies,
    ...(ply !== undefined && { plyThickness: ply }),
    resin: draft.resin.value,
    ...(draft.release.value && { release: draft.release.value }),
    ...(draft.tape.value && { tape: draft.tape.value }),
    ...(draft.mandrel.value && { mandrel: draft.mandrel.value }),
    checklist: draft.checklist.value,
    goal,
    schedule,
    serviceTemperature,
    ...(draft.loads && { loads: draft.loads }),
    ...(note && { note }),
  };
  return followed(plan, draft.walled);
}
