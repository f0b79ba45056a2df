import { expect, type Page, test } from '@playwright/test';
import { type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { button, follow, heading, loosely, phoneWithOwnClock, press } from './support/hands.ts';
import { seed } from './support/seed.ts';

test.use({ actionTimeout: 8000 });

async function openEmpty(page: Page) {
  await page.clock.install({ time: minutes(60) });
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your bench is clear');
  return phoneWithOwnClock(page);
}

/** The app an hour after a tube was begun. */
async function openWithTube(page: Page, events: readonly Event[] = []) {
  const phone = await openEmpty(page);
  await seed(page, [buildHeader, ...entriesOf(buildHeader.id, events)]);
  await expect(heading(phone)).toHaveText('On the bench');
  return phone;
}

const dry = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));

/** What stands under a field. */
async function saysUnder(page: Page, label: string): Promise<string> {
  const id = await page.getByLabel(label, { exact: true }).getAttribute('aria-describedby');
  return ((await page.locator(`[id="${id}"]`).textContent()) ?? '').replace(/\s/g, ' ');
}

const wrongFigures = [
  ['Cloth on the scale', '', 'Write a mass like 116.1 g or 4.1 oz.'],
  ['Cloth on the scale', '0', 'Zero will not do here: write a mass like 116.1 g or 4.1 oz.'],
  ['Cloth on the scale', '-5', 'This mass cannot be below zero: write it without the minus.'],
  ['Cloth on the scale', '1,500', '1,500 could be 1.5 or 1500: write 1.5 or 1500.'],
  ['Cloth on the scale', '1.5.2', '1.5.2 is not a number: write a mass like 116.1 g or 4.1 oz.'],
  ['Cloth on the scale', '12 apples', '12 apples is not a mass: g, kg, oz or lb.'],
  ['Cloth on the scale', '10,000 kg', '10,000 could be 10 or 10000: write 10 or 10000.'],
  ['Cloth on the scale', '10000 kg', 'That is more than 10 kg: check the figure.'],
  ['Cloth on the scale', '250 gsm', '250 gsm is not a mass: g, kg, oz or lb.'],
  ['Cloth on the scale', '240 250', '240 250 has two numbers: write one, like 116.1 g.'],
  [
    'Cloth on the scale',
    'cut on Friday, blue folder',
    'cut on Friday, blue folder is not a number: write a mass',
  ],
  ['Fiber volume', '1', '1 could be 1 % or 100 %: write it with its % sign.'],
  ['Fiber volume', '95 %', 'That is more than 75 %: check the figure.'],
  ['Resin to fabric', '55', 'Write a ratio like 55:45: the parts by weight, with a colon between.'],
  ['Resin to fabric', '0:45', 'Both parts of a ratio are above zero: write it like 55:45.'],
  ['Lost in each cup', '10 kg', 'That is more than 200 g: check the figure.'],
  ['Squeezed out', '-3', 'This share cannot be below zero: write it without the minus.'],
] as const;

test('a figure that cannot be read gets one sentence at its field, stays as typed, and starts nothing', async ({
  page,
}) => {
  const phone = await openEmpty(page);
  await press(phone, 'Start the first tube');
  await page.getByLabel('Name').fill('Boom');
  await page.getByLabel('Cloth on the scale').fill('240');
  for (const [label, typed, says] of wrongFigures) {
    const field = page.getByLabel(label, { exact: true });
    const before = await field.inputValue();
    await field.fill(typed);
    await press(phone, 'Start Boom no. 1');
    await expect(field).toHaveAttribute('aria-invalid', 'true');
    expect(await saysUnder(page, label)).toContain(says);
    await expect(field).toHaveValue(typed);
    await expect(heading(phone)).toHaveText('Start a tube');
    await field.fill(before);
  }
});

