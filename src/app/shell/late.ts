import { signal } from '@preact/signals';

type Parts = typeof import('./late-parts.tsx');

/** What rings, flashes, undoes and wipes: fetched a moment after the first screen, which need not wait for it. */
export const late = signal<Parts | undefined>(undefined);

export async function fetchLateParts(): Promise<void> {
  try {
    const parts = await import('./late-parts.tsx');
    parts.startAlarms();
    parts.watchPhoneClock();
    late.value = parts;
    parts.nameManifest();
    // A page that was closed in the middle may have left its export on the disk.
    parts.dropExports().catch(() => {});
  } catch {
    // The network went before it was on the phone.
    addEventListener('online', fetchLateParts, { once: true });
  }
}
