import { recordUndoable } from '#app/state/undo.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import type { Picture } from './picture.ts';

interface Pressed {
  said: string;
  step?: string;
  photos?: readonly Picture[];
}

/** Records what a press on the route says happened, and keeps the way back; true once it is on disk. */
export const act = (drafts: readonly EntryDraft[], pressed: Pressed): Promise<boolean> =>
  recordUndoable(drafts, pressed);
