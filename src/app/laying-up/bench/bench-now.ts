import { nextCup } from '#app/laying-up/build/cups-left.ts';
import { presentStage, presentStep } from '#app/laying-up/build/position.ts';
import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { mixPlan } from '#app/laying-up/mix/mix-plan.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StageName } from '#shared/record/checklist.ts';

const mixing: readonly StageName[] = ['mix', 'wetOut'];

/** Whether another cup is wanted; a goal that no cups can meet is the mixing screen's to explain. */
function wantsMore({ header, cups, rounds }: BuildState): boolean {
  try {
    return mixPlan({ ...header, cups, round: rounds }).left > 0;
  } catch (error) {
    if (error instanceof RangeError) return true;
    throw error;
  }
}

/** What the bench calls the next cup of a build; nothing when none is wanted now. */
export function cupToMix(state: BuildState): string | undefined {
  const stage = presentStage(state)?.stage;
  if (!stage || !mixing.includes(stage)) return undefined;
  const next = nextCup(state, state.rounds);
  if (next?.begun) return `Go on with cup ${next.number}`;
  if (!wantsMore(state)) return undefined;
  return state.cups.some((c) => c.round === state.rounds) ? 'Mix next cup' : 'Mix the first cup';
}

/** 'Wet-out: rest of the resin, then the top film' */
export function nextOf(state: BuildState): string {
  const stage = presentStage(state);
  const step = stage && presentStep(stage);
  return step ? `${stageWords[step.stage]}: ${step.step.text}` : 'Route done: weigh it, judge it, close it';
}
