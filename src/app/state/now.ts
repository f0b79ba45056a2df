import { signal } from '@preact/signals';

/** Time of day, ms. A tick repaints; nothing is counted by it. */
export const now = signal(Date.now());

export function repaint(): void {
  now.value = Date.now();
}

export function startTicking(): void {
  setInterval(repaint, 1000);
  for (const event of ['visibilitychange', 'pageshow', 'focus']) addEventListener(event, repaint);
  document.addEventListener('visibilitychange', repaint);
}

/** Minutes east of UTC at a time, here. */
export const zoneAt = (at: number): number => -new Date(at).getTimezoneOffset();
