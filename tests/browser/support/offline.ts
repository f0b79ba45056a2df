import { expect, type Page } from '@playwright/test';

/** The first visit, the only one with a network: until the worker has all of the app and holds the page. */
export async function firstVisit(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await appIsKept(page);
}

/** All of the app is on the phone, and this page is served from there. */
export async function appIsKept(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** From now on no network, for reloads too. */
export async function unplug(page: Page): Promise<void> {
  await page.context().setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
}
