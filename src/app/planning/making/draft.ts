import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type Recipe, recipe } from '#app/laying-up/mix/recipe.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { hasWall, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { type Doc, findDoc } from '#app/state/documents.ts';
import type { ClothAmount, Plan, ResinGoal } from '#shared/record/plan.ts';
import { firstGoal } from './first-goal.ts';
import { type GoalInput, goalInput } from './goal.ts';
import { likely } from './last-made.ts';
import { keptOrigins, type LearnedInputs, type Origins, originsOf, standing } from './origins.ts';
import { madeOf } from './wall-cloth.ts';

/** What a plan and a build are made of while they are being written. It outlives its screen: nothing typed is lost. */
export interface MakingDraft {
  name: Signal<string>;
  cloth: Signal<string>;
  amountBy: Signal<ClothAmount['by']>;
  clothMass: QuantityInput;
  clothArea: QuantityInput;
  resin: Signal<string>;
  release: Signal<string>;
  tape: Signal<string>;
  checklist: Signal<string>;
  goal: GoalInput;
  lossPerCup: QuantityInput;
  squeezeOut: QuantityInput;
  workingRate: QuantityInput;
  /** Empty: as it follows from cloth and fiber volume. */
  plyThickness: QuantityInput;
  /** Whose figures stand in the fields. */
  from: Signal<Origins>;
  /** Off the shelf; empty when its diameter was typed. */
  mandrel: Signal<string>;
  mandrelDiameter: QuantityInput;
  tubeLength: QuantityInput;
  plies: QuantityInput;
  /** The plan as it is, when its wall is drawn. */
  walled: WalledPlan | undefined;
}

/** Without these a tube can be made and weighed, but its wall cannot be told from its diameter. */
function sizeInputs(plan: Plan | undefined, optional: boolean) {
  return {
    mandrelDiameter: quantityInput(plan?.mandrelDiameter, {
      quantity: 'diameter',
      min: 0.003,
      max: 1,
      optional,
    }),
    tubeLength: quantityInput(plan?.tubeLength, { quantity: 'length', min: 0.05, max: 15, optional }),
    plies: quantityInput(plan?.plies, { quantity: 'number', min: 1, max: 60, optional }),
  };
}

/** 10 kg of cloth is a roll, not a tube; a slip of the unit more likely. */
const mostCloth = 10;
const mostArea = 50;

type Figures = Pick<MakingDraft, 'goal' | 'lossPerCup' | 'squeezeOut' | 'workingRate' | 'plyThickness'>;

function figureInputs(
  plan: Plan | undefined,
  goal: ResinGoal,
  cloth: Signal<string>,
  resin: Signal<string>,
): Figures {
  return {
    goal: goalInput(goal.fiberVolumeFraction, cloth, resin),
    lossPerCup: quantityInput(goal.lossPerCup, { quantity: 'mass', min: 0, max: 0.2 }),
    squeezeOut: quantityInput(goal.squeezeOut, { quantity: 'fraction', min: 0, max: 0.6 }),
    workingRate: quantityInput(goal.workingRate, { quantity: 'massRate', positive: true, optional: true }),
    plyThickness: quantityInput(plan?.plyThickness, {
      quantity: 'thickness',
      min: 0.00002,
      max: 0.005,
      optional: true,
    }),
  };
}

/** The fields that the shop's own builds can fill. */
export function learnedInputs(figures: Figures): LearnedInputs {
  const { goal, lossPerCup, squeezeOut, workingRate, plyThickness } = figures;
  return { fiberVolume: goal.fiberVolume, lossPerCup, squeezeOut, workingRate, plyThickness };
}

