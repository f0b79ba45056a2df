import { type Browser, expect, test } from '@playwright/test';
import { heading, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { startTube, tickLine } from './support/job.ts';

test.use({ actionTimeout: 8000 });

async function newPhone(browser: Browser): Promise<Phone> {
  const phone = phoneOnRealTime(await (await browser.newContext()).newPage());
  await phone.page.goto('./');
  await expect(heading(phone)).toHaveText('Your bench is clear');
  return phone;
}

async function saveBackup({ page }: Phone, path: string): Promise<void> {
  await page.goto('./#/data');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the backup' }).tap();
  await (await download).saveAs(path);
}

async function mergeIn({ page }: Phone, path: string): Promise<void> {
  await page.goto('./#/data/restore');
  await page.getByLabel(/^Choose a/).setInputFiles(path);
  await page.getByRole('button', { name: 'Merge it in' }).tap();
  await expect(page.getByText(/records? added/)).toBeVisible();
}

const goOn = async (phone: Phone) => {
  await phone.page.goto('./#/');
  await press(phone, 'Go on with Upper mast no. 1');
  await expect(heading(phone)).toHaveText('Mandrel prep');
};

const ticked = ({ page }: Phone) => page.getByRole('checkbox', { checked: true });

test('two phones work on one tube, and each has what both did after their backups were merged', async ({
  browser,
}, info) => {
  const [first, second] = [await newPhone(browser), await newPhone(browser)];
  const file = (name: string) => info.outputPath(`${name}.txt`);
  await startTube(first);
  await tickLine(first, 'Mandrel picked');
  await saveBackup(first, file('first'));
  await mergeIn(second, file('first'));

  await goOn(second);
  await expect(ticked(second)).toHaveCount(1);
  await tickLine(second, 'Rolled on the bench');
  await goOn(first);
  await tickLine(first, 'Edges deburred');

  await saveBackup(first, file('first-again'));
  await saveBackup(second, file('second'));
  await mergeIn(first, file('second'));
  await mergeIn(second, file('first-again'));
  for (const phone of [first, second]) {
    await goOn(phone);
    await expect(ticked(phone)).toHaveText([/^Mandrel picked/, /^Rolled on the bench/, /^Edges deburred/]);
    await phone.page.context().close();
  }
});
