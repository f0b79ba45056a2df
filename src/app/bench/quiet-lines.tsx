import { useSignal } from '@preact/signals';
import { BackupReminder } from '#app/data/backup-reminder.tsx';
import { busyReasons } from '#app/platform/busy-lock.ts';
import { install, installOffer } from '#app/platform/install.ts';
import { applyUpdate, updateWaiting } from '#app/platform/update.ts';
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

/** The browser's offer to install, once there is something worth keeping. */
function InstallLine() {
  const later = useSignal(false);
  if (!installOffer.value || later.value || busyReasons.value.length > 0) return null;
  return (
    <div class="quiet-line">
      <p>On the home screen it opens faster, and the phone keeps the record more surely.</p>
      <button type="button" onClick={install}>
        Install
      </button>
      <button type="button" onClick={() => (later.value = true)}>
        Not now
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
      <InstallLine />
    </>
  );
}
