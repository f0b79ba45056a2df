import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import {
  description,
  lookForUpdate,
  openUnderWorker,
  settled,
  startUploadHost,
  type UploadHost,
  uploadNewerVersion,
} from './support/upload.ts';

test.use({ serviceWorkers: 'allow' });

let host: UploadHost;

test.beforeEach(async () => {
  host = await startUploadHost();
});

test.afterEach(() => host.remove());

/** The builder's word, as the app passes it on. */
async function startWaitingVersion(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { waiting } = await navigator.serviceWorker.ready;
    if (!waiting) throw new Error('no newer version is waiting');
    // A worker that was put to sleep can miss a word: a builder would press again, and so does this.
    for (let ask = 0; waiting.state !== 'activated'; ask++) {
      if (ask % 20 === 0) waiting.postMessage({ type: 'SKIP_WAITING' });
      await new Promise((tick) => setTimeout(tick, 50));
    }
  });
}

test('after one visit, deep in a host, the app opens with the host gone', async ({ page, context }) => {
  await openUnderWorker(page, host.address);
  await host.stop();
  const again = await context.newPage();
  for (const path of ['', 'index.html', '?from=home#/anywhere']) {
    await again.goto(host.address + path);
    await expect(again.getByRole('heading').first()).toBeVisible();
  }
});

test('every file of the app is on the phone after one visit', async ({ page }) => {
  await openUnderWorker(page, host.address);
  const stored = await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    return (await (await caches.open(name)).keys()).map(({ url }) => url);
  });
  const html = readFileSync(join(host.folder, 'index.html'), 'utf8');
  const named = [...html.matchAll(/(?:src|href)="\.\/([^"]+)"/g)].map(([, file]) => host.address + file);
  expect(named.length).toBeGreaterThan(3);
  expect(stored).toEqual(expect.arrayContaining([...named, `${host.address}index.html`]));
  for (const ending of ['.js', '.css', '.woff2', '.png', '.svg', '.webmanifest']) {
    expect(
      stored.filter((url) => url.endsWith(ending)),
      ending,
    ).not.toEqual([]);
  }
});

test('nothing is asked of anybody else, and the policy refuses nothing of ours', async ({
  page,
  context,
}) => {
  const elsewhere: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => {
    if (!request.url().startsWith(host.address)) elsewhere.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await openUnderWorker(page, host.address);
  await page.reload();
  await expect(page.getByRole('heading').first()).toBeVisible();
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
});

/** What runs of a script and a style written into the page. */
const whatRuns = (page: Page) =>
  page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "ran"';
    document.head.append(script);
    const style = document.createElement('style');
    style.textContent = 'html { outline: 7px solid }';
    document.head.append(style);
    return [document.title === 'ran', getComputedStyle(document.documentElement).outlineWidth === '7px'];
  });

test('the policy bites: script and style written into the page do not run', async ({ page }) => {
  await page.goto(host.address);
  expect(await whatRuns(page)).toEqual([false, false]);
});

test('the policy bites as well in the page on the phone, whatever the host sent with it', async ({
  page,
}) => {
  host.sendHeaders({ 'Content-Security-Policy': undefined });
  const fromHost = await page.goto(host.address);
  expect(fromHost?.headers()['content-security-policy']).toBeUndefined();
  expect(await whatRuns(page)).toEqual([false, false]);
  await openUnderWorker(page, host.address);
  const html = readFileSync(join(host.folder, 'index.html'), 'utf8');
  const inPage = /content="(default-src[^"]+)"/.exec(html)?.[1];
  for (const path of ['', 'index.html', '?from=home']) {
    const answer = await page.goto(host.address + path);
    expect(answer?.headers()['content-security-policy'], path).toBe(inPage);
    expect(await whatRuns(page), path).toEqual([false, false]);
  }
});

test('page and parts come from the phone without waking the worker, also when the host varies them', async ({
  page,
}) => {
  host.sendHeaders({ Vary: 'Accept-Encoding, Origin' });
  await openUnderWorker(page, host.address);
  await host.stop();
  await page.reload();
  await expect(page.getByRole('heading').first()).toBeVisible();
  // At the time of the first screen: what comes later may wake it.
  const givenBy = await page.evaluate(() =>
    ['navigation', 'resource'].flatMap((type) =>
      performance.getEntriesByType(type).map((entry) => {
        const { name, workerFinalSourceType } = entry.toJSON();
        return [new URL(name).pathname.split('.').at(-1), workerFinalSourceType];
      }),
    ),
  );
  expect(givenBy.length).toBeGreaterThan(3);
  expect(givenBy.filter(([, source]) => source !== 'cache')).toEqual([]);
});

test('a newer version waits through reloads and new pages, until a page gives the word', async ({
  page,
  context,
}) => {
  await openUnderWorker(page, host.address);
  const first = await description(page);
  uploadNewerVersion(host);
  expect(await lookForUpdate(page)).toBe('installed');
  await settled(page);
  await page.reload();
  expect(await description(page)).toBe(first);
  const second = await context.newPage();
  await openUnderWorker(second, host.address);
  expect(await description(second)).toBe(first);
  await settled(second);

  await startWaitingVersion(page);
  expect(await description(second)).toBe(first);
  await page.reload();
  expect(await description(page)).toBe('newer');
});

test('a page of the version before still finds its own parts after an update', async ({ page }) => {
  await openUnderWorker(page, host.address);
  const part = 'assets/only-in-the-version-before.js';
  await page.evaluate(async (url) => {
    const [name = ''] = await caches.keys();
    await (await caches.open(name)).put(url, new Response('/* old */'));
  }, host.address + part);
  uploadNewerVersion(host);
  await lookForUpdate(page);
  await startWaitingVersion(page);
  expect(await page.evaluate(async (url) => (await fetch(url)).text(), host.address + part)).toBe(
    '/* old */',
  );
});

test('a version caught halfway through its upload is not taken, and the one on the phone stays whole', async ({
  page,
}) => {
  await openUnderWorker(page, host.address);
  const before = await page.evaluate(() => caches.keys());
  host.edit('service-worker.js', (code) => code.replace(/(revision["`']?:["`'])/, '$1newer'));
  host.edit('index.html', (html) => html.replace(/\.\/assets\/([^"]+)\.js"/, './assets/$1-next.js"'));
  expect(await lookForUpdate(page)).toBe('redundant');
  expect(await page.evaluate(() => caches.keys())).toEqual(before);
  await host.stop();
  await page.reload();
  await expect(page.getByRole('heading').first()).toBeVisible();
});

test('a tap on a notification brings the open page forward and leaves it where it is', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['notifications']);
  await openUnderWorker(page, `${host.address}#/somewhere`);
  const opened = context.pages().length;
  const at = page.url();
  const [worker] = context.serviceWorkers();
  const left = await worker?.evaluate(async () => {
    const { registration } = globalThis as unknown as { registration: ServiceWorkerRegistration };
    await registration.showNotification('Cup 2', { data: { hash: '#/elsewhere' } });
    const [notification] = await registration.getNotifications();
    const Click = Reflect.get(globalThis, 'NotificationEvent');
    globalThis.dispatchEvent(new Click('notificationclick', { notification }));
    await new Promise((tick) => setTimeout(tick, 200));
    return (await registration.getNotifications()).length;
  });
  expect(left).toBe(0);
  expect(context.pages()).toHaveLength(opened);
  expect(page.url()).toBe(at);
});
