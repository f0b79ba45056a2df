import { expect, type Page, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow' });

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

/** Tabs on until a control of this name has the focus, and sees that it shows. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const on = document.activeElement;
      const label = on instanceof HTMLInputElement ? on.labels?.[0]?.textContent : on?.textContent;
      return { words: label ?? '', ring: on ? getComputedStyle(on).outlineStyle : 'none' };
    });
    if (!name.test(at.words)) continue;
    expect(at.ring, at.words).not.toBe('none');
    return;
  }
  throw new Error(`the tab key never came to ${name}`);
}

test('a tube is started, ticked and weighed on a desk by keyboard alone', async ({ page }) => {
  await page.goto('./');
  await expect(heading(page)).toHaveText('Your bench is clear');
  await tabTo(page, /^Start the first tube$/);
  await page.keyboard.press('Enter');
  await expect(heading(page)).toHaveText('Start a tube');
  await tabTo(page, /^Name$/);
  await page.keyboard.type('Boom');
  await tabTo(page, /^Cloth on the scale$/);
  await page.keyboard.type('225');
  await tabTo(page, /^What is fiber volume\?|^\?What is fiber volume\?$/);
  await page.keyboard.press('Enter');
  const word = page.getByRole('dialog', { name: 'Fiber volume' });
  await expect(word.getByRole('img')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(word).toBeHidden();
  // The question has the focus again: on from there.
  await tabTo(page, /^Start Boom no. 1$/);
  await page.keyboard.press('Space');
  await expect(heading(page)).toHaveText('Mandrel prep');
  await page.keyboard.press('PageDown');
  await expect(page.locator('.undo-said')).toHaveText(/^Ticked/);
  await page.goto(`${page.url().replace('/build/', '/weigh/')}/cutCloth`);
  await expect(heading(page)).toHaveText('Cut cloth, dry');
  await page.keyboard.type('226x');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('5');
  await tabTo(page, /^Cloth weighs 225/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('list', { name: 'Weights' })).toContainText('225.0');
});

test.describe('in a tab of an iPhone', () => {
  test.use({
    userAgent:
      'Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1',
  });

  test('that the app keeps a record of its own is said before there is anything to lose', async ({
    page,
  }) => {
    for (const at of ['/', '/start', '/plans', '/plan/new']) {
      await page.goto(`./#${at}`);
      await expect(page.getByText('Put it on the home screen first'), at).toBeVisible();
    }
    await page.goto('./#/settings');
    await expect(page.getByText(/save a backup here first/)).toBeVisible();
  });
});

test('a word is looked up from the shelf, and from the record by what else it is called', async ({
  page,
}) => {
  await page.goto('./#/words');
  await page.getByLabel('Find').fill('gsm');
  await expect(page.getByRole('heading', { name: 'Weight of the cloth' })).toBeVisible();
  await page.goto('./#/record');
  await page.getByLabel('Find').fill('kick');
  await page.getByRole('link', { name: /^Pot life/ }).tap();
  await expect(page.getByRole('heading', { name: 'Pot life' })).toBeFocused();
});
