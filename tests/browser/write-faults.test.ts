import { expect, type Page, test } from '@playwright/test';
import { button, heading, loosely, type Phone, phoneOnRealTime, press, typeOnKeys } from './support/hands.ts';
import { startTube, tickLine, tube } from './support/job.ts';

test.use({ actionTimeout: 10_000 });

const notices = (page: Page) => page.getByRole('region', { name: 'Notices' });
const line = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });

async function openApp(page: Page): Promise<Phone> {
  await page.goto('./');
  const phone = phoneOnRealTime(page);
  await expect(heading(phone)).toHaveText('Your bench is clear');
  return phone;
}

/** While it is so, the browser aborts every transaction that adds something, as it does when the disk fails. */
async function letWritesFail(page: Page, fail: boolean): Promise<void> {
  await page.evaluate((failing) => {
    const own = IDBObjectStore.prototype as IDBObjectStore & { whole?: IDBObjectStore['add'] };
    own.whole ??= own.add;
    const { whole } = own;
    own.add = function (this: IDBObjectStore, ...args) {
      const { transaction } = this;
      const request = whole.apply(this, args);
      if (failing) queueMicrotask(() => transaction.abort());
      return request;
    };
  }, fail);
}

/** Presses, is told that it was not saved, and presses again once the disk is well: it is written once. */
async function failsThenHolds(
  phone: Phone,
  act: () => Promise<void>,
  stays: () => Promise<void>,
): Promise<void> {
  const { page } = phone;
  await letWritesFail(page, true);
  await act();
  await expect(notices(page)).toContainText('Not saved: the phone did not write it.');
  // However far down the screen is, and in front of a sheet.
  await expect(page.getByRole('alert').last()).toBeInViewport({ ratio: 1 });
  await stays();
  await letWritesFail(page, false);
  await act();
  await expect(notices(page)).not.toContainText('Not saved');
}

test('a disk that fails at a tube, a tick, a weight, a note or a cloth says so, keeps what was typed, and the next press writes it once', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const phone = await openApp(page);
  await press(phone, 'Start the first tube');
  await page.getByLabel('Name').fill(tube.name);
  await page.getByLabel('Cloth on the scale').fill(tube.cloth);
  await failsThenHolds(
    phone,
    () => press(phone, `Start ${tube.name} no. 1`),
    () => expect(page.getByLabel('Cloth on the scale')).toHaveValue(tube.cloth),
  );
  await expect(heading(phone)).toHaveText('Mandrel prep');
  const route = page.url();

  const first = line(page, /^Mandrel picked/);
  await failsThenHolds(
    phone,
    async () => {
      await phone.settle();
      await first.tap();
    },
    () => expect(first).not.toBeChecked(),
  );
  await expect(first).toBeChecked();

  await press(phone, 'Note or photo');
  await page.getByLabel('What is worth knowing').fill('Scratch at 400 mm');
  await failsThenHolds(
    phone,
    () => press(phone, 'Note is kept'),
    () => expect(page.getByLabel('What is worth knowing')).toHaveValue('Scratch at 400 mm'),
  );
  await expect(page.getByRole('dialog')).toBeHidden();

  await page.goto(route.replace('/build/', '/weigh/'));
  await page.getByRole('link', { name: /^Cured tube/ }).tap();
  await typeOnKeys(phone, '466');
  await failsThenHolds(
    phone,
    () => press(phone, loosely('Tube weighs 466.0 g')),
    () => expect(page.locator('.big-figure').first()).toHaveText(loosely('466 g')),
  );
  await expect(page.getByRole('list', { name: 'Weights' })).toContainText(loosely('466.0 g'));

  await page.goto('./#/shelf/cloth/new');
  await page.getByLabel('Name').fill('Own twill');
  await page.getByLabel('Weight of the cloth').fill('193 gsm');
  await failsThenHolds(
    phone,
    () => press(phone, 'Put it on the shelf'),
    () => expect(page.getByLabel('Weight of the cloth')).toHaveValue('193 gsm'),
  );
  await page.goto('./#/shelf/cloth');
  await page.reload();
  await expect(page.getByRole('link', { name: /Own twill/ })).toHaveCount(1);
  await page.goto(route.replace('/build/', '/record/build/'));
  await expect(page.getByRole('region', { name: 'Time line' }).getByRole('listitem')).toHaveText([
    /Mandrel picked/,
    /Scratch at 400 mm/,
    /Cured tube/,
    // A weight written down ticks its step.
    /Tube weighed dry/,
  ]);
});

test('when the second copy cannot be written the work goes on, and the next opening makes up for it', async ({
  page,
}) => {
  const phone = await openApp(page);
  await startTube(phone);
  const [worker] = page.workers();
  await worker?.evaluate(() => {
    const handle = Reflect.get(globalThis, 'FileSystemSyncAccessHandle') as { prototype: { flush(): void } };
    handle.prototype.flush = () => {
      throw new DOMException('the disk failed', 'InvalidStateError');
    };
  });
  await tickLine(phone, 'Mandrel picked');
  await tickLine(phone, 'Rolled on the bench');
  await expect(notices(page)).not.toContainText('Not saved');
  const route = page.url();
  await page.goto('./#/data');
  await expect(page.getByText('The second copy could not be written and has stopped.')).toBeVisible();
  await page.goto(route);
  await page.reload();
  await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(2);
  await expect(notices(page)).toContainText(/missing from one of the two copies on this phone/);
  await page.goto('./#/data');
  await expect(page.getByText('The second copy could not be written')).toBeHidden();
});

test('a connection that the system cut in the background is made anew, and the tick goes through', async ({
  page,
}) => {
  const phone = await openApp(page);
  await startTube(phone);
  await page.evaluate(() => {
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...args) {
      IDBDatabase.prototype.transaction = transaction;
      this.close();
      return transaction.apply(this, args);
    };
  });
  await tickLine(phone, 'Mandrel picked');
  await expect(notices(page)).not.toContainText('Not saved');
  await page.reload();
  await expect(line(page, /^Mandrel picked/)).toBeChecked();
});

test('a database that a newer version took over is said to be, and is left untouched by this one', async ({
  page,
}) => {
  const phone = await openApp(page);
  await startTube(phone);
  await page.evaluate(
    () =>
      new Promise((taken) => {
        const newer = indexedDB.open('tubewright', 1000);
        newer.onsuccess = () => {
          newer.result.close();
          taken(true);
        };
      }),
  );
  await expect(heading(phone)).toHaveText('The record went to another tab');
  await button(phone, 'Open it again').tap();
  await expect(heading(phone)).toHaveText('A newer version wrote this record');
});
