// A logger's file of 100,000 rows: how long until it stands in its preview, until its results are there, and what a frame
// of its chart costs, on a page slowed 4 times: node tests/bench/logger.bench.mjs [rows, 100000]
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright';
import { runnerImport } from 'vite';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';

const rows = Number(process.argv[2] ?? 100_000);
const root = resolve(import.meta.dirname, '../..');
const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
const slowed = 4;
const two = (n) => String(n).padStart(2, '0');

/** Air and two tubes every second, up to 66 °C in 40 min, with a flicker of a tenth. */
function fileOf(lit) {
  const lines = ['Time;Air °C;Boom °C;Sprit °C'];
  for (let i = 0; i < rows; i++) {
    const at = new Date(lit + i * 1000);
    const clock = `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}:${two(at.getUTCSeconds())}`;
    const day = `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()}`;
    const heat = (lag) =>
      (23 + 43 * (1 - Math.exp(-Math.max(0, i - lag) / 900)) + ((i * 7) % 5) / 10).toFixed(1);
    lines.push(
      `${day} ${clock};${heat(0)};${heat(300)};${heat(500)}`
        .replaceAll('.', ',')
        .replace(/^(..),(..),/, '$1.$2.'),
    );
  }
  return lines.join('\r\n');
}

/** Counts frames and long tasks from here on. */
const watch = (page) =>
  page.evaluate(() => {
    window.long = [];
    window.frames = [];
    window.longObserver ??= new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) window.long.push(entry.duration);
    });
    window.longObserver.observe({ entryTypes: ['longtask'] });
    window.watching = true;
    let last = performance.now();
    const step = (now) => {
      window.frames.push(now - last);
      last = now;
      if (window.watching) requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  });

const told = async (page, what) => {
  const { long, frames } = await page.evaluate(() => {
    window.watching = false;
    return { long: window.long, frames: window.frames.slice(2) };
  });
  const sorted = [...frames].sort((a, b) => a - b);
  const at = (share) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0).toFixed(0);
  const worst = long.length === 0 ? 'none' : `${long.length}, longest ${Math.max(...long).toFixed(0)} ms`;
  console.log(
    `  ${what}: frame median ${at(0.5)} ms, 95 % ${at(0.95)} ms, longest ${at(1)} ms; tasks over 50 ms: ${worst}`,
  );
};

async function seeded(page, lit) {
  const { module } = await runnerImport(join(root, 'tests/app/oven-loads.ts'), { configFile: false, root });
  const { buildHeader, entries, loadHeader } = module;
  const inside = {
    kind: 'joinedOvenLoad',
    build: 'boom',
    ovenLoad: 'oven',
    round: 1,
    channel: 'boom',
    happenedAt: lit,
  };
  const records = [
    buildHeader({ schedule: loadHeader.schedule }),
    loadHeader,
    ...entries('oven', [{ kind: 'ovenStage', stage: 'lit', happenedAt: lit }, inside]),
  ];
  await page.evaluate(async (all) => {
    const opened = indexedDB.open('tubewright');
    const db = await new Promise((done) => (opened.onsuccess = () => done(opened.result)));
    const tx = db.transaction(['headers', 'entries', 'meta'], 'readwrite');
    for (const one of all) {
      tx.objectStore(one.record === 'entry' ? 'entries' : 'headers').put(one);
      tx.objectStore('meta').put(1, ['dropped', one.record === 'entry' ? one.subject : one.id]);
    }
    await new Promise((done) => (tx.oncomplete = done));
    db.close();
  }, records);
}

const lit = Date.UTC(2026, 4, 16, 14);
const server = serve(join(root, 'dist'));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://localhost:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
try {
  const page = await (await browser.newContext(phone)).newPage();
  await page.goto(`${address}#/`);
  await page.locator('h1').waitFor();
  await seeded(page, lit);
  await page.goto(`${address}#/oven/oven/logger`);
  await page.reload();
  await page.locator('input[type=file]').waitFor({ state: 'attached' });
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const text = fileOf(lit);
  console.log(
    `  ${rows.toLocaleString('en-US')} rows of 4 columns, ${(text.length / 1e6).toFixed(1)} MB, page slowed ${slowed} times`,
  );

  // By its path: handed over as bytes it would pass through the page.
  const folder = await mkdtemp(join(tmpdir(), 'logger-'));
  const path = join(folder, 'long.csv');
  await writeFile(path, text);
  await watch(page);
  let began = Date.now();
  await page.locator('input[type=file]').setInputFiles(path);
  await page.getByRole('button', { name: /^Take in [1-9]/ }).waitFor({ timeout: 120_000 });
  console.log(`  chosen to previewed: ${Date.now() - began} ms`);
  await told(page, 'while it is read');
  await rm(folder, { recursive: true });

  began = Date.now();
  await watch(page);
  await page.getByRole('button', { name: /^Take in [1-9]/ }).tap();
  await page.getByRole('list', { name: 'Logger’s files' }).waitFor({ timeout: 120_000 });
  await page.getByText('The logger’s file is being read.').waitFor({ state: 'detached', timeout: 120_000 });
  console.log(`  taken in, with results: ${Date.now() - began} ms`);
  await told(page, 'while results are made');

  await watch(page);
  await page.waitForTimeout(4000);
  await told(page, 'oven load, while its clock ticks');

  await page.goto(`${address}#/oven/oven/chart`);
  await page.reload();
  await page
    .getByText(/readings/)
    .first()
    .waitFor();
  await page.getByText('The logger’s file is being read.').waitFor({ state: 'detached', timeout: 120_000 });
  await page.waitForTimeout(1000);
  await watch(page);
  const press = async (name) => {
    await page.getByRole('button', { name, exact: true }).tap();
    await page.waitForTimeout(120);
  };
  for (const name of [
    '+ Closer',
    '+ Closer',
    'Later ›',
    'Later ›',
    '‹ Earlier',
    '+ Closer',
    '− Wider',
    'All of it',
  ])
    await press(name);
  await told(page, 'chart, by its keys');

  const box = await page.locator('.u-over').boundingBox();
  await press('+ Closer');
  await watch(page);
  const y = box.y + box.height / 2;
  const send = (type, x) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints: x === undefined ? [] : [{ x, y }] });
  for (const [from, to] of [
    [300, 80],
    [80, 300],
    [300, 80],
  ]) {
    await send('touchStart', from);
    for (let i = 1; i <= 30; i++) await send('touchMove', from + ((to - from) * i) / 30);
    await send('touchEnd');
  }
  await told(page, 'chart, dragged');
} finally {
  await browser.close();
  server.closeAllConnections();
  await new Promise((done) => server.close(done));
}
