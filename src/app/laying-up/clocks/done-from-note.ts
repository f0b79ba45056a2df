import { signal } from '@preact/signals';
import { doneWith } from './answer.ts';
import { clockKey } from './clock-list.ts';
import { runningClocks } from './running.ts';

/** Where the worker leaves the word of a thumb when it has to open the app for it: `?done=` and the clock's key. */
const asked = 'done';

/** True when a notification was answered too late to change anything. */
export const cameTooLate = signal(false);

/** Only a clock that is over still: an old notification must not end one that was set going again. */
function done(key: unknown): void {
  const clock = runningClocks.value.find((c) => clockKey(c) === key && c.phase === 'over');
  cameTooLate.value = clock === undefined;
  if (clock) doneWith(clock);
}

/** 'It is done' on a notification answers its clock, in the open app or in the one it opens. */
export function followDone(): void {
  navigator.serviceWorker?.addEventListener('message', ({ data }) => {
    if (data?.type === 'CLOCK_DONE') done(data.key);
  });
  const address = new URL(location.href);
  const key = address.searchParams.get(asked);
  if (key === null) return;
  done(key);
  address.searchParams.delete(asked);
  history.replaceState(null, '', address);
}
