import { expect, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow' });

test('says once that it is ready without a network, and on the Data screen ever after', async ({ page }) => {
  await page.goto('/');
  await expect(page.getByText('Ready without a network')).toBeVisible({ timeout: 40_000 });
  await page.goto('/#/data');
  await expect(page.getByRole('row', { name: 'Opens without a network' })).toContainText('yes');
  await page.reload();
  await expect(page.getByRole('row', { name: 'Opens without a network' })).toContainText('yes');
});

test.describe('before the app is on the phone', () => {
  test.use({ serviceWorkers: 'block' });

  test('a screen that cannot be fetched says so, and opens by itself with the network back', async ({
    page,
    context,
  }) => {
    const failures: string[] = [];
    page.on('pageerror', (error) => failures.push(error.message));
    const timerScreen = /assets\/timer-screen-/;
    await page.route(timerScreen, (route) => route.abort());
    await page.goto('/');
    await expect(page.getByRole('button', { name: 'Start the first tube' })).toBeVisible();
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    await page.evaluate(() => {
      location.hash = '#/timer';
    });
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('This screen is not on the phone yet');
    await page.getByRole('button', { name: 'Try again' }).tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('This screen is not on the phone yet');
    await page.unroute(timerScreen);
    await context.setOffline(false);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('How long?');
    const styles = page.locator('link[rel=stylesheet][href*="timer-screen-"]');
    await expect.poll(() => styles.evaluate((link: HTMLLinkElement) => link.sheet !== null)).toBe(true);
    expect(failures.filter((message) => message.includes('import'))).toEqual([]);
  });
});
