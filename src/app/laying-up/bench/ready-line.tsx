import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { busyReasons } from '#app/platform/busy-lock.ts';
import { opensWithoutNetwork, type WithoutNetwork } from '#app/platform/update.ts';

const key = 'tubewright-ready-seen';

function wasSeen(): boolean {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
}

const seen = signal(wasSeen());

function markSeen(): void {
  seen.value = true;
  try {
    localStorage.setItem(key, 'yes');
  } catch {
    // Without localStorage it is said once more at the next opening.
  }
}

const says: Record<WithoutNetwork, string> = {
  notYet: 'Keep it open a moment with a network: it is being put on this phone.',
  ready: 'Ready without a network: all of it is on this phone now.',
  never: 'This browser keeps no copy of the app: opening it needs a network each time.',
};

/** On the first screen of all, which nobody works at yet: how far it is. */
export function ReadyWords() {
  const at = opensWithoutNetwork.value;
  useEffect(() => {
    if (at === 'ready') markSeen();
  }, [at]);
  // Said before, it holds while the worker has not answered yet.
  return <p role="status">{says[at === 'notYet' && seen.value ? 'ready' : at]}</p>;
}

/** Said once, until it is seen. */
export function ReadyLine() {
  if (opensWithoutNetwork.value !== 'ready' || seen.value || busyReasons.value.length > 0) return null;
  return (
    <div class="quiet-line" role="status">
      <p>{says.ready}</p>
      <button type="button" onClick={markSeen}>
        Seen
      </button>
    </div>
  );
}
