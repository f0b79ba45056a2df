import { expect, type Page, test } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { benchScreens, goToBench, openShop, turnInto } from './support/bench-walk.ts';
import { brokenWordsOf } from './support/broken-words.ts';
import { deskScreens, openDemo } from './support/desk-walk.ts';
import { lossesOf } from './support/losses.ts';

const executablePath = await findChromium();

// Letters twice the usual 16 px, as their reader has set them in the browser.
test.use({
  launchOptions: {
    ...(executablePath ? { executablePath } : {}),
    args: [...QUIET_FLAGS, '--blink-settings=defaultFontSize=32'],
  },
});

const is32px = (page: Page) =>
  page.evaluate(() => getComputedStyle(document.documentElement).fontSize === '32px');

test('with letters twice as big no screen of the bench loses a word or a key, at 320 px too', async ({
  page,
}) => {
  test.setTimeout(180_000);
  page.setDefaultTimeout(10_000);
  await openShop(page);
  expect(await is32px(page)).toBe(true);
  const lost: string[] = [];
  for (const screen of benchScreens) {
    await goToBench(page, screen);
    for (const size of [
      { width: 320, height: 568 },
      { width: 360, height: 740 },
    ]) {
      await turnInto(page, size);
      lost.push(...(await lossesOf(page)).map((what) => `${screen.name}, ${size.width} px: ${what}`));
    }
  }
  expect(lost).toEqual([]);
});

test('with letters twice as big no screen of the desk loses a word or a key', async ({ page }) => {
  test.setTimeout(240_000);
  page.setDefaultTimeout(20_000);
  await openDemo(page);
  expect(await is32px(page)).toBe(true);
  const lost: string[] = [];
  for (const screen of deskScreens) {
    await goToBench(page, screen);
    await page.waitForTimeout(500);
    lost.push(
      ...[...(await lossesOf(page)), ...(await brokenWordsOf(page))].map((what) => `${screen.name}: ${what}`),
    );
  }
  expect(lost).toEqual([]);
});
