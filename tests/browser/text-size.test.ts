import { expect, test } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { benchScreens, goToBench, openShop, turnInto } from './support/bench-walk.ts';
import { lossesOf } from './support/losses.ts';

const executablePath = await findChromium();

// Letters twice the usual 16 px, as their reader has set them in the browser.
test.use({
  launchOptions: {
    ...(executablePath ? { executablePath } : {}),
    args: [...QUIET_FLAGS, '--blink-settings=defaultFontSize=32'],
  },
});

test('with letters twice as big no screen of the bench loses a word or a key, at 320 px too', async ({
  page,
}) => {
  test.setTimeout(180_000);
  page.setDefaultTimeout(10_000);
  await openShop(page);
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe('32px');
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
