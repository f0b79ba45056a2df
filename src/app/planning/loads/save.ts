import { signal } from '@preact/signals';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { noLoads } from './loads-edits.ts';

interface Step {
  /** What the plan had before. */
  loads: LoadPlan | undefined;
  /** What it has since: changed elsewhere meanwhile, there is no way back to before. */
  made: LoadPlan;
}

/** The last changes of each plan, newest at the end. */
const steps = signal<ReadonlyMap<string, readonly Step[]>>(new Map());
/** More steps back than anybody takes. */
const mostUndo = 50;

const setSteps = (doc: string, of: readonly Step[]) => {
  steps.value = new Map(steps.peek()).set(doc, of.slice(-mostUndo));
};

/** Writes changed loads as a revision of their plan; true when it is on disk. */
export async function saveLoads(doc: string, change: (loads: LoadPlan) => LoadPlan): Promise<boolean> {
  const body = findDoc('plan', doc)?.body;
  if (!body) return false;
  const made = change(body.loads ?? noLoads);
  if ((await saveDoc('plan', { ...body, loads: made }, { doc })) === undefined) return false;
  setSteps(doc, [...(steps.peek().get(doc) ?? []), { loads: body.loads, made }]);
  return true;
}

/** The change that can be taken back. */
function lastStep(doc: string): Step | undefined {
  const last = steps.value.get(doc)?.at(-1);
  return last && findDoc('plan', doc)?.body.loads === last.made ? last : undefined;
}

export const canUndoLoads = (doc: string): boolean => lastStep(doc) !== undefined;

/** Takes the last change back, as a revision of its own. */
export async function undoLoads(doc: string): Promise<void> {
  const last = lastStep(doc);
  const body = findDoc('plan', doc)?.body;
  if (!last || !body) return;
  const { loads: _, ...rest } = body;
  const next = last.loads === undefined ? rest : { ...rest, loads: last.loads };
  if ((await saveDoc('plan', next, { doc })) === undefined) return;
  setSteps(doc, (steps.peek().get(doc) ?? []).slice(0, -1));
}