test('figures written another way are read, and what they were read as is said', async ({ page }) => {
  const phone = await openEmpty(page);
  await press(phone, 'Start the first tube');
  const cloth = page.getByLabel('Cloth on the scale');
  // 100 g of carbon to 35 % by volume keep 100*767/626.5 = 122.4 g of resin: 1.5 g keep 1.8 g, 4.5 oz 156.2 g.
  await cloth.fill('1,5');
  await expect(page.getByRole('status')).toContainText(loosely('1.8 gstays in the tube'));
  await cloth.fill('4 1/2 oz');
  expect(await saysUnder(page, 'Cloth on the scale')).toBe('= 127.6 g');
  await expect(page.getByRole('status')).toContainText(loosely('156.2 gstays in the tube'));
});

test('a tube without a name is asked for one, and keeps its other figures', async ({ page }) => {
  const phone = await openEmpty(page);
  await press(phone, 'Start the first tube');
  await page.getByLabel('Cloth on the scale').fill('240');
  await press(phone, 'Start this tube');
  expect(await saysUnder(page, 'Name')).toBe('Give the tube a name, like Upper mast.');
  await follow(phone, '‹ Bench');
  await press(phone, 'Start the first tube');
  await expect(page.getByLabel('Cloth on the scale')).toHaveValue('240');
});

test('hardener cannot go in before resin', async ({ page }) => {
  const phone = await openWithTube(page, dry);
  await follow(phone, 'Mix the first cup');
  await press(phone, 'Tare cup 1 and start');
  await expect(heading(phone)).toHaveText('Pour resin to');
  await expect(page.getByRole('button', { name: /hardener/i })).toHaveCount(0);
});

test('a weight lighter than its dry cloth is doubted, and taken only when held', async ({ page }) => {
  const phone = await openWithTube(page, dry);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/weigh/${buildHeader.id}/cured`);
  await page.getByRole('button', { name: '9', exact: true }).tap();
  await expect(page.getByText(/Lighter than its dry cloth/)).toBeVisible();
  await expect(page.getByRole('button', { name: /^Tube weighs/ })).toHaveCount(0);
  await expect(button(phone, loosely('Record 9.0 g as it is'))).toBeVisible();
});

test('a line of the record cannot be moved to a day that is still to come', async ({ page }) => {
  const phone = await openWithTube(page, [{ minute: 5, kind: 'note', text: 'Cloth from the blue roll' }]);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/record/build/${buildHeader.id}`);
  await page.getByRole('link', { name: /blue roll/ }).tap();
  await page.getByLabel('When it happened').fill('2031-01-01T10:00');
  await page.getByLabel('Note').fill('Cloth from the green roll');
  await press(phone, 'It was like this');
  expect(await saysUnder(page, 'When it happened')).toBe(
    'That is still to come: give the time when it happened.',
  );
  await expect(page.getByLabel('When it happened')).toHaveValue('2031-01-01T10:00');
  await expect(page.getByLabel('Note')).toHaveValue('Cloth from the green roll');
});

/** From now on the phone has no room, until the page is loaded again or `makeRoom` is called. */
async function fillDisk(page: Page): Promise<void> {
  await page.evaluate(() => {
    const store = IDBObjectStore.prototype;
    const { put, add } = store;
    const full = () => {
      throw new DOMException('The disk is full', 'QuotaExceededError');
    };
    Object.assign(store, { put: full, add: full });
    Object.assign(globalThis, { makeRoom: () => Object.assign(store, { put, add }) });
  });
}

const makeRoom = (page: Page) => page.evaluate(() => Reflect.get(globalThis, 'makeRoom')());

test('with no room left a press is not shown as done, is held wherever one goes, and is written once there is room', async ({
  page,
}) => {
  const phone = await openWithTube(page);
  await press(phone, 'Go on with Boom no. 1');
  await fillDisk(page);
  await press(phone, 'Mandrel picked, diameter measured');
  const notice = page.getByRole('alert').filter({ hasText: 'Not saved' });
  await expect(notice).toContainText('this phone has no room left. Free some space, then try again');
  const step = page.getByRole('checkbox', { name: /^Mandrel picked/ });
  await expect(step).not.toBeChecked();
  await press(phone, 'Write it now');
  await expect(notice).toBeVisible();
  await follow(phone, 'Record');
  await expect(notice).toBeVisible();
  await follow(phone, 'Bench');
  await makeRoom(page);
  await press(phone, 'Write it now');
  await expect(notice).toHaveCount(0);
  await press(phone, 'Go on with Boom no. 1');
  await expect(step).toBeChecked();
  await page.reload();
  await expect(step).toBeChecked();
});

