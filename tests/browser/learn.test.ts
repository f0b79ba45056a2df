import { expect, type Page, test } from '@playwright/test';
import { type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { seed } from './support/seed.ts';

/** A thumb takes longer between two presses than a glove's bounce, ms */
const bounce = 400;
const loading = { timeout: 20_000 };

const stagesBefore = (stage: string): Event[] => {
  const at = buildHeader.route.findIndex((s) => s.stage === stage);
  return buildHeader.route.slice(0, at).flatMap((s, i) => ticksOf(s.stage, i));
};

async function atDemold(page: Page): Promise<void> {
  await page.clock.install({ time: minutes(600) });
  await page.goto('./#/build/build-1');
  await page.locator('h1').waitFor();
  await seed(page, [buildHeader, ...entriesOf('build-1', stagesBefore('demold'))]);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Demold');
}

async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.clock.fastForward(bounce);
  await page.getByRole('button', { name }).first().tap();
}

const word = (page: Page, what: string, name: string) =>
  page.getByRole('group', { name: what }).getByRole('button', { name, exact: true });

test('a tube is rated as it comes off, a tap a word, and undone as everything else', async ({ page }) => {
  await atDemold(page);
  await press(page, 'Rate surface, release, dry spots');
  await word(page, 'Surface', 'smooth').tap();
  await expect(word(page, 'Surface', 'smooth')).toHaveAttribute('aria-pressed', 'true');
  await word(page, 'Dry spots', 'many').tap();
  await expect(page.getByRole('status').filter({ hasText: 'Dry spots: many' }).last()).toBeVisible();
  await page.getByRole('dialog').getByRole('button', { name: 'Undo' }).tap();
  await expect(word(page, 'Dry spots', 'many')).toHaveAttribute('aria-pressed', 'false');
  await page.reload();
  await expect(page.getByRole('button', { name: 'As it came off: 1 of 4 rated' })).toBeVisible();
  await page.goto('./#/record/build/build-1');
  await expect(page.getByRole('row', { name: 'Surface smooth' })).toBeVisible();
});

test('a photo taken at demold is small in the record, and as large as it was kept', async ({ page }) => {
  await atDemold(page);
  await press(page, 'Rate surface, release, dry spots');
  const png = await page.evaluate(async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 2000, height: 1000 });
    canvas.getContext('2d')?.fillRect(0, 0, 900, 900);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done));
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  });
  await page
    .locator('dialog input[type=file]')
    .setInputFiles({ name: 'tube.png', mimeType: 'image/png', buffer: Buffer.from(png) });
  const small = page.getByRole('dialog').getByRole('list', { name: 'Photos' }).getByRole('img');
  await expect(small).toBeVisible();
  expect(await small.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(1600);
  await page.getByRole('dialog').getByLabel('Words to it').fill('Ridge under the tape');
  await press(page, 'Words are kept');
  const photos = page.getByRole('list', { name: 'Photos' });
  await expect(photos.last()).toContainText('Ridge under the tape');
  await page.goto('./#/record/build/build-1');
  await expect(page.getByRole('heading', { name: '1 photo' })).toBeVisible();
  await photos.getByRole('button').tap();
  const large = page.getByRole('dialog', { name: 'Ridge under the tape' });
  await expect(large.getByRole('img')).toBeVisible();
  await large.getByLabel('Words to it').fill('Ridge under the tape, at the butt');
  await press(page, 'Words are kept');
  await expect(photos).toContainText('at the butt');
  // What stood there first is struck through, and stays.
  await expect(page.getByLabel('Time line').getByRole('deletion')).toHaveText([
    'Photo',
    'Ridge under the tape',
  ]);
});

async function openDemo(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByText('Demo shop, not your record')).toBeVisible(loading);
}

test('two builds stand side by side: what differs is marked, and two figures are a picture', async ({
  page,
}) => {
  await openDemo(page);
  await page.getByRole('navigation').getByRole('link', { name: 'Record' }).tap();
  await page.getByRole('link', { name: 'Compare builds' }).tap();
  await page.getByRole('checkbox', { name: /Sprit no. 1/ }).tap();
  await expect(page.getByRole('button', { name: 'Choose two or more' })).toBeVisible();
  await page.getByRole('checkbox', { name: /Sprit no. 2/ }).tap();
  await page.getByRole('button', { name: 'Both side by side' }).tap();
  const squeezed = page.getByRole('row', { name: /Squeezed out/ });
  await expect(squeezed.getByRole('cell').first()).toHaveClass(/compare-least/);
  await expect(squeezed.getByRole('cell').last()).toHaveClass(/compare-most/);
  await expect(page.getByRole('row', { name: /Release/ })).toBeHidden();
  await page.getByText(/^The same in all/).tap();
  await expect(page.getByRole('row', { name: /Release Polyester film sleeve/ })).toBeVisible();
  // Two builds of a kind are no rule.
  await expect(page.getByRole('list', { name: 'What these builds say' })).toBeHidden();

  await page.getByRole('link', { name: 'Two figures' }).tap();
  const picture = page.getByRole('img', { name: /2 builds$/ });
  const box = await picture.boundingBox();
  if (!box) throw new Error('no picture');
  await picture.tap({ position: { x: box.width - 30, y: 60 } });
  await expect(page.getByRole('list', { name: 'The point tapped' })).toContainText('Sprit no.');
  await page.getByRole('button', { name: 'Next point' }).tap();
  await expect(page.getByRole('list', { name: 'The point tapped' })).toContainText('Sprit no.');
});

test('what the shop loses in a cup goes into a plan, which says so, and into what its next tube mixes', async ({
  page,
}) => {
  await openDemo(page);
  await page.goto('./#/factors');
  const loss = page.getByRole('link', { name: /Lost in each cup/ });
  await expect(loss).toContainText('4 builds');
  await expect(loss).toContainText(/book 15.0\sg/);
  await loss.tap();
  await expect(page.getByRole('link', { name: /Boom no. 1/ })).toBeVisible();

  await page.goto('./#/plan/demo-plan-upper-mast/edit');
  await page.getByText('The shop’s figures or the book’s').tap();
  const group = page.getByRole('group', { name: 'Lost in each cup' });
  await group.getByRole('button', { name: /^Shop's/ }).tap();
  await expect(group.getByRole('button', { name: /^Shop's/ })).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Save as a new revision' }).tap();
  await expect(page.getByRole('row', { name: /Lost in each cup.*the shop’s \(4 builds\)/ })).toBeVisible();
  await page.getByRole('button', { name: /^Start tube/ }).tap();
  await expect(page.getByText(/Mix \d+\sg less than by the book/)).toBeVisible();

  await page.getByLabel('Lost in each cup').fill('14 g');
  await expect(page.getByText(/than by the book/)).toBeHidden();
});
