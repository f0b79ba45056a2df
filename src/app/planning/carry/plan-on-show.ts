import { wallDraft } from '#app/planning/wall/wall-draft.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import type { Plan } from '#shared/record/plan.ts';

/** The wall as it is being drawn, where somebody is drawing it; else the plan as it is kept. */
export function planOnShow(doc: string, kept: Plan): { plan: Plan; unsaved: boolean } {
  const draft = wallDraft(doc);
  const drawing = draft?.changed.value && (hasWall(kept) || draft.canUndo.value);
  const plan = drawing ? draft.plan.value : undefined;
  return plan ? { plan, unsaved: true } : { plan: kept, unsaved: false };
}

/** Said over what is told of such a plan. */
export const shownName = ({ plan, unsaved }: { plan: Plan; unsaved: boolean }): string =>
  unsaved ? `${plan.name} · as drawn, not saved yet` : plan.name;
