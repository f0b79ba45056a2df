import { type ReadonlySignal, signal } from '@preact/signals';

/** 'refused': a low battery, or a phone that never grants it. */
export type Awake = 'off' | 'held' | 'refused' | 'unsupported';

const supported = 'wakeLock' in navigator;
const state = signal<Awake>(supported ? 'off' : 'unsupported');
let wanted = false;
let sentinel: WakeLockSentinel | undefined;

/** Whether the screen is kept on now. */
export const awake: ReadonlySignal<Awake> = state;

export function keepAwake(on: boolean): void {
  if (!supported || on === wanted) return;
  wanted = on;
  if (on) request();
  else release();
}

async function request(): Promise<void> {
  if (!wanted || sentinel || document.visibilityState !== 'visible') return;
  try {
    const granted = await navigator.wakeLock.request('screen');
    granted.addEventListener('release', () => {
      if (sentinel === granted) sentinel = undefined;
      if (wanted) state.value = 'off';
    });
    sentinel = granted;
    state.value = 'held';
    // No longer wanted while it was being granted: a lock left behind would drain the battery.
    if (!wanted) release();
  } catch {
    state.value = 'refused';
  }
}

function release(): void {
  sentinel?.release();
  sentinel = undefined;
  state.value = 'off';
}

// It is taken away whenever the page is hidden.
document.addEventListener('visibilitychange', () => request());
