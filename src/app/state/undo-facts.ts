import type { Entry } from '#shared/record/entry.ts';

/**
 * What an undo of these entries takes out. A correction is undone from the time line instead: taking its fact
 * out would take out what stood before it too.
 */
export const undoableFacts = (entries: readonly Entry[]): { subject: string; root: string }[] =>
  entries.flatMap((e) => ('corrects' in e && e.corrects ? [] : [{ subject: e.subject, root: e.id }]));
