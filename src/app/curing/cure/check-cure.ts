import { allGood } from '#app/parts/quantity-input.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { type CureDraft, cureFieldsOf, stageFields } from './cure-draft.ts';
import { firstAsked } from './stage-question.ts';

/** Shows every problem and opens the first stage that has one; true when there is none. */
export function cureIsGood(draft: CureDraft, resin: ResinSystem | undefined): boolean {
  const good = allGood(cureFieldsOf(draft));
  const stages = draft.stages.value;
  const bad =
    stages.find((s) => stageFields(s).some((f) => f.problem.value !== undefined)) ?? firstAsked(draft, resin);
  if (bad) draft.chosen.value = bad.key;
  return good && !bad && stages.length > 0;
}

/** Leads to the first field that is wrong or asked about, once it is on the screen. */
export function focusWrong(): void {
  const wrong = '[aria-invalid="true"], .unit-question button';
  setTimeout(() => document.querySelector<HTMLElement>(wrong)?.focus());
}
