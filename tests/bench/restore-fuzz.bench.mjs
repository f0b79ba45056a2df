// Backups that somebody damaged or wrote to do harm, through the real check; some through the app in a browser, and one
// of 500 MB: node tests/bench/restore-fuzz.bench.mjs [backups, 100000] [in a browser, 200] [megabytes, 500]
import { createWriteStream } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { finished } from 'node:stream/promises';
import fc from 'fast-check';
import { runnerImport } from 'vite';
import { figure } from './figure.mjs';
import { close, listen, withBrowser } from './start-page.mjs';
import { choose, mega, watched } from './watch-page.mjs';

const backups = Number(process.argv[2] ?? 100_000);
const inBrowser = Number(process.argv[3] ?? 200);
const megabytes = Number(process.argv[4] ?? 500);
const root = resolve(import.meta.dirname, '../..');
const load = async (file) => (await runnerImport(join(root, file), { configFile: false, root })).module;
const { hostile, smallShop } = await load('tests/storage/hostile-backups.ts');
const { checkBackup } = await load('src/storage/backup-check.ts');
const { demoShop } = await load('demo/make-shop.ts');
const { anchor } = await load('demo/shop-time.ts');
const seed = 20_261_125;

const good = smallShop(demoShop(anchor), anchor);
const arbitrary = hostile(good);

/** Every one is refused with a reason and a place, or let in; anything else throws here. */
async function inNode() {
  const outcomes = new Map();
  const began = Date.now();
  await fc.assert(
    fc.asyncProperty(arbitrary, async ({ how, bytes }) => {
      const checked = await checkBackup(new Blob([bytes]));
      if (!checked.ok && !(checked.line > 0 && checked.detail.length > 0))
        throw new Error('no reason or no place');
      if ({}.taken !== undefined) throw new Error('a file reached the prototype of everything');
      const outcome = checked.ok ? 'let in' : checked.reason;
      const row = outcomes.get(how) ?? new Map();
      outcomes.set(how, row.set(outcome, (row.get(outcome) ?? 0) + 1));
    }),
    { numRuns: backups, seed },
  );
  console.log(
    `${backups.toLocaleString('en-US')} hostile backups checked in ${((Date.now() - began) / 1000).toFixed(0)} s, none crashed`,
  );
  figure('Hostile backups that crashed the check', `0 of ${backups.toLocaleString('en-US')}`, '0');
  for (const [how, row] of outcomes) {
    const counts = [...row].sort((a, b) => b[1] - a[1]).map(([outcome, n]) => `${outcome} ${n}`);
    console.log(`  ${how}: ${counts.join(', ')}`);
  }
}

/** Everything the builder's database holds, as one text. */
const databaseOf = (page) =>
  page.evaluate(async () => {
    const opened = indexedDB.open('tubewright');
    const db = await new Promise((done) => (opened.onsuccess = () => done(opened.result)));
    const stores = ['headers', 'revisions', 'entries', 'photos'];
    const tx = db.transaction(stores);
    const all = await Promise.all(
      stores.map((name) => {
        const asked = tx.objectStore(name).getAll();
        return new Promise((done) => (asked.onsuccess = () => done(asked.result)));
      }),
    );
    db.close();
    return JSON.stringify(all);
  });

async function inApp(page, address, folder) {
  const path = join(folder, 'hostile.txt');
  const errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${address}#/data/restore`);
  await page.waitForSelector('input[type=file]', { state: 'attached' });
  const before = await databaseOf(page);
  let refused = 0;
  for (const { how, bytes } of fc.sample(arbitrary, { numRuns: inBrowser, seed: seed + 1 })) {
    await writeFile(path, bytes);
    await page.evaluate(() => document.querySelector('[role=alert]')?.remove());
    await choose(page, path);
    const outcome = page.getByRole('alert').or(page.getByText('This backup of'));
    await outcome.first().waitFor({ timeout: 30_000 });
    if (await page.getByRole('alert').isVisible()) refused += 1;
    if ((await databaseOf(page)) !== before)
      throw new Error(`${how}: what is stored changed before a word was said`);
    const taken = await page.evaluate(
      () => window.taken !== undefined || document.querySelector('img[src=x]') !== null,
    );
    if (taken) throw new Error(`${how}: something of the file was taken for markup`);
    await page.reload();
    await page.waitForSelector('input[type=file]', { state: 'attached' });
  }
  if (errors.length > 0) throw new Error(errors[0]);
  console.log(
    `${inBrowser} of them in the app: ${refused} refused in words, ${inBrowser - refused} offered, nothing stored, no error`,
  );
}

/** Lines of notes up to so many bytes; `last` is what stands at its end. */
async function writeBig(path, line, last) {
  const file = createWriteStream(path);
  file.write(`${good.split('\n')[0]}\n`);
  for (let written = 0, i = 0; written < megabytes * 1e6; i++) {
    const text = line(i);
    written += text.length;
    if (!file.write(text)) await new Promise((ready) => file.once('drain', ready));
  }
  file.end(last);
  await finished(file);
}

async function big(page, browser, address, folder) {
  const path = join(folder, 'big.txt');
  const note = JSON.parse(
    good.split('\n').find((line) => line.includes('"kind":"note"')) ?? good.split('\n').at(-3),
  );
  const id = (i) => `01a15063-e692-7000-9000-${i.toString(16).padStart(12, '0')}`;
  const kinds = [
    [
      'notes, with a wrong checksum',
      (i) => `${JSON.stringify({ ...note, id: id(i), text: 'y'.repeat(700) })}\n`,
      good.trimEnd().split('\n').at(-1),
    ],
    ['one line without an end', () => 'x'.repeat(1_000_000), ''],
    [
      'one string without an end',
      (i) => (i === 0 ? '\n{"record":"entry","text":"' : 'x'.repeat(1_000_000)),
      '',
    ],
  ];
  for (const [what, line, last] of kinds) {
    await writeBig(path, line, last);
    await page.goto(`${address}#/data/restore`);
    await page.reload();
    await page.waitForSelector('input[type=file]', { state: 'attached' });
    const took = await watched(page, browser, async () => {
      await choose(page, path);
      await page.getByRole('alert').waitFor({ timeout: 3_600_000 });
    });
    const says = (await page.getByRole('alert').textContent()).replaceAll(/\s+/g, ' ');
    console.log(`${mega(megabytes * 1e6)} of ${what}: ${took}\n  '${says.slice(0, 160)}'`);
  }
}

const folder = await mkdtemp(join(tmpdir(), 'tubewright-fuzz-'));
const { server, address } = await listen(join(root, 'dist'));
try {
  await inNode();
  await withBrowser(await mkdtemp(join(folder, 'profile-')), async (page, browser) => {
    await inApp(page, address, folder);
    await big(page, browser, address, folder);
  });
} finally {
  await close(server);
  await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}
