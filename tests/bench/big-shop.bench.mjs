// A shop of ten years, in a browser on a profile of its own: restored from a file, started cold, searched, scrolled,
// compared, backed up again: node tests/bench/big-shop.bench.mjs [builds, 5000] [starts, 5]
import { createReadStream } from 'node:fs';
import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { sumOf, writeBigShop } from './big-shop-file.mjs';
import { figure, median } from './figure.mjs';
import { close, listen, oneStart, slowed, visit, withBrowser } from './start-page.mjs';
import { choose, mega, watched } from './watch-page.mjs';

const builds = Number(process.argv[2] ?? 5000);
const starts = Number(process.argv[3] ?? 5);
const root = resolve(import.meta.dirname, '../..');
const folder = await mkdtemp(join(tmpdir(), 'tubewright-big-'));
const patience = { timeout: 3_600_000 };

const number = (n) => n.toLocaleString('en-US');

async function restore(page, browser, address, path) {
  await page.goto(`${address}#/data/restore`);
  await page.waitForSelector('input[type=file]', { state: 'attached' });
  const check = await watched(page, browser, async () => {
    await choose(page, path);
    await page
      .getByRole('button', { name: 'Merge it in' })
      .and(page.locator('[aria-disabled=false]'))
      .waitFor(patience);
  });
  figure('Big backup checked', check, 'heap 150 MB');
  const merge = await watched(page, browser, async () => {
    await page.getByRole('button', { name: 'Merge it in' }).click();
    await page.getByText(/records? added/).waitFor(patience);
  });
  figure('Big backup merged in', merge, 'heap 150 MB');
  console.log(`  ${await page.getByText(/records? added/).textContent()}`);
}

/** Processor's time of the page from a press to the frame after it, slowed, ms */
async function costs(page, steps, act) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const spent = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return 1000 * metrics.find((m) => m.name === 'TaskDuration').value;
  };
  const all = [];
  for (const step of steps) {
    const before = await spent();
    await act(step);
    all.push(slowed * ((await spent()) - before));
  }
  return all;
}

const told = (times) =>
  `median ${median(times).toFixed(0)} ms, longest ${Math.max(...times).toFixed(0)} ms of ${times.length}`;

const twoFrames = (page) =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );

async function search(page, address) {
  await page.goto(`${address}#/record`);
  const [read] = await costs(page, [0], async () => {
    await page.getByRole('button', { name: 'Show older ones' }).waitFor(patience);
  });
  console.log(`  all summaries into memory, once: ${read.toFixed(0)} ms`);
  const field = page.getByLabel('Find');
  const keys = [...'sprit matte nov', ...Array.from({ length: 15 }, () => 'Backspace')];
  const times = await costs(page, keys, async (key) => {
    await field.press(key === ' ' ? 'Space' : key);
    await twoFrames(page);
  });
  figure(`A key of a search over everything, ${slowed}x slowed`, told(times), '100 ms');
}

/** To the end of the list as fast as it comes, frame by frame. */
async function scroll(page) {
  const frames = await page.evaluate(async () => {
    const times = [];
    const next = () => new Promise((done) => requestAnimationFrame(done));
    let before = await next();
    for (let still = 0; still < 40; ) {
      const top = document.documentElement.scrollTop;
      scrollBy(0, 900);
      const now = await next();
      times.push(now - before);
      before = now;
      still = document.documentElement.scrollTop === top ? still + 1 : 0;
    }
    return times;
  });
  const rows = await page.locator('a.row').count();
  const long = frames.filter((t) => t > 50).length;
  console.log(
    `  scrolled to the end: ${number(rows)} rows in the page, ${frames.length} frames, median ${median(frames).toFixed(0)} ms, ` +
      `${long} longer than 50 ms, longest ${Math.max(...frames).toFixed(0)} ms`,
  );
}

async function compare(page, address, beside) {
  await page.goto(`${address}#/compare/choose`);
  await page.getByRole('button', { name: 'Show older ones' }).waitFor(patience);
  await page.evaluate((count) => {
    for (const row of [...document.querySelectorAll('.choose-row')].slice(0, count)) row.click();
  }, beside);
  const [time] = await costs(page, [0], async () => {
    await page.evaluate(() => {
      location.hash = '#/compare';
    });
    await page.locator('.compare-slide').first().waitFor(patience);
    await twoFrames(page);
  });
  figure(`${beside} builds side by side, ${slowed}x slowed`, `${time.toFixed(0)} ms`, '100 ms');
}

