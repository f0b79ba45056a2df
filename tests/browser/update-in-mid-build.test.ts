import { expect, type Page, test } from '@playwright/test';
import { heading, holdDown, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { startTube, tickLine } from './support/job.ts';
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

const offer = (page: Page) => page.getByText('A new version is ready.');
const strip = (page: Page) => page.getByRole('complementary', { name: 'Running clocks' });
const ticked = (page: Page) => page.getByRole('checkbox', { checked: true });
const timeLine = (page: Page) => page.getByRole('region', { name: 'Time line' }).getByRole('listitem');

const toHash = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to;
  }, hash);

/** A tube with one step ticked, and a clock that has twenty minutes to go. */
async function inMidBuild(page: Page): Promise<{ phone: Phone; route: string }> {
  await openUnderWorker(page, host.address);
  const phone = phoneOnRealTime(page);
  await startTube(phone);
  await tickLine(phone, 'Mandrel picked');
  const route = new URL(page.url()).hash;
  await toHash(page, '#/timer');
  await press(phone, '20 min');
  await expect(strip(page)).toContainText('Timer, 20 min');
  return { phone, route };
}

/** A page that was taken over or opened anew has lost what was hung on it. */
const mark = (page: Page) => page.evaluate(() => Object.assign(globalThis, { untouched: true }));
const isUntouched = (page: Page) => page.evaluate(() => Reflect.get(globalThis, 'untouched') === true);

async function endTheTimer(phone: Phone): Promise<void> {
  await toHash(phone.page, '#/clocks');
  await holdDown(phone, /^Hold to end it now/);
  await expect(strip(phone.page)).toBeHidden();
}

test('a version published in mid-build takes nothing over: work goes on being written, and it loads at the builder’s word once nothing runs', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const { phone, route } = await inMidBuild(page);
  const first = await description(page);
  await mark(page);
  uploadNewerVersion(host);
  expect(await lookForUpdate(page)).toBe('installed');

  await toHash(page, '#/');
  await expect(heading(phone)).toHaveText('On the bench');
  await expect(offer(page)).toBeHidden();
  await toHash(page, route);
  await tickLine(phone, 'Rolled on the bench');
  expect(await isUntouched(page)).toBe(true);

  await settled(page);
  // A thumb that pulls the page down, or a phone that ran out of memory: still the version the tube was begun with.
  await page.reload();
  await expect(ticked(page)).toHaveCount(2);
  expect(await description(page)).toBe(first);
  await tickLine(phone, 'Edges deburred');
  await toHash(page, '#/');
  await expect(heading(phone)).toHaveText('On the bench');
  await expect(offer(page)).toBeHidden();
  await expect(strip(page)).toContainText('Timer, 20 min');

  await settled(page);
  await endTheTimer(phone);
  await toHash(page, '#/');
  await expect(offer(page)).toBeVisible();
  expect(await description(page)).toBe(first);
  await press(phone, 'Load it now');
  await expect.poll(() => description(page)).toBe('newer');
  await expect(heading(phone)).toHaveText('On the bench');
  await expect(offer(page)).toBeHidden();
  await toHash(page, route);
  await expect(ticked(page)).toHaveCount(3);
  await toHash(page, route.replace('/build/', '/record/build/'));
  await expect(timeLine(page)).toHaveCount(3);
  await expect(page.getByRole('region', { name: 'Notices' })).toBeEmpty();
});

test('a version that starts late, when work was begun again, leaves that alone and is offered afterwards', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await openUnderWorker(page, host.address);
  const phone = phoneOnRealTime(page);
  await startTube(phone);
  await settled(page);
  uploadNewerVersion(host);
  expect(await lookForUpdate(page)).toBe('installed');
  // The browser lets the worker hear the word only when the test says so.
  await page.evaluate(() => {
    const { postMessage } = ServiceWorker.prototype;
    const heard = new Promise((start) => Object.assign(globalThis, { start }));
    ServiceWorker.prototype.postMessage = function (this: ServiceWorker, word: unknown) {
      heard.then(() => postMessage.call(this, word));
    };
  });
  await mark(page);
  await toHash(page, '#/');
  await press(phone, 'Load it now');
  await expect(page.getByText('Loading the new version: the app opens anew by itself.')).toBeVisible();
  await toHash(page, '#/timer');
  await press(phone, '20 min');
  await expect(strip(page)).toContainText('Timer, 20 min');
  await page.evaluate(() => Reflect.get(globalThis, 'start')());
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting === null);
  await settled(page);
  expect(await isUntouched(page)).toBe(true);

  await endTheTimer(phone);
  await toHash(page, '#/');
  await press(phone, 'Load it now');
  await expect.poll(() => description(page)).toBe('newer');
  await expect(heading(phone)).toHaveText('On the bench');
});
