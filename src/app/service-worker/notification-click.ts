/**
 * Answers a tap on a notification: brings the open page to the front, or opens the app where the notification says.
 * An open page is never moved elsewhere: the builder may have half a number typed in, and its clocks are on every screen.
 */
export async function showApp(clients: Clients, scope: string, data: unknown): Promise<void> {
  const open = await openPage(clients, scope);
  if (open) await open.focus();
  else await clients.openWindow(new URL(hashOf(data), scope).href);
}

/** 'It is done': one open page writes it down, or the app is opened to do so. The builder stays where they are. */
export async function answerDone(
  clients: Clients,
  scope: string,
  note: Pick<Notification, 'title' | 'tag' | 'data'>,
  registration: ServiceWorkerRegistration,
): Promise<void> {
  const { tag, data } = note;
  const open = await openPage(clients, scope);
  if (open) {
    open.postMessage({ type: 'CLOCK_DONE', key: tag });
    return;
  }
  const address = new URL(`?${new URLSearchParams({ done: tag })}${hashOf(data)}`, scope);
  await clients.openWindow(address.href).catch(() => sayItIsNotDone(note, registration));
}

/** Only an open app can write it down: where the phone will not open one, nobody may believe that it was. */
function sayItIsNotDone(
  { title, tag, data }: Pick<Notification, 'title' | 'tag' | 'data'>,
  registration: ServiceWorkerRegistration,
): Promise<void> {
  const body = 'Not written down: the app is closed. Open it and answer the clock there.';
  return registration.showNotification(title, { body, tag, data, requireInteraction: true });
}

async function openPage(clients: Clients, scope: string): Promise<WindowClient | undefined> {
  const pages = await clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = pages.filter((page) => page.url.startsWith(scope));
  return ours.find((page) => page.visibilityState === 'visible') ?? ours[0];
}

function hashOf(data: unknown): string {
  if (typeof data !== 'object' || data === null || !('hash' in data)) return '';
  return typeof data.hash === 'string' && data.hash.startsWith('#') ? data.hash : '';
}
