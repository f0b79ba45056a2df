import { type Signal, signal } from '@preact/signals';
import { findDoc } from '#app/state/documents.ts';
import { theStore } from '#app/state/shop.ts';
import type { Checklist, ChecklistStage, StageName, Step } from '#shared/record/checklist.ts';
import { ownNote } from './own-note.ts';

/** A checklist while it is changed; what was just taken out can be put back. */
export interface ChecklistDraft {
  list: Signal<Checklist>;
  name: Signal<string>;
  removed: Signal<{ words: string; before: Checklist } | undefined>;
}

const drafts = new Map<string, ChecklistDraft>();

const empty: Checklist = { name: '', stages: [] };

/** The draft of a document as it stands now, or of a new one. It outlives its screens. */
export function checklistDraft(doc: string): ChecklistDraft | undefined {
  const found = doc === 'new' ? undefined : findDoc('checklist', doc);
  if (!found && doc !== 'new') return undefined;
  const key = found?.revision.id ?? 'new';
  const kept = drafts.get(key);
  if (kept) return kept;
  const body = found?.body ?? empty;
  const made = { list: signal(body), name: signal(body.name), removed: signal(undefined) };
  drafts.set(key, made);
  return made;
}

export function dropDraft(draft: ChecklistDraft): void {
  for (const [key, kept] of drafts) if (kept === draft) drafts.delete(key);
}

/** As it is kept: under its name, and the shop's own from now on. */
export function checklistOf({ list, name }: ChecklistDraft): Checklist {
  const { typical, note, ...rest } = list.value;
  const kept = typical && note ? ownNote(note) : note;
  return { ...rest, name: name.value.trim(), ...(kept && { note: kept }) };
}

/** The same things with one of them a place up or down; at the end it stays. */
export function moved<T>(things: readonly T[], at: number, by: -1 | 1): T[] {
  const to = at + by;
  const next = [...things];
  const [one] = next.splice(at, 1);
  if (one === undefined || to < 0 || to >= things.length) return [...things];
  next.splice(to, 0, one);
  return next;
}

function setStages({ list }: ChecklistDraft, stages: ChecklistStage[]): void {
  list.value = { ...list.value, stages };
}

export function moveStage(draft: ChecklistDraft, at: number, by: -1 | 1): void {
  setStages(draft, moved(draft.list.value.stages, at, by));
}

export function addStage(draft: ChecklistDraft, stage: StageName): void {
  setStages(draft, [...draft.list.value.stages, { stage, steps: [] }]);
}

export function removeStage(draft: ChecklistDraft, at: number, words: string): void {
  draft.removed.value = { words, before: draft.list.value };
  setStages(
    draft,
    draft.list.value.stages.filter((_, i) => i !== at),
  );
}

export function stepsOf(draft: ChecklistDraft, stage: StageName): Step[] {
  return draft.list.value.stages.find((s) => s.stage === stage)?.steps ?? [];
}

export function setSteps(draft: ChecklistDraft, stage: StageName, steps: Step[]): void {
  setStages(
    draft,
    draft.list.value.stages.map((s) => (s.stage === stage ? { ...s, steps } : s)),
  );
}

export function removeStep(draft: ChecklistDraft, stage: StageName, at: number): void {
  const steps = stepsOf(draft, stage);
  draft.removed.value = { words: steps[at]?.text ?? '', before: draft.list.value };
  setSteps(
    draft,
    stage,
    steps.filter((_, i) => i !== at),
  );
}

export function putBack(draft: ChecklistDraft): void {
  const { removed, list } = draft;
  if (removed.value) list.value = removed.value.before;
  removed.value = undefined;
}

export const newStepId = () => theStore().newId();
