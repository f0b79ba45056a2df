import { expect, type Page, test } from '@playwright/test';
import { cupOf } from '../app/shop-of.ts';
import { before, openAt } from './support/one-tube.ts';

test.use({ serviceWorkers: 'allow' });

const strip = (page: Page) => page.getByRole('complementary', { name: 'Running clocks' });

test('‘It is done’ on a notification answers its clock', async ({ page, context }) => {
  await context.grantPermissions(['notifications']);
  await openAt(page, '/', { minute: 30, events: [...before, ...cupOf('a', 2, 10)] });
  await expect(strip(page)).toContainText('Cup 2');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.evaluate(() => Object.defineProperty(document, 'visibilityState', { value: 'hidden' }));
  await page.clock.fastForward(11 * 60_000);
  const shown = () =>
    page.evaluate(async () => {
      const notes = await (await navigator.serviceWorker.ready).getNotifications();
      return notes.map((n) =>
        (n as Notification & { actions: { title: string }[] }).actions.map((a) => a.title),
      );
    });
  await expect.poll(shown).toContainEqual(['It is done']);
  const [worker] = context.serviceWorkers();
  await worker?.evaluate(async () => {
    const { registration } = globalThis as unknown as { registration: ServiceWorkerRegistration };
    const [notification] = await registration.getNotifications();
    const Click = Reflect.get(globalThis, 'NotificationEvent');
    globalThis.dispatchEvent(new Click('notificationclick', { notification, action: 'done' }));
  });
  await expect(strip(page)).not.toContainText('Cup 2');
  await expect(page.getByRole('button', { name: 'Undo: Cup 2 is empty' })).toBeVisible();
});

/** The app is closed once the worker sees no page of it any more. */
async function closeTheApp(page: Page): Promise<void> {
  await page.goto('about:blank');
  const [worker] = page.context().serviceWorkers();
  const pages = () =>
    worker?.evaluate(async () => {
      const { clients } = globalThis as unknown as {
        clients: { matchAll(of: object): Promise<readonly unknown[]> };
      };
      return (await clients.matchAll({ type: 'window', includeUncontrolled: true })).length;
    });
  await expect.poll(pages).toBe(0);
}

/** The worker's own answer to a thumb on 'It is done', with whatever the phone says to opening a window. */
async function doneIsPressed(page: Page, mayOpen: boolean): Promise<string | undefined> {
  const [worker] = page.context().serviceWorkers();
  return worker?.evaluate(async (may) => {
    const scope = globalThis as unknown as { registration: ServiceWorkerRegistration; clients: object };
    const opened = new Promise<string>((resolve) => {
      // A browser opens a window for a real thumb only; what it is asked to open is what counts here.
      if (may) Reflect.set(scope.clients, 'openWindow', async (url: string) => resolve(url));
      else setTimeout(() => resolve(''), 500);
    });
    const notes = await scope.registration.getNotifications();
    const notification = notes.find((note) => /Cup 2/.test(note.title));
    const Click = Reflect.get(globalThis, 'NotificationEvent');
    globalThis.dispatchEvent(new Click('notificationclick', { notification, action: 'done' }));
    return opened;
  }, mayOpen);
}

test('‘It is done’ while the app is closed opens it to write that down, and says so where it cannot', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['notifications']);
  await openAt(page, '/', { minute: 30, events: [...before, ...cupOf('a', 2, 10)] });
  await expect(strip(page)).toContainText('Cup 2');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.evaluate(() => Object.defineProperty(document, 'visibilityState', { value: 'hidden' }));
  await page.clock.fastForward(11 * 60_000);
  const [worker] = context.serviceWorkers();
  const bodies = () =>
    worker?.evaluate(async () => {
      const { registration } = globalThis as unknown as { registration: ServiceWorkerRegistration };
      return (await registration.getNotifications()).map((n) => n.body);
    });
  await expect.poll(bodies).toContainEqual(expect.stringContaining('STOP USING IT'));
  await closeTheApp(page);
  await doneIsPressed(page, false);
  await expect.poll(bodies).toContainEqual(expect.stringContaining('Not written down: the app is closed'));
  const opens = await doneIsPressed(page, true);
  await page.goto(opens ?? '');
  await expect(page.getByRole('button', { name: 'Undo: Cup 2 is empty' })).toBeVisible();
  // The same notification once more: its clock is not over any longer.
  await closeTheApp(page);
  await page.goto(opens ?? '');
  await expect(page.getByText('Nothing was written down just now.')).toBeVisible();
});
