import { readFile, writeFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { starterMandrels } from '#shared/reference/starter-mandrels.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { backupOf } from './support/backup.ts';
import { holdDown, phoneOnRealTime } from './support/hands.ts';
import { seed } from './support/seed.ts';

test.use({ serviceWorkers: 'allow' });

const entry = (i: number, rest: object) => ({
  record: 'entry',
  v: 1,
  id: `build-1-${i}`,
  subject: 'build-1',
  happenedAt: buildHeader.startedAt + i * 60_000,
  recordedAt: buildHeader.startedAt + i * 60_000,
  zone: -240,
  device: 'phone-1',
  ...rest,
});
const ownTube = [
  { ...buildHeader, name: 'Own tube' },
  entry(1, { kind: 'note', text: '=Dry spot at 300 mm' }),
  entry(2, { kind: 'weight', what: 'cured', mass: 0.231, typed: '231 g' }),
];

async function openWithOwnTube(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, ownTube);
  await expect(page.getByText('Own tube no. 1').first()).toBeVisible();
}

async function saveBackup(page: Page, path: string): Promise<string> {
  await page.goto('./#/data');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the backup' }).tap(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^tubewright-backup-\d{4}-\d\d-\d\d-\d{4}\.txt$/);
  await download.saveAs(path);
  return readFile(path, 'utf8');
}

/** What the record is: all lines of a backup but the first, which says when it was made, and the last. */
const recordOf = (backup: string) => backup.trim().split('\n').slice(1, -1).sort();

