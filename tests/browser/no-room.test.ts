import { expect, type Page, test } from '@playwright/test';
import { buildHeader } from '../record/arbitraries.ts';
import { backupOf } from './support/backup.ts';
import { FullPhone } from './support/full-phone.ts';
import { button, heading, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { startTube, tickLine } from './support/job.ts';

test.use({ actionTimeout: 10_000 });

const room = 4_000_000;
const notices = (page: Page) => page.getByRole('region', { name: 'Notices' });
const noRoom = 'Not saved: this phone has no room left. Free some space, then try again.';
const line = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });
const timeLine = (page: Page) => page.getByRole('region', { name: 'Time line' }).getByRole('listitem');

async function onSmallPhone(page: Page, baseURL = ''): Promise<{ phone: Phone; space: FullPhone }> {
  const space = await FullPhone.of(page, baseURL, room);
  await page.goto('./');
  const phone = phoneOnRealTime(page);
  await expect(heading(phone)).toHaveText('Your bench is clear');
  return { phone, space };
}

test('with the phone full a tick and a note with its photo say so, stay, and are written once there is room', async ({
  page,
  baseURL,
}) => {
  const { phone, space } = await onSmallPhone(page, baseURL);
  await startTube(phone);
  await tickLine(phone, 'Mandrel picked');
  await space.fill();

  await phone.settle();
  await line(page, /^Rolled on the bench/).tap();
  await expect(notices(page)).toContainText(noRoom);
  await expect(line(page, /^Rolled on the bench/)).not.toBeChecked();

  await press(phone, 'Note or photo');
  await page.getByLabel('What is worth knowing').fill('Scratch at 400 mm');
  await page.getByLabel('Take a photo').setInputFiles('public/icon-512.png');
  await expect(page.getByRole('img', { name: 'As it will be kept' })).toBeVisible();
  await press(phone, 'Photo is kept');
  await expect(notices(page)).toContainText('2 not saved: this phone has no room left.');
  await expect(page.getByLabel('What is worth knowing')).toHaveValue('Scratch at 400 mm');

  await space.makeRoom();
  await press(phone, 'Photo is kept');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(notices(page)).not.toContainText('ot saved');
  await expect(line(page, /^Rolled on the bench/)).toBeChecked();
  await page.reload();
  await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(2);
  await page.goto(page.url().replace('/build/', '/record/build/'));
  await expect(timeLine(page)).toHaveCount(3);
  await expect(page.getByRole('list', { name: 'Photos' }).getByText('Scratch at 400 mm')).toBeVisible();
  await expect(page.getByText('This photo is not on this phone.')).toBeHidden();
});

test('a restore that fills the phone says so, and goes on where it stopped once there is room', async ({
  page,
  baseURL,
}) => {
  const { phone, space } = await onSmallPhone(page, baseURL);
  await space.fill();
  const entries = Array.from({ length: 300 }, (_, i) => ({
    record: 'entry' as const,
    v: 1,
    id: `note-${i}`,
    subject: buildHeader.id,
    happenedAt: buildHeader.startedAt + i * 1000,
    recordedAt: buildHeader.startedAt + i * 1000,
    zone: 0,
    device: 'another-phone',
    kind: 'note',
    text: `line ${i}: ${crypto.randomUUID()}`,
  }));
  await page.goto('./#/data/restore');
  const text = backupOf([buildHeader, ...entries], buildHeader.startedAt);
  await page
    .getByLabel(/^Choose a/)
    .setInputFiles({ name: 'shop.txt', mimeType: 'text/plain', buffer: Buffer.from(text) });
  await press(phone, 'Merge it in');
  await expect(page.getByRole('alert')).toContainText(
    'This phone has no room left. Free some space, then go on: it takes up where it stopped.',
  );
  await space.makeRoom();
  await press(phone, 'Go on merging it in');
  await expect(page.getByText('301 records added, 0 were here already.')).toBeVisible();
  await expect(button(phone, 'See the record')).toBeVisible();
});
