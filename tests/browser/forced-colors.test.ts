import { expect, test } from '@playwright/test';
import { benchScreens, goToBench, openShop } from './support/bench-walk.ts';
import { contrastsOf } from './support/screen-look.ts';

const names = ['bench', 'route, wrap', 'pour resin, keypad', 'clocks', 'oven', 'demold'];
const screens = benchScreens.filter(({ name }) => names.includes(name));

test('where the system names the colors, words, keys and the one in focus are seen, in light and in dark', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await openShop(page);
  const unseen: string[] = [];
  for (const screen of screens) {
    await page.emulateMedia({ forcedColors: 'none' });
    await goToBench(page, screen);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ forcedColors: 'active', colorScheme, reducedMotion: 'reduce' });
      const at = `${screen.name}, ${colorScheme}`;
      const faint = (await contrastsOf(page)).filter(({ ratio, large }) => ratio < (large ? 4.5 : 7));
      unseen.push(...faint.map(({ ratio, text }) => `${at}: ${ratio.toFixed(2)} ${text}`));
      await page.keyboard.press('Tab');
      unseen.push(
        ...(
          await page.evaluate(() => {
            // What a browser forces on its own lays plates over letters on filled keys.
            const forced = getComputedStyle(document.body).forcedColorAdjust !== 'none';
            const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(
              document.activeElement ?? document.body,
            );
            const paper = getComputedStyle(document.documentElement).backgroundColor;
            const ringed =
              outlineStyle === 'solid' && Number.parseFloat(outlineWidth) >= 3 && outlineColor !== paper;
            const keys = [...document.querySelectorAll('.action, .hold, .secondary, .keypad button')].filter(
              (key) => key.checkVisibility() && getComputedStyle(key).borderTopColor === paper,
            );
            return [
              ...(forced ? ['colors are forced'] : []),
              ...(ringed ? [] : [`no ring round ${document.activeElement?.textContent}`]),
              ...keys.map((key) => `no border round ${key.textContent}`),
            ];
          })
        ).map((what) => `${at}: ${what}`),
      );
    }
  }
  expect(unseen).toEqual([]);
  expect(screens).toHaveLength(names.length);
});

test('who wants no motion sees a hold fill in steps, and nothing that moves', async ({ page }) => {
  test.setTimeout(120_000);
  await openShop(page);
  const short = benchScreens.find(({ name }) => name === 'pour resin, keypad, short');
  if (!short) throw new Error('no short pour');
  await goToBench(page, short);
  const moves = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('*')].flatMap((e) => {
        const { animationName, transitionDuration, transitionTimingFunction } = getComputedStyle(e);
        const glides = transitionDuration !== '0s' && !transitionTimingFunction.startsWith('steps');
        return animationName !== 'none' || glides ? [e.className] : [];
      }),
    );
  const fill = page.locator('.hold').first();
  await fill.evaluate((hold) => hold.setAttribute('data-held', 'true'));
  await expect(fill.locator('.hold-fill')).toHaveCSS('transition-timing-function', 'steps(4)');
  expect(await moves()).toEqual([]);
});
