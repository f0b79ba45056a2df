import { expect, type Page, test } from '@playwright/test';
import { readRecord, type StoredRecord } from '#shared/record/read.ts';
import { script } from '../storage/hostile-backups.ts';
import { backupOf } from './support/backup.ts';
import { demoRecords } from './support/demo-records.ts';

test.use({ serviceWorkers: 'allow' });

/** What a person writes freely; the rest are names of the app's own or of other records. */
const free =
  /^(name|note|text|hint|label|axis|typed|value|station|air|humidity|hardener|resin|mandrel|material)$/;

const at = Date.now() - 86_400_000;
const shop = demoRecords(at);
const names = new Set<unknown>(shop.flatMap((r) => [r.id, 'doc' in r ? r.doc : '']));

function withScript(value: unknown, key = ''): unknown {
  if (typeof value === 'string') return free.test(key) && !names.has(value) ? value + script : value;
  if (Array.isArray(value)) return value.map((one) => withScript(one, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, inner]) => [k, withScript(inner, k)]));
}

/** The demo shop with script behind every word, but for the starters, which are on the phone already. */
const hostile = shop
  .filter((r) => !('device' in r && r.device === 'starter'))
  .map((r) => {
    const changed = withScript(r) as StoredRecord;
    return readRecord(changed).ok ? changed : r;
  });

const doc = (type: string) => hostile.find((r) => r.record === 'revision' && r.type === type && 'doc' in r);
const docOf = (type: string) => {
  const found = doc(type);
  return found && 'doc' in found ? found.doc : '';
};
const closed = hostile.flatMap((r) => (r.record === 'entry' && r.kind === 'closed' ? [r.subject] : []));
const isClosed = (r: StoredRecord) => closed.includes(r.id);
const header = (record: string, done: boolean) =>
  hostile.find((r) => r.record === record && isClosed(r) === done)?.id ?? '';

const [made, making] = [header('build', true), header('build', false)];
const [fired, firing] = [header('ovenLoad', true), header('ovenLoad', false)];
const screens = [
  ...['/', '/record', `/record/build/${made}`, `/record/build/${made}/paper`, `/record/build/${making}`],
  ...['/record/ovens', `/record/oven/${fired}`, `/oven/${firing}`, `/build/${making}`, `/mix/${making}`],
  ...['/compare/choose', '/factors', '/plans', `/plan/${docOf('plan')}`, `/plan/${docOf('plan')}/edit`],
  ...[`/plan/${docOf('plan')}/wall`, `/cut/${making}`, '/shelf/cloth', `/shelf/cloth/${docOf('cloth')}`],
  ...['/ledger', `/ledger/${docOf('structure')}`, '/lots', `/lots/${docOf('lot')}`, `/hand/build/${made}`],
];

async function takeIn(page: Page): Promise<void> {
  await page.goto('./#/data/restore');
  const buffer = Buffer.from(backupOf(hostile, at));
  await page.getByLabel(/^Choose a/).setInputFiles({ name: `${script}.txt`, mimeType: 'text/plain', buffer });
  await page.getByRole('button', { name: 'Merge it in' }).tap();
  await expect(page.getByText(/records added/)).toBeVisible({ timeout: 30_000 });
}

test('script in every word of a restored shop is shown as words, on every screen, and never runs', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      document.documentElement.dataset.violated = event.violatedDirective;
    });
  });
  await takeIn(page);
  let shown = 0;
  for (const path of screens) {
    await page.goto(`./#${path}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.evaluate(() => new Promise((done) => requestIdleCallback(done, { timeout: 500 })));
    const found = await page.evaluate(() => ({
      made: document.querySelectorAll('img[src=x], script:not([src]), [onerror]').length,
      ran: 'taken' in window,
      violated: document.documentElement.dataset.violated,
      words: document.body.textContent?.includes('<img src=x') ?? false,
    }));
    expect([path, found.made, found.ran, found.violated]).toEqual([path, 0, false, undefined]);
    if (found.words) shown += 1;
  }
  expect(shown).toBeGreaterThan(screens.length / 2);
  expect(wrong).toEqual([]);
});
