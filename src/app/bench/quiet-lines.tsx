import { useSignal } from '@preact/signals';
import { BackupReminder } from '#app/data/backup-reminder.tsx';
import { busyReasons } from '#app/platform/busy-lock.ts';
import { applyUpdate, updateWaiting } from '#app/platform/update.ts';
import { late } from '#app/shell/late.ts';
import { ReadyLine } from './ready-line.tsx';

/** A newer version, offered when nothing runs; loading it takes a moment and loses nothing. */
function UpdateLine() {
  const elsewhere = useSignal(false);
  if (!updateWaiting.value || busyReasons.value.length > 0) return null;
  const load = async () => {
    elsewhere.value = (await applyUpdate()) === 'busy';
  };
  return (
    <div class="quiet-line" role="status">
      <p>
        {elsewhere.value
          ? 'A clock runs in another tab. Try again when it has ended.'
          : 'A new version is ready.'}
      </p>
      <button type="button" onClick={load}>
        Load it now
      </button>
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