test('a record that was backed up, erased and restored is the same record', async ({ page }, info) => {
  await openWithOwnTube(page);
  const reminder = page.getByText('What you made here is on this phone only.');
  await expect(reminder).toBeVisible();
  await page.getByRole('link', { name: 'Back up' }).tap();
  await expect(page.getByText('None yet')).toBeVisible();
  await page.goto('./#/data/erase');
  await expect(page.getByText('No backup was ever saved from this phone.', { exact: false })).toBeVisible();
  await expect(page.getByRole('button', { name: /Hold to erase/ })).toHaveCount(0);

  const file = info.outputPath('backup.txt');
  const before = await saveBackup(page, file);
  await expect(page.getByText('Everything here is in it.', { exact: false })).toBeVisible();

  await page.getByRole('link', { name: 'Bench', exact: true }).tap();
  await expect(page.getByText('Own tube no. 1').first()).toBeVisible();
  await expect(reminder).toHaveCount(0);

  await page.goto('./#/data/erase');
  await holdDown(phoneOnRealTime(page), /^Hold to erase everything/);
  await expect(page.getByRole('heading', { name: 'Your bench is clear' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Your bench is clear' })).toBeVisible();

  await page.goto('./#/data/restore');
  await page.getByLabel(/^Choose a/).setInputFiles(file);
  await expect(page.getByText('holds 1 build, 0 oven loads, 2 lines', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Merge it in' }).tap();
  await expect(page.getByText('3 records added', { exact: false })).toBeVisible();
  await page.getByRole('link', { name: 'Bench', exact: true }).tap();
  await expect(page.getByText('Own tube no. 1').first()).toBeVisible();

  const after = await saveBackup(page, info.outputPath('again.txt'));
  expect(recordOf(after)).toEqual(recordOf(before));
});

test('a backup merged in twice changes nothing', async ({ page }, info) => {
  await openWithOwnTube(page);
  const file = info.outputPath('backup.txt');
  await saveBackup(page, file);
  await page.goto('./#/data/restore');
  await page.getByLabel(/^Choose a/).setInputFiles(file);
  await page.getByRole('button', { name: 'Merge it in' }).tap();
  await expect(page.getByText('Nothing was missing', { exact: false })).toBeVisible();
});

test('a damaged backup is refused with its line, and nothing is stored', async ({ page }, info) => {
  await openWithOwnTube(page);
  const file = info.outputPath('backup.txt');
  const good = await saveBackup(page, file);
  const damaged = good.replace('"Own tube"', '"Own tub');
  const line = damaged.split('\n').findIndex((l) => l.includes('"Own tub')) + 1;
  await writeFile(file, damaged);
  await page.goto('./#/data/restore');
  await page.getByLabel(/^Choose a/).setInputFiles(file);
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('backup.txt was not taken in');
  await expect(alert).toContainText(`Line ${line}. This line is damaged.`);
  await expect(alert).toContainText('Nothing was stored');
  await expect(page.getByRole('button', { name: 'Merge it in' })).toHaveCount(0);

  // The same file, put right, may be chosen again.
  await writeFile(file, good);
  await page.getByLabel(/^Choose a/).setInputFiles(file);
  await expect(page.getByRole('button', { name: 'Merge it in' })).toBeVisible();
});

test('a file that is no backup is refused in plain words', async ({ page }) => {
  await page.goto('./#/data/restore');
  const field = page.getByLabel(/^Choose a/);
  await field.setInputFiles({ name: 'list.txt', mimeType: 'text/plain', buffer: Buffer.from('milk\neggs') });
  await expect(page.getByRole('alert')).toContainText('It is not a backup of this app');
  await field.setInputFiles({ name: 'empty.txt', mimeType: 'text/plain', buffer: Buffer.alloc(0) });
  await expect(page.getByRole('alert')).toContainText('There is nothing in it.');
});

test('what two phones changed is listed after a restore, and the builder chooses', async ({ page }) => {
  await page.goto('./#/shelf/mandrel');
  await page.getByRole('link', { name: /Ground steel bar/ }).tap();
  await page.getByLabel('Diameter', { exact: true }).fill('15.9');
  await page.getByRole('button', { name: 'Save as a new revision' }).tap();
  await expect(page.getByRole('link', { name: /Ground steel bar/ })).toContainText('15.9');

  const doc = 'starter-mandrel-steel-16';
  const at = Date.now() - 3600_000;
  const revision = { record: 'revision', v: 1, type: 'mandrel', doc, parents: [`${doc}-1`], at } as const;
  const body = { ...starterMandrels[doc], diameter: 0.0161, typical: false };
  const file = backupOf(
    [{ ...revision, id: 'other-phone-1', device: 'phone-2', body } as typeof revision],
    at,
  );
  await page.goto('./#/data/restore');
  await page
    .getByLabel(/^Choose a/)
    .setInputFiles({ name: 'other.txt', mimeType: 'text/plain', buffer: Buffer.from(file) });
  await page.getByRole('button', { name: 'Merge it in' }).tap();
  await page
    .getByRole('list', { name: 'Changed on two phones' })
    .getByRole('link', { name: /Ground steel bar/ })
    .tap();
  await expect(page.getByRole('row', { name: /^Diameter/ })).toContainText(
    /15\.9.mm.*16\.1.mm|16\.1.mm.*15\.9.mm/,
  );
  await page
    .getByRole('button', { name: /^Keep the one of/ })
    .last()
    .tap();
  await expect(page.getByText('Changed on two phones')).toHaveCount(0);
  await expect(page.getByLabel('Diameter', { exact: true })).toHaveValue(/^1(5\.9|6\.1)\smm$/);
});

test('every screen of the data is open to a screen reader', async ({ page }) => {
  for (const path of ['/data', '/data/restore', '/data/tables', '/data/erase', '/shelf']) {
    await page.goto(`./#${path}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((v) => [path, v.id, v.nodes[0]?.html])).toEqual([]);
  }
});

test('the table of builds opens in a spreadsheet, with a note that looks like a formula kept a note', async ({
  page,
}) => {
  await openWithOwnTube(page);
  await page.goto('./#/data/tables');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the table of builds' }).tap(),
  ]);
  const text = await readFile(await download.path(), 'utf8');
  expect(download.suggestedFilename()).toMatch(/\.csv$/);
  expect(text).toContain('Tube [g]');
  expect(text).toContain("'=Dry spot at 300 mm");
});

test('what one tab writes stands in the other', async ({ page, context }) => {
  await openWithOwnTube(page);
  const other = await context.newPage();
  await other.goto('./#/record/build/build-1');
  await expect(other.getByText('Dry spot', { exact: false }).first()).toBeVisible();
  await other.goto('./#/shelf/mandrel/new');
  await other.getByLabel('Name').fill('Carbon bar');
  await other.getByLabel('Diameter', { exact: true }).fill('12');
  await other.getByLabel('Length', { exact: true }).fill('900');
  await page.goto('./#/shelf/mandrel');
  await expect(page.getByText('Ground steel bar', { exact: false })).toBeVisible();
  await other.getByRole('button', { name: 'Put it on the shelf' }).tap();
  await expect(page.getByText('Carbon bar')).toBeVisible();
});
