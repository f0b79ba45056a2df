import { type ReadonlySignal, signal } from '@preact/signals';
import { type InstallWay, installWay } from './install-words.ts';

interface InstallPrompt extends Event {
  prompt(): Promise<{ outcome: 'accepted' | 'dismissed' }>;
}

const prompt = signal<InstallPrompt | undefined>(undefined);

/** Whether it runs from the home screen. */
export const installed: boolean =
  matchMedia('(display-mode: standalone)').matches ||
  (navigator as Navigator & { standalone?: boolean }).standalone === true;

/** How this browser puts a page on the home screen. */
export const wayHere: InstallWay = installWay(navigator.userAgent, navigator.maxTouchPoints);

/** In a browser tab of an iPhone or iPad, whose record the installed app does not share. */
export const iOSTab: boolean = wayHere === 'iOS' && !installed;

/** The browser's own offer to install, kept for when the builder has seen what it is for. */
export const installOffer: ReadonlySignal<InstallPrompt | undefined> = prompt;

export function keepInstallOffer(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    prompt.value = event as InstallPrompt;
  });
  addEventListener('appinstalled', () => {
    prompt.value = undefined;
  });
}

/** Shows the browser's own question; only from a tap, and only once for each offer. */
export async function install(): Promise<void> {
  const offer = prompt.value;
  prompt.value = undefined;
  await offer?.prompt();
}
