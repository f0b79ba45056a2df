import type { ItemDraft } from './item-draft.ts';

/** What is typed stays while the builder looks something up elsewhere. */
const drafts = new Map<string, ItemDraft>();

export function draftFor(key: string, make: () => ItemDraft): ItemDraft {
  const kept = drafts.get(key) ?? make();
  drafts.set(key, kept);
  return kept;
}

export const dropDraft = (key: string): void => {
  drafts.delete(key);
};

/** A part of the thing was saved elsewhere: what else was typed goes on with its new revision. */
export function keepDraft(from: string, to: string | undefined): void {
  const draft = drafts.get(from);
  if (!draft || to === undefined) return;
  drafts.delete(from);
  drafts.set(to, draft);
}
