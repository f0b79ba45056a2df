import { signal } from '@preact/signals';
import { busyReasons } from '#app/platform/busy-lock.ts';
import { install, installed, installOffer, wayHere } from '#app/platform/install.ts';
import { installHow, installWhy } from '#app/platform/install-words.ts';
import { openBuilds } from '#app/state/journals.ts';
import { everBuilt } from './ever-built.ts';

const key = 'tubewright-install-later';

function wasPutOff(): boolean {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
}

const putOff = signal(wasPutOff());

function putItOff(): void {
  putOff.value = true;
  try {
    localStorage.setItem(key, 'yes');
  } catch {
    // Without localStorage it is offered once more at the next opening.
  }
}

/** A tube was weighed, or came all the way through: now there is something worth keeping. */
function somethingUsefulIsDone(): boolean {
  const builds = openBuilds.value;
  if (builds.length === 0) return everBuilt.value === true;
  return builds.some((b) => b.weights.has('cured') || b.weights.has('trimmed'));
}

/** The way to the home screen, offered once there is something worth keeping; it is under 'This phone' ever after. */
export function InstallLine() {
  if (installed || putOff.value || busyReasons.value.length > 0 || !somethingUsefulIsDone()) return null;
  return (
    <div class="quiet-line">
      <p>
        {installWhy} {!installOffer.value && installHow[wayHere]}
      </p>
      {installOffer.value && (
        <button type="button" onClick={install}>
          Put it on the home screen
        </button>
      )}
      <button type="button" onClick={putItOff}>
        {installOffer.value ? 'Not now' : 'Seen'}
      </button>
    </div>
  );
}
