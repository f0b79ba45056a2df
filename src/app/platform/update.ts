import { type ReadonlySignal, signal } from '@preact/signals';
import { busyReasons, whenNoPageIsBusy } from './busy-lock.ts';

const CHECK_EVERY_MS = 60 * 60 * 1000;

const waiting = signal(false);
let registration: ServiceWorkerRegistration | undefined;
let lastCheckMs = 0;

/** A newer version is on the phone; this page goes on with the one it was opened with until told otherwise. */
export const updateWaiting: ReadonlySignal<boolean> = waiting;

/** 'never': this browser keeps no copy of the app, so that opening it needs a network each time. */
export type WithoutNetwork = 'notYet' | 'ready' | 'never';

const withoutNetwork = signal<WithoutNetwork>('notYet');

/** Whether the whole app is on the phone, and opens with no network. */
export const opensWithoutNetwork: ReadonlySignal<WithoutNetwork> = withoutNetwork;

/** Makes the app work with no network and looks for newer versions. Never changes the version by itself. */
export async function startUpdates(): Promise<void> {
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) {
    withoutNetwork.value = 'never';
    return;
  }
  noticeOtherPagesUpdate();
  try {
    registration = await navigator.serviceWorker.register('./service-worker.js', { updateViaCache: 'none' });
  } catch {
    // Refused storage or a host without HTTPS: the app works, but only with a network.
    withoutNetwork.value = 'never';
    return;
  }
  lastCheckMs = Date.now();
  // Active only once its cache is filled whole.
  navigator.serviceWorker.ready.then(() => {
    withoutNetwork.value = 'ready';
  });
  noticeWaiting(registration);
  registration.addEventListener('updatefound', () => followInstalling(registration?.installing ?? null));
  followInstalling(registration.installing);
  setInterval(checkAtQuietMoment, CHECK_EVERY_MS);
  document.addEventListener('visibilitychange', checkAtQuietMoment);
}

/** Starts the newer version and reloads this page, and only this one. 'busy': a page has wet resin or a clock. */
export async function applyUpdate(): Promise<'applied' | 'busy'> {
  const applied = await whenNoPageIsBusy(async () => {
    if (registration?.waiting) await activate(registration.waiting);
    // A worker can take minutes to start: what was begun meanwhile is not torn away, and the offer comes again.
    if (busyReasons.value.length === 0) location.reload();
  });
  return applied ? 'applied' : 'busy';
}

/** A worker put to sleep can miss a word: it is asked again until it has started. */
const askAgainAfter = 1000;

function activate(worker: ServiceWorker): Promise<void> {
  return new Promise((resolve) => {
    const ask = () => worker.postMessage({ type: 'SKIP_WAITING' });
    const again = setInterval(ask, askAgainAfter);
    const look = () => {
      if (worker.state !== 'activated' && worker.state !== 'redundant') return;
      clearInterval(again);
      resolve();
    };
    worker.addEventListener('statechange', look);
    ask();
    look();
  });
}

function followInstalling(worker: ServiceWorker | null): void {
  worker?.addEventListener('statechange', () => {
    if (registration) noticeWaiting(registration);
  });
}

function noticeWaiting({ active, waiting: worker }: ServiceWorkerRegistration): void {
  // With no active worker this is the first install, which replaces nothing.
  if (active && worker) waiting.value = true;
}

/** Another page of ours may start the newer version: this one stays as it is, and may follow by a reload. */
function noticeOtherPagesUpdate(): void {
  let controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled) waiting.value = true;
    controlled = true;
  });
}

async function checkAtQuietMoment(): Promise<void> {
  const quiet = navigator.onLine && document.visibilityState === 'visible' && busyReasons.value.length === 0;
  if (!registration || !quiet || Date.now() - lastCheckMs < CHECK_EVERY_MS) return;
  lastCheckMs = Date.now();
  try {
    await registration.update();
  } catch {
    // No answer from the host: the next check is in an hour.
  }
}
