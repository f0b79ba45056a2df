import { signal } from '@preact/signals';
import { loadDocuments } from '#app/state/documents.ts';
import { cameInWhole, journals, loadJournals } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';
import { type BackupFault, type Checked, checkBackup, type RestoreOutcome } from '#storage/backup-check.ts';
import { WriteError } from '#storage/store.ts';
import { sameAsBackup } from './backup-state.ts';

type Good = Checked & { ok: true };

export type Restoring =
  | { step: 'choose' }
  | { step: 'reading' }
  | { step: 'refused'; name: string; reason: BackupFault; line: number; detail: string }
  | { step: 'checked'; name: string; checked: Good }
  | { step: 'merging'; share: number }
  | { step: 'stopped'; full: boolean; name: string; checked: Good }
  | { step: 'done'; outcome: RestoreOutcome & { ok: true } };

/** Where a restore stands. It goes on while another screen is looked at. */
export const restoring = signal<Restoring>({ step: 'choose' });

export async function takeFile(file: File): Promise<void> {
  restoring.value = { step: 'reading' };
  takeText(file.name, await file.text().catch(() => ''));
}

/** What came as a file or by camera, checked before anything is stored. */
export function takeText(name: string, text: string): void {
  const checked = checkBackup(text);
  restoring.value = checked.ok
    ? { step: 'checked', name, checked }
    : { step: 'refused', name, reason: checked.reason, line: checked.line, detail: checked.detail };
}

async function readAgain(): Promise<void> {
  cameInWhole.value += 1;
  const open = await theStore().openSubjects();
  await Promise.all([loadDocuments(), loadJournals([...new Set([...journals.value.keys(), ...open])], true)]);
}

export async function mergeIn(name: string, checked: Good): Promise<void> {
  restoring.value = { step: 'merging', share: 0 };
  try {
    const outcome = await theStore().restore(checked, (share) => {
      restoring.value = { step: 'merging', share };
    });
    if (!outcome.ok) {
      const { reason, line, detail } = outcome;
      restoring.value = { step: 'refused', name, reason, line, detail };
      return;
    }
    await readAgain();
    await sameAsBackup(checked.at, checked.records.length);
    restoring.value = { step: 'done', outcome };
  } catch (error) {
    const full = error instanceof WriteError && error.reason === 'full';
    restoring.value = { step: 'stopped', full, name, checked };
  }
}
