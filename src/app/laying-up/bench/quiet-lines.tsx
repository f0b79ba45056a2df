import { useSignal } from '@preact/signals';
import { BackupReminder } from '#app/phone/data/backup-reminder.tsx';
import { busyReasons } from '#app/platform/busy-lock.ts';
import { applyUpdate, updateWaiting } from '#app/platform/update.ts';
import { late } from '#app/shell/late.ts';
import { ReadyLine } from './ready-line.tsx';

const updateWords = {
  offered: 'A new version is ready.',
  loading: 'Loading the new version: the app opens anew by itself.',
  busy: 'A clock runs in another tab. Try again when it has ended.',
};

/** A newer version, offered when nothing runs; loading it takes a moment and loses nothing. */
function UpdateLine() {
  const stands = useSignal<keyof typeof updateWords>('offered');
  if (!updateWaiting.value || busyReasons.value.length > 0) return null;
  const load = async () => {
    stands.value = 'loading';
    stands.value = (await applyUpdate()) === 'busy' ? 'busy' : 'offered';
  };
  return (
    <div class="quiet-line" role="status">
      <p>{updateWords[stands.value]}</p>
      {stands.value !== 'loading' && (
        <button type="button" onClick={load}>
          Load it now
        </button>
      )}
    </div>
  );
}

/** What may be said only at a quiet moment. */
export function QuietLines() {
  return (
    <>
      <BackupReminder />
      <UpdateLine />
      <ReadyLine />
      {late.value && <late.value.InstallLine />}
    </>
  );
}
