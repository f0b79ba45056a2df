import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { calling, heardKey } from './alarm-plan.ts';
import type { RunningClock } from './clock-list.ts';
import { toneFor } from './clock-words.ts';
import { runningClocks } from './running.ts';

export const heard = signal<ReadonlySet<string>>(new Set());

/** Clocks that ask for a thumb now. */
export const callingClocks: ReadonlySignal<readonly RunningClock[]> = computed(() =>
  calling(runningClocks.value, heard.value),
);

/** Quiets a warning, whose clock runs on. What is over is answered by an entry instead. */
export function hearWarnings(): void {
  const warnings = runningClocks.value.filter((c) => c.phase === 'warning').map(heardKey);
  if (warnings.length > 0) heard.value = new Set([...heard.value, ...warnings]);
}

/** How the whole screen flashes: with the sound, since a respirator, a fan and a silent switch defeat it. */
export const flashTone = computed(() => {
  const first = callingClocks.value[0];
  return first && toneFor(first);
});
