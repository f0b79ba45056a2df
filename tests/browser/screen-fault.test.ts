import { expect, test } from '@playwright/test';

test('a screen that fails says so, leaves the tabs, and is tried again when it is opened again', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const make = document.createElementNS.bind(document);
    let failed = false;
    document.createElementNS = ((space: string, name: string, also?: ElementCreationOptions) => {
      if (name === 'fieldset' && !failed && location.hash === '#/settings') {
        failed = true;
        throw new Error('made to fail');
      }
      return make(space, name, also);
    }) as typeof document.createElementNS;
  });
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your bench is clear');
  await page.evaluate(() => {
    location.hash = '/settings';
  });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This screen cannot be shown');
  await expect(page.getByText('made to fail')).toBeVisible();
  await page.getByRole('link', { name: 'To the bench' }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your bench is clear');
  await page.evaluate(() => {
    location.hash = '/settings';
  });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This phone');
});