async function backUp(page, browser, address) {
  // Without a dialog nobody can answer: the way that phones go, over a file in the origin's own space.
  await page.addInitScript(() => {
    window.showSaveFilePicker = undefined;
  });
  const system = await browser.newBrowserCDPSession();
  await system.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  await page.goto(`${address}#/record`);
  await page.goto(`${address}#/data`);
  await page.reload();
  const save = page.getByRole('button', { name: /^Save the backup/ });
  await save.waitFor();
  const took = await watched(page, browser, async () => {
    await save.click();
    await page
      .getByRole('button', { name: /^(Save|Send or keep) the backup, / })
      .or(page.getByText('is in the downloads'))
      .waitFor(patience);
  });
  figure('Big shop backed up', took, 'heap 150 MB');
  if (!(await page.getByText('is in the downloads').isVisible())) await save.click();
  for (;;) {
    const name = (await readdir(folder)).find((file) => /^tubewright-backup.*\.txt$/.test(file));
    if (name) return join(folder, name);
    await pause(500);
  }
}

/** What a backup says of builds and their entries. */
async function contentOf(path) {
  const found = { headers: 0, entries: 0, sum: 0 };
  for await (const line of createInterface({ input: createReadStream(path) })) {
    const { record } = JSON.parse(line);
    if (record === 'entry') found.entries += 1;
    else if (record === 'build' || record === 'ovenLoad') found.headers += 1;
    else continue;
    found.sum = sumOf(found.sum, line);
  }
  return found;
}

/** One start of each in turn, so that what else the machine does falls on both alike. */
async function coldStarts(profiles, address) {
  const all = profiles.map(() => []);
  for (let i = 0; i < starts; i++) {
    for (const [j, profile] of profiles.entries()) all[j].push(await oneStart(profile, address));
  }
  return all.map((times) => {
    const ready = times.map((t) => t.ready);
    const processor = median(times.map((t) => t.processor));
    console.log(
      `  first screen ${median(ready).toFixed(0)} ms (${Math.min(...ready).toFixed(0)} to ${Math.max(...ready).toFixed(0)}), ` +
        `the page's processor ${processor.toFixed(0)} ms, median of ${starts}`,
    );
    return { ready: median(ready), processor };
  });
}

async function profileAt(address, name) {
  const profile = await mkdtemp(join(folder, name));
  await visit(profile, address);
  return profile;
}

const { server, address } = await listen(join(root, 'dist'));
try {
  const path = join(folder, 'big-shop.txt');
  const made = await writeBigShop(path, builds);
  console.log(`${number(builds)} builds, ${number(made.entries)} entries, a file of ${mega(made.bytes)}`);
  const [empty, full] = [await profileAt(address, 'empty-'), await profileAt(address, 'full-')];
  console.log('restored into an empty shop, processor not slowed');
  await withBrowser(full, (page, browser) => restore(page, browser, address, path));
  console.log(`at the desk of ten years, processor ${slowed}x slowed`);
  await withBrowser(full, async (page) => {
    await search(page, address);
    await compare(page, address, 50);
    const cdp = await page.context().newCDPSession(page);
    await page.goto(`${address}#/record`);
    await page.getByRole('button', { name: 'Show older ones' }).waitFor(patience);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await scroll(page);
  });
  console.log('backed up to a file, processor not slowed');
  const saved = await withBrowser(full, (page, browser) => backUp(page, browser, address));
  const found = await contentOf(saved);
  const same = ['headers', 'entries', 'sum'].every((what) => found[what] === made[what]);
  console.log(
    `  ${mega((await stat(saved)).size)}, ${number(found.headers)} headers and ${number(found.entries)} entries, ` +
      `${same ? 'line for line what was restored' : 'NOT what was restored'}`,
  );
  if (!same) process.exitCode = 1;
  await close(server);
  console.log(`cold start with no network, ${slowed}x slowed: the empty shop, and the shop of ten years`);
  const [bare, ten] = await coldStarts([empty, full], address);
  const times = (what) => (ten[what] / bare[what]).toFixed(2);
  figure('Cold start of ten years, times the empty shop', times('ready'), '1.1');
  figure('the same, processor time', times('processor'), '1.1');
} finally {
  if (server.listening) await close(server);
  await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}
