import { signal } from '@preact/signals';
import { buildState } from '#app/state/journals.ts';
import { record } from '#app/state/record.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import type { Picture } from './picture.ts';
import { factsSince, retractDrafts } from './ticks.ts';

/** How long the way back stays under the thumb, ms; from the time line it can be taken for ever. */
const undoFor = 10_000;

interface Undoable {
  build: string;
  roots: readonly string[];
  said: string;
  /** The step just ticked, when it was one. */
  step?: string;
  until: number;
}

/** The last press on a route. It outlives the screen, since the next stage may be another address. */
export const undoable = signal<Undoable | undefined>(undefined);

/** Records what a press says happened, and keeps the way back; true once it is on disk. */
export async function act(
  state: BuildState,
  drafts: readonly EntryDraft[],
  { said, step, photos = [] }: { said: string; step?: string; photos?: readonly Picture[] },
): Promise<boolean> {
  if (!(await record(drafts, { photos }))) return false;
  const after = buildState(state.header.id);
  const roots = after ? factsSince(state, after) : [];
  undoable.value = {
    build: state.header.id,
    roots,
    said,
    until: Date.now() + undoFor,
    ...(step !== undefined && { step }),
  };
  return true;
}

export async function undo(): Promise<void> {
  const last = undoable.value;
  if (last && (await record(retractDrafts(last.build, last.roots)))) undoable.value = undefined;
}