test('with no room left a figure stays on the keys, and pressing again later records it once', async ({
  page,
}) => {
  const phone = await openWithTube(page, dry);
  await follow(phone, 'Mix the first cup');
  await press(phone, 'Tare cup 1 and start');
  await expect(heading(phone)).toHaveText('Pour resin to');
  await fillDisk(page);
  for (const key of '80.5') await page.getByRole('button', { name: key, exact: true }).tap();
  await press(phone, loosely('Resin is in: 80.5 g'));
  await expect(page.getByRole('alert').filter({ hasText: 'Not saved' })).toBeVisible();
  await expect(page.getByText(loosely('80.5 g')).first()).toBeVisible();
  await makeRoom(page);
  await press(phone, loosely('Resin is in: 80.5 g'));
  await expect(button(phone, 'Hardener going in')).toBeVisible();
  await expect(page.getByRole('alert').filter({ hasText: 'Not saved' })).toHaveCount(0);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/record/build/${buildHeader.id}`);
  await expect(page.getByText('Cup 1: resin')).toHaveCount(1);
});

test('a tube that could not be written is not lost either', async ({ page }) => {
  const phone = await openEmpty(page);
  await press(phone, 'Start the first tube');
  await page.getByLabel('Name').fill('Boom');
  await page.getByLabel('Cloth on the scale').fill('240');
  await fillDisk(page);
  await press(phone, 'Start Boom no. 1');
  await expect(page.getByRole('alert').filter({ hasText: 'Not saved' })).toBeVisible();
  await expect(page.getByLabel('Cloth on the scale')).toHaveValue('240');
  await makeRoom(page);
  await press(phone, 'Write it now');
  await expect(heading(phone)).toHaveText('Mandrel prep');
});

test('a phone that is full from the first opening on says so, and has its shelf once there is room', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...args: Parameters<typeof add>) {
      if (this.name === 'revisions' && !sessionStorage.getItem('room')) {
        throw new DOMException('The disk is full', 'QuotaExceededError');
      }
      return add.apply(this, args);
    };
  });
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('this phone has no room left');
  await page.evaluate(() => sessionStorage.setItem('room', 'made'));
  await page.getByRole('button', { name: 'Write it now' }).tap();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await page.getByRole('button', { name: 'Start the first tube' }).tap();
  await expect(page.getByLabel('Resin and hardener')).toContainText('SLOW');
});

test('a browser that keeps nothing says so, and what to do', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This browser keeps nothing here');
  await expect(page.getByText('Open the app in an ordinary window')).toBeVisible();
});

test('a database that will not open says so, and opens again when it can', async ({ page }) => {
  await page.addInitScript(() => {
    if (sessionStorage.getItem('refused')) return;
    sessionStorage.setItem('refused', 'once');
    IDBFactory.prototype.open = () => {
      throw new DOMException('Storage is blocked', 'SecurityError');
    };
  });
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This browser keeps nothing here');
  await page.getByRole('button', { name: 'Open it again' }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your bench is clear');
});

test('a record of a newer version is left as it is', async ({ page }) => {
  await page.goto('./icon.svg');
  const versionNow = () =>
    page.evaluate(async () => (await indexedDB.databases()).find((d) => d.name === 'tubewright')?.version);
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('tubewright', 999);
        opening.onsuccess = () => done(opening.result.close());
        opening.onerror = () => failed(opening.error);
      }),
  );
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A newer version wrote this record');
  expect(await versionNow()).toBe(999);
});
