import { expect, test } from '@playwright/test';
import { openDemo } from './support/desk-walk.ts';

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

  test('a cut or a search whose worker cannot be fetched says that, and blames no figure', async ({
    page,
    context,
  }) => {
    await page.route(/assets\/(nest|wanted)-worker-/, (route) => route.abort());
    await openDemo(page);
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    await page.evaluate(() => {
      location.hash = '#/plan/demo-plan-lower-mast/cutting';
    });
    await expect(page.getByText('What lays pieces out is not on the phone yet').first()).toBeVisible({
      timeout: 20_000,
    });
    await page.evaluate(() => {
      location.hash = '#/plan/demo-plan-lower-mast/loads/wanted';
    });
    await expect(page.getByText('What goes through the plies is not on the phone yet')).toBeVisible();
    await page.unroute(/assets\/(nest|wanted)-worker-/);
    await context.setOffline(false);
    await page.evaluate(() => {
      location.hash = '#/plan/demo-plan-lower-mast/cutting';
    });
    await expect(page.getByText('What lays pieces out is not on the phone yet')).toHaveCount(0);
    await expect(page.locator('svg.nest').first()).toBeVisible();
  });
});
