import { expect, type Page, test } from '@playwright/test';
import { cupOf, type Event, minutes } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { before, openAt } from './support/one-tube.ts';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

const wiping = (page: Page) => page.getByRole('dialog', { name: 'Wipe the glass' });
const wipe = (page: Page) => page.getByRole('button', { name: /^Wipe glass/ });
const spent = (page: Page) => page.clock.runFor(500);

for (const at of [
  `/build/${buildHeader.id}`,
  `/mix/${buildHeader.id}`,
  '/clocks',
  '/timer',
  `/weigh/${buildHeader.id}/cured`,
]) {
  test(`one press on ${at} lets the screen be wiped for 15 s, clocks run on, and it ends by itself`, async ({
    page,
  }) => {
    await openAt(page, at, { minute: 20, events: [...before, ...cupOf('a', 2, 10)] });
    const title = await heading(page).textContent();
    await wipe(page).tap();
    await expect(wiping(page)).toContainText('15');
    await expect(wiping(page)).toContainText('Cup 2');
    const left = () => wiping(page).locator('.wipe-clock').first().textContent();
    const first = await left();
    const touches = await page.context().newCDPSession(page);
    for (const [x, y] of [
      [180, 700],
      [60, 500],
      [300, 620],
      [20, 20],
    ] as const) {
      await touches.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
      await touches.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    }
    await page.keyboard.press('PageDown');
    await page.keyboard.press('Escape');
    await page.clock.runFor(10_000);
    await expect(wiping(page)).toBeVisible();
    expect(await left()).not.toBe(first);
    await page.clock.runFor(5_200);
    await expect(wiping(page)).toBeHidden();
    if (at !== '/clocks') await expect(heading(page)).toHaveText(title ?? '');
    await expect(page.getByRole('button', { name: /^Undo/ })).toHaveCount(0);
    await spent(page);
    // And touches count again.
    await wipe(page).tap();
    await expect(wiping(page)).toBeVisible();
  });
}

test('an alarm shows through while the screen is wiped', async ({ page }) => {
  await openAt(page, `/build/${buildHeader.id}`, {
    minute: 39.9,
    events: [...before, ...cupOf('a', 2, 10)],
  });
  await wipe(page).tap();
  await page.clock.runFor(9_000);
  await expect(wiping(page)).toContainText('STOP USING IT');
  await expect(wiping(page).locator('.alarm-flash-stop')).toBeVisible();
});

test('page down, enter and space are the main action of a route, once for a key that is held', async ({
  page,
}) => {
  await openAt(page, `/build/${buildHeader.id}`, { minute: 20, events: before.slice(0, -3) });
  const ticked = page.locator('.undo-said');
  const main = page.locator('.screen-actions .action');
  for (const key of ['PageDown', 'Enter', 'Space']) {
    const label = (await main.textContent()) ?? '';
    await page.keyboard.down(key);
    // A held key comes again and again.
    for (let i = 0; i < 5; i++) await page.keyboard.down(key);
    await page.keyboard.up(key);
    await expect(main).not.toHaveText(label);
    await expect(ticked).toHaveText(/^Ticked/);
    await spent(page);
  }
});

test('a foot switch pours after a thumb typed: the key last touched is not pressed again', async ({
  page,
}) => {
  await openAt(page, `/mix/${buildHeader.id}`, { minute: 20, events: before });
  await page.locator('.screen-actions .action').tap();
  await expect(heading(page)).toHaveText('Pour resin to');
  for (const key of '100')
    await page.locator('.keypad').getByRole('button', { name: key, exact: true }).tap();
  const reads = page.locator('.pour-scale strong');
  await expect(reads).toContainText('100');
  await spent(page);
  await page.keyboard.press('Enter');
  // The cup takes 100 g of resin and asks for its hardener.
  await expect(heading(page)).not.toHaveText('Pour resin to');
});

test('a control reached by keyboard keeps its own enter, and behind a sheet nothing is pressed', async ({
  page,
}) => {
  await openAt(page, `/build/${buildHeader.id}`, { minute: 20, events: before.slice(0, -3) });
  const main = page.locator('.screen-actions .action');
  const label = (await main.textContent()) ?? '';
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'All stages' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await expect(main).toHaveText(label);
  await page.keyboard.press('PageDown');
  await expect(page.getByRole('dialog')).toBeVisible();
  await expect(main).toHaveText(label);
});

