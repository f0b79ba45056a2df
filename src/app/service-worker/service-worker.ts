import { answerDone, showApp } from './notification-click.ts';
import { openPrecache, type PrecacheEntry } from './precache.ts';
import { answerWithoutWorker } from './without-worker.ts';

declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: readonly PrecacheEntry[] };

const scope = self.registration.scope;
const entries = self.__WB_MANIFEST;
const precache = openPrecache(entries, scope);

self.addEventListener('install', (event) => {
  const { name: cacheName, fill } = precache;
  event.waitUntil(fill().then((first) => answerWithoutWorker(event, { cacheName, entries, first, scope })));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(Promise.all([precache.dropEarlier(), self.clients.claim()]));
});

// The only way to an update: a page asks, on the builder's word, when no build is open and no clock runs.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope)) return;
  if (request.mode === 'navigate') {
    if (isThePage(request.url)) event.respondWith(precache.page());
  } else if (request.url !== scope) event.respondWith(precache.part(request));
});

self.addEventListener('notificationclick', (event) => {
  const { notification, action } = event;
  notification.close();
  const answered =
    action === 'done'
      ? answerDone(self.clients, scope, notification, self.registration)
      : showApp(self.clients, scope, notification.data);
  event.waitUntil(answered);
});

function isThePage(url: string): boolean {
  const path = url.slice(scope.length).replace(/[?#].*$/, '');
  return path === '' || path === 'index.html';
}
