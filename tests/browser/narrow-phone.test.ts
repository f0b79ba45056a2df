import { expect, test } from '@playwright/test';
import { goToBench } from './support/bench-walk.ts';
import { deskScreens, openDemo } from './support/desk-walk.ts';

test('on the narrowest phone no screen of the desk scrolls sideways', async ({ page }) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 320, height: 568 });
  await openDemo(page);
  const wide: string[] = [];
  for (const screen of deskScreens) {
    await goToBench(page, screen);
    await page.waitForTimeout(300);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > 320) wide.push(`${screen.name}: ${width} px`);
  }
  expect(wide).toEqual([]);
});