test('the alarm is tried out from the clocks and from the settings: all three, by name', async ({ page }) => {
  await page.clock.install({ time: minutes(0) });
  for (const at of ['/clocks', '/settings']) {
    await page.goto(`./#${at}`);
    await page.getByRole('button', { name: 'Test the alarm' }).tap();
    const now = page.locator('.test-alarm li[data-now="true"]');
    const heard: string[] = [];
    for (let i = 0; i < 60 && heard.length < 3; i++) {
      await page.clock.runFor(250);
      const name = (await now.count()) > 0 ? ((await now.textContent()) ?? '') : '';
      if (name && name !== heard.at(-1)) heard.push(name);
    }
    expect(heard.map((name) => name.replace(/^▶ |:.*$/g, ''))).toEqual(['Nearly', 'Due now', 'Over']);
    await page.clock.runFor(5000);
    await expect(page.locator('.test-alarm')).toContainText(/Not heard\?|made no sound/);
    await expect(page.getByRole('list', { name: 'Where an alarm does not reach' })).toContainText(
      'With the app closed nothing rings',
    );
  }
});

test('two clocks come in turn where both would be small, digits stay on the screen, and the one that is due fills it', async ({
  page,
}) => {
  const other = {
    minute: 10,
    kind: 'clockStarted',
    clock: 'w',
    purpose: 'free',
    label: 'Oven',
    lasts: 1500,
    warns: 0,
  };
  await openAt(page, '/clocks', { minute: 12, events: [...before, ...cupOf('a', 2, 10), other as Event] });
  const tiles = page.locator('.clock-tile');
  await expect(tiles).toHaveCount(1);
  await expect(tiles).toContainText('Clock 1 of 2');
  for (const size of [
    { width: 360, height: 740 },
    { width: 320, height: 568 },
    { width: 740, height: 360 },
  ]) {
    await page.setViewportSize(size);
    await page.clock.runFor(100);
    for (const digits of await page.locator('.clock-face-figure').all()) {
      const box = await digits.boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= size.width).toBe(true);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width);
  }
  await page.setViewportSize({ width: 360, height: 740 });
  await page.clock.runFor(6000);
  await tiles.filter({ hasText: 'Oven' }).tap();
  await expect(heading(page)).toHaveText('Oven, minutes left');
  // 20 mm at 160 px to the inch
  const box = await page.locator('.clock-face-line').first().boundingBox();
  expect((box?.height ?? 0) * (0.672 / 0.74)).toBeGreaterThan((20 / 25.4) * 160);
  await page.getByRole('button', { name: 'All clocks' }).tap();
  await expect(tiles).toContainText('of 2, next in');
  await page.clock.fastForward(24 * 60_000);
  await expect(heading(page)).toContainText('Oven is over');
});

test('a clock answered by a stray touch comes back with one press', async ({ page }) => {
  await openAt(page, '/clocks', { minute: 43, events: [...before, ...cupOf('a', 2, 10)] });
  await expect(heading(page)).toContainText('Cup 2 is over');
  await page.getByRole('button', { name: 'Cup is empty' }).tap();
  await page.getByRole('button', { name: 'Undo: Cup 2 is empty' }).tap();
  await expect(heading(page)).toContainText('Cup 2 is over');
});

test('ten minutes of a pot life are told to a screen reader in a few words, and its end at once', async ({
  page,
}) => {
  await openAt(page, `/build/${buildHeader.id}`, {
    minute: 29.5,
    events: [...before, ...cupOf('a', 2, 10)],
  });
  await expect(page.getByText('Cup 2: 20 minutes or less')).toBeAttached();
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(globalThis, { said });
    const live = '[role=status], [role=alert], [aria-live]';
    new MutationObserver((changes) => {
      const regions = changes.map(({ target }) =>
        (target instanceof Element ? target : target.parentElement)?.closest(live),
      );
      for (const region of new Set(regions)) if (region?.textContent) said.push(region.textContent);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const said = () => page.evaluate(() => Reflect.get(globalThis, 'said') as string[]);
  for (let i = 0; i < 60; i++) await page.clock.runFor(10_000);
  expect((await said()).length).toBeLessThanOrEqual(3);
  expect(await said()).toContain('Cup 2: ten minutes or less');
  await page.clock.fastForward(2 * 60_000);
  await expect.poll(said).toContain('Cup 2: stop using it');
});

test('no key lies within 12 px of the edge where a hand holds the phone', async ({ page }) => {
  await openAt(page, '/', { minute: 20, events: [...before, ...cupOf('a', 2, 10)] });
  for (const at of [`/build/${buildHeader.id}`, `/mix/${buildHeader.id}`, '/clocks', '/timer', '/start']) {
    await page.goto(`./#${at}`);
    await page.clock.runFor(500);
    await heading(page).waitFor();
    const near = await page.evaluate(() =>
      [...document.querySelectorAll('main button, .screen-actions button')]
        .map((b) => ({ words: b.textContent, ...b.getBoundingClientRect().toJSON() }))
        .filter((b) => b.width > 0 && (b.left < 12 || b.right > innerWidth - 12)),
    );
    expect(near, at).toEqual([]);
  }
});
