const drafts = new Map<string, { of: string; draft: unknown }>();

/**
 * What is typed on a screen stays while the builder looks something up elsewhere; it goes once what it was made from
 * has changed, since it would put the old back.
 */
export function keptDraft<Draft>(key: string, from: unknown, make: () => Draft): Draft {
  const of = JSON.stringify(from) ?? '';
  const kept = drafts.get(key);
  if (kept?.of === of) return kept.draft as Draft;
  const draft = make();
  drafts.set(key, { of, draft });
  return draft;
}

export const dropDraft = (key: string): void => {
  drafts.delete(key);
};
