import { signal } from '@preact/signals';
import type { EntryDraft } from '#shared/record/entry.ts';
import { type Alongside, record, recordStamped, stampEntry } from './record.ts';
import { undoableFacts } from './undo-facts.ts';

/** How long the way back stays under the thumb, ms; from the time line it can be taken for ever. */
const undoFor = 10_000;

interface Undoable {
  facts: readonly { subject: string; root: string }[];
  said: string;
  /** The step just ticked, when it was one. */
  step?: string;
  until: number;
}

/** The last press. It outlives the screen, since what comes next may be another address. */
export const undoable = signal<Undoable | undefined>(undefined);

/** Records what a press says happened, and keeps the way back; true once it is on disk. */
export async function recordUndoable(
  drafts: EntryDraft | readonly EntryDraft[],
  { said, step, ...alongside }: { said: string; step?: string } & Alongside,
): Promise<boolean> {
  const entries = (Array.isArray(drafts) ? drafts : [drafts as EntryDraft]).map(stampEntry);
  if (!(await recordStamped(entries, alongside))) return false;
  undoable.value = {
    facts: undoableFacts(entries),
    said,
    until: Date.now() + undoFor,
    ...(step !== undefined && { step }),
  };
  return true;
}

export async function undo(): Promise<void> {
  const last = undoable.value;
  if (!last) return;
  const drafts = last.facts.map(
    ({ subject, root }): EntryDraft => ({ kind: 'retracted', subject, corrects: root }),
  );
  if (await record(drafts)) undoable.value = undefined;
}