export function makingDraft(plan?: Plan, sizesOptional = true): MakingDraft {
  const cloth = signal(plan?.cloth ?? likely('cloth'));
  const resin = signal(plan?.resin ?? likely('resin'));
  const goal = plan?.goal ?? firstGoal;
  const amount = plan?.clothAmount;
  const figures = figureInputs(plan, goal, cloth, resin);
  return {
    name: signal(plan?.name ?? ''),
    cloth,
    amountBy: signal(amount?.by ?? 'mass'),
    clothMass: quantityInput(amount?.by === 'mass' ? amount.mass : undefined, {
      quantity: 'mass',
      positive: true,
      max: mostCloth,
    }),
    clothArea: quantityInput(amount?.by === 'area' ? amount.area : undefined, {
      quantity: 'area',
      positive: true,
      max: mostArea,
    }),
    resin,
    release: signal(plan ? (plan.release ?? '') : likely('release')),
    tape: signal(plan ? (plan.tape ?? '') : likely('tape')),
    checklist: signal(plan?.checklist ?? likely('checklist')),
    ...figures,
    from: originsOf(goal, learnedInputs(figures)),
    mandrel: signal(plan?.mandrel ?? ''),
    ...sizeInputs(plan, sizesOptional),
    walled: plan && hasWall(plan) ? plan : undefined,
  };
}

export interface Materials {
  cloth: Doc<'cloth'>;
  resin: Doc<'resin'>;
}

export function materialsOf(draft: MakingDraft): Materials | undefined {
  const cloth = findDoc('cloth', draft.cloth.value);
  const resin = findDoc('resin', draft.resin.value);
  return cloth && resin && { cloth, resin };
}

/** Dry cloth, kg: as weighed, or area times areal weight. */
export function clothMassOf(draft: MakingDraft): number | undefined {
  if (draft.amountBy.value === 'mass') return draft.clothMass.si.value;
  const area = draft.clothArea.si.value;
  const cloth = findDoc('cloth', draft.cloth.value);
  return area === undefined || !cloth ? undefined : area * cloth.body.arealWeight;
}

export function resinGoalOf(draft: MakingDraft): ResinGoal | undefined {
  const fiberVolumeFraction = draft.goal.fiberVolume.si.value;
  const lossPerCup = draft.lossPerCup.si.value;
  const squeezeOut = draft.squeezeOut.si.value;
  const workingRate = draft.workingRate.si.value;
  if (fiberVolumeFraction === undefined || lossPerCup === undefined || squeezeOut === undefined)
    return undefined;
  return {
    fiberVolumeFraction,
    lossPerCup,
    squeezeOut,
    ...(workingRate !== undefined && { workingRate }),
    ...keptOrigins(standing(draft.from.value, learnedInputs(draft))),
  };
}

export type Answer = { ok: true; recipe: Recipe } | { ok: false; says?: string };

const cannot: Record<string, string> = {
  lossPerCup:
    'A cup would lose all it may hold: lower the loss per cup, or let the resin system have a larger cup.',
  workingRate:
    'At this working rate a cup is over before it is used: mix less at a time, or take the slower hardener.',
  largestCup: 'The resin system allows only tiny cups: raise its largest cup on the shelf.',
};

/** What the draft comes to: resin kept, resin to mix, cups. */
export function answerOf(draft: MakingDraft): ReadonlySignal<Answer> {
  return computed(() => {
    const resin = materialsOf(draft)?.resin.body;
    const made = madeOf(draft);
    const clothMass = clothMassOf(draft);
    const goal = resinGoalOf(draft);
    if (!resin || !made || clothMass === undefined || !goal) return { ok: false };
    try {
      return {
        ok: true,
        recipe: recipe({ clothMass, cloth: made.cloth, resin, goal, extraKept: made.coreResin }),
      };
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      const field = error.message.split(' ')[0] ?? '';
      return {
        ok: false,
        says: cannot[field] ?? 'These figures cannot go together: check cloth, losses and cup.',
      };
    }
  });
}

/** The fields whose problems stop a draft from being used. */
export function fieldsOf(draft: MakingDraft): QuantityInput[] {
  const amount = draft.amountBy.value === 'mass' ? draft.clothMass : draft.clothArea;
  const { goal, mandrelDiameter, tubeLength, plies } = draft;
  const { lossPerCup, squeezeOut, workingRate, plyThickness } = draft;
  const figures = [goal.fiberVolume, lossPerCup, squeezeOut, workingRate, plyThickness];
  return [amount, ...figures, mandrelDiameter, tubeLength, plies];
}
