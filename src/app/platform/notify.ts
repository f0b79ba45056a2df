import { type ReadonlySignal, signal } from '@preact/signals';

export type MayNotify = NotificationPermission | 'unsupported';

// An iPhone has it only in the installed app; phones show one only through the service worker.
const supported = 'Notification' in window && 'serviceWorker' in navigator;
const state = signal<MayNotify>(supported ? Notification.permission : 'unsupported');

export const mayNotify: ReadonlySignal<MayNotify> = state;

/** Asks the builder. Only ever from a tap. */
export async function askToNotify(): Promise<void> {
  if (!supported) return;
  state.value = await Notification.requestPermission();
}

export interface Note {
  title: string;
  body: string;
  /** A later note with the same tag takes its place. */
  tag: string;
  /** Where a tap on it leads when the app is closed: '#/clocks' */
  hash: string;
  /** Words of the key that answers it, where the phone shows keys. */
  done?: string | undefined;
}

export async function notify({ title, body, tag, hash, done }: Note): Promise<void> {
  if (state.value !== 'granted') return;
  const registration = await navigator.serviceWorker.getRegistration();
  if (!registration?.active) return;
  const options = {
    body,
    tag,
    renotify: true,
    requireInteraction: true,
    data: { hash },
    ...(done && { actions: [{ action: 'done', title: done }] }),
  };
  // Refused when permission was taken back since: sound and flash still tell.
  await registration.showNotification(title, options).catch(() => {});
}

/** Takes a note away once what it says is answered. */
export async function withdraw(tag: string): Promise<void> {
  if (state.value !== 'granted') return;
  const registration = await navigator.serviceWorker.getRegistration();
  for (const note of (await registration?.getNotifications({ tag })) ?? []) note.close();
}
