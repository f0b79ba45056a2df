/**
 * Answers a tap on a notification: brings the open page to the front, or opens the app where the notification says.
 * An open page is never moved elsewhere: the builder may have half a number typed in, and its clocks are on every screen.
 */
export async function showApp(clients: Clients, scope: string, data: unknown): Promise<void> {
  const pages = await clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = pages.filter((page) => page.url.startsWith(scope));
  const open = ours.find((page) => page.visibilityState === 'visible') ?? ours[0];
  if (open) await open.focus();
  else await clients.openWindow(new URL(hashOf(data), scope).href);
}

function hashOf(data: unknown): string {
  if (typeof data !== 'object' || data === null || !('hash' in data)) return '';
  return typeof data.hash === 'string' && data.hash.startsWith('#') ? data.hash : '';
}
