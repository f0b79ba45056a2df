import { signal } from '@preact/signals';
import { loadDocuments } from '#app/state/documents.ts';
import { cameInWhole, journals, loadJournals } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';
import { checkBackup, type Good } from '#storage/backup-check.ts';
import type { Fault } from '#storage/backup-faults.ts';
import type { RestoreOutcome } from '#storage/restore.ts';
import { WriteError } from '#storage/store.ts';
import { sameAsBackup } from './backup-state.ts';

export type Restoring =
  | { step: 'choose' }
  | { step: 'reading'; share: number }
  /** `added`: records that were in before the fault was found. */
  | { step: 'refused'; name: string; fault: Fault; added: number }
  | { step: 'checked'; name: string; checked: Good }
  | { step: 'merging'; share: number }
  | { step: 'stopped'; why: 'full' | 'refused' | 'asked'; name: string; checked: Good }
  | { step: 'done'; outcome: RestoreOutcome & { ok: true } };

/** Where a restore stands. It goes on while another screen is looked at. */
export const restoring = signal<Restoring>({ step: 'choose' });

let running = new AbortController();

/** Ends the reading or the merging that is under way. */
export const stopRestoring = (): void => running.abort();

const wasStopped = (error: unknown) => error instanceof DOMException && error.name === 'AbortError';

/** A file, or what came by camera: checked whole before anything is stored. */
export async function takeFile(file: File): Promise<void> {
  running.abort();
  const mine = new AbortController();
  running = mine;
  const say = (next: Restoring) => {
    if (running === mine) restoring.value = next;
  };
  say({ step: 'reading', share: 0 });
  try {
    const checked = await checkBackup(file, {
      onProgress: (share) => say({ step: 'reading', share }),
      stop: mine.signal,
    });
    if (checked.ok) say({ step: 'checked', name: file.name, checked });
    else say({ step: 'refused', name: file.name, fault: checked, added: 0 });
  } catch (error) {
    if (!wasStopped(error)) throw error;
    say({ step: 'choose' });
  }
}

async function readAgain(): Promise<void> {
  cameInWhole.value += 1;
  const open = await theStore().openSubjects();
  await Promise.all([loadDocuments(), loadJournals([...new Set([...journals.value.keys(), ...open])], true)]);
}

const recordsIn = ({ holds }: Good) => holds.builds + holds.ovenLoads + holds.entries + holds.revisions;

export async function mergeIn(name: string, checked: Good): Promise<void> {
  running = new AbortController();
  restoring.value = { step: 'merging', share: 0 };
  try {
    const outcome = await theStore().restore(checked, {
      onProgress: (share) => {
        restoring.value = { step: 'merging', share };
      },
      stop: running.signal,
    });
    if (!outcome.ok) {
      restoring.value = { step: 'refused', name, fault: outcome, added: outcome.added };
      return;
    }
    await readAgain();
    await sameAsBackup(checked.at, recordsIn(checked));
    restoring.value = { step: 'done', outcome };
  } catch (error) {
    const full = error instanceof WriteError && ['full', 'unreadable'].includes(error.reason);
    const why = wasStopped(error) ? 'asked' : full ? 'full' : 'refused';
    restoring.value = { step: 'stopped', why, name, checked };
    // What is in already is shown; a store that failed has nothing to read.
    await readAgain().catch(() => {});
  }
}
