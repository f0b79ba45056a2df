import { computed, type ReadonlySignal, signal } from '@preact/signals';

// Held in shared mode by every page that an update must not disturb.
const LOCK = 'tubewright-busy';

const held = signal<readonly { reason: string }[]>([]);

/** Why this page must not be disturbed now; empty at a quiet moment. */
export const busyReasons: ReadonlySignal<readonly string[]> = computed(() =>
  held.value.map(({ reason }) => reason),
);

/** Marks this page as busy, with an open build or a running clock, until the function it returns is called. */
export function holdBusyLock(reason: string): () => void {
  const holding = { reason };
  held.value = [...held.value, holding];
  const freeLock = requestShared();
  return () => {
    held.value = held.value.filter((one) => one !== holding);
    freeLock();
  };
}

function requestShared(): () => void {
  if (!('locks' in navigator)) return () => {};
  const queued = new AbortController();
  let free = () => queued.abort();
  const options = { mode: 'shared', signal: queued.signal } as const;
  navigator.locks
    .request(LOCK, options, () => new Promise<void>((release) => (free = release)))
    // Aborted while it queued: released before it was ever held.
    .catch(() => {});
  return () => free();
}

/** Runs the work only if no page is busy, and lets no page become busy until it is over. */
export async function whenNoPageIsBusy(work: () => Promise<void>): Promise<boolean> {
  if (held.value.length > 0) return false;
  if (!('locks' in navigator)) {
    await work();
    return true;
  }
  return navigator.locks.request(LOCK, { mode: 'exclusive', ifAvailable: true }, async (lock) => {
    if (!lock) return false;
    await work();
    return true;
  });
}
