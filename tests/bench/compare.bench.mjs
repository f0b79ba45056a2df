// Builds side by side on the built app, thousands of builds in memory; processor time of the page, as on a processor 4
// times slower, so that what else the machine does is not in it:
// node tests/bench/compare.bench.mjs [builds of history, 5000] [builds side by side, 50]
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright';
import { runnerImport } from 'vite';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';

const builds = Number(process.argv[2] ?? 5000);
const beside = Number(process.argv[3] ?? 50);
const root = resolve(import.meta.dirname, '../..');
const slowed = 4;
const turns = 7;

const load = async (file) => (await runnerImport(join(root, file), { configFile: false, root })).module;
const { demoShop } = await load('demo/make-shop.ts');
const { summarize } = await load('src/app/state/summarize.ts');

/** The demo's closed builds over and over, each with its figures a little off. */
function history() {
  const records = demoShop(Date.now() - 86_400_000);
  const made = records
    .filter((r) => r.record === 'build')
    .map((header) => ({
      header,
      summary: summarize(
        header,
        records.filter((r) => r.subject === header.id),
      ),
    }))
    .filter(({ summary }) => summary.closedAt !== undefined);
  return Array.from({ length: builds }, (_, i) => {
    const { header, summary } = made[i % made.length];
    const own = {
      id: `${header.id}-${i}`,
      startedAt: header.startedAt - i * 3_600_000,
      number: i + 1,
    };
    return {
      header: { ...header, ...own },
      summary: {
        ...summary,
        ...own,
        subject: own.id,
        id: undefined,
        curedMass: summary.curedMass * (1 + (i % 17) / 400),
      },
    };
  });
}

async function fill(page, all) {
  await page.evaluate(async (records) => {
    const opened = indexedDB.open('tubewright');
    const db = await new Promise((done) => (opened.onsuccess = () => done(opened.result)));
    const tx = db.transaction(['headers', 'summaries', 'phone'], 'readwrite');
    for (const { header, summary } of records) {
      tx.objectStore('headers').put(header);
      tx.objectStore('summaries').put(summary);
    }
    await new Promise((done) => (tx.oncomplete = done));
    db.close();
  }, all);
}

const settled = 'the screen holds what it is for, laid out; the next frame paints it';

/** Goes there and waits until there is such an element. */
const show = (page, hash, shown) =>
  page.evaluate(
    ([to, selector]) =>
      new Promise((done) => {
        const look = () => {
          const found = document.querySelector(selector);
          if (!found) return;
          watch.disconnect();
          found.getBoundingClientRect();
          done();
        };
        const watch = new MutationObserver(look);
        watch.observe(document, { childList: true, subtree: true });
        location.hash = to;
        look();
      }),
    [hash, shown],
  );

/** Slides the table to its end and waits for the last build. */
const slideToEnd = (page) =>
  page.evaluate(
    (last) =>
      new Promise((done) => {
        const slide = document.querySelector('.compare-slide');
        const look = () => {
          const found = slide.querySelector(`[aria-colindex="${last}"]`);
          if (!found) return;
          watch.disconnect();
          found.getBoundingClientRect();
          done();
        };
        const watch = new MutationObserver(look);
        watch.observe(slide, { childList: true, subtree: true });
        slide.scrollLeft = slide.scrollWidth;
        look();
      }),
    beside + 1,
  );

const told = (times) => {
  const sorted = [...times].sort((a, b) => a - b);
  return `median ${sorted[sorted.length >> 1].toFixed(0)} ms, longest ${sorted.at(-1).toFixed(0)} ms of ${times.length}`;
};

const server = serve(join(root, 'dist'));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://localhost:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
try {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  await page.goto(address);
  await page.waitForSelector('h1');
  const all = history();
  await fill(page, all);
  await page.reload();
  await page.waitForSelector('h1');
  await pause(4000);
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const spent = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return 1000 * metrics.find((m) => m.name === 'TaskDuration').value;
  };
  /** ms of the page's processor, slowed, until it stands there. */
  const costOf = async (work) => {
    const before = await spent();
    await work();
    return slowed * ((await spent()) - before);
  };
  const cost = (hash, shown) => costOf(() => show(page, hash, shown));
  const some = await cost('#/compare/choose', '.choose-row');
  const rest = await costOf(() => page.getByRole('button', { name: 'Show older ones' }).waitFor());
  console.log(`${builds} builds, ${slowed}x slowed, until ${settled}`);
  console.log(`  the newest builds to choose from, the screen fetched: ${some.toFixed(0)} ms`);
  console.log(`  all summaries into memory, once: ${rest.toFixed(0)} ms more`);
  await page.evaluate((count) => {
    for (const row of [...document.querySelectorAll('.choose-row')].slice(0, count)) row.click();
  }, beside);
  const times = { table: [], end: [], two: [], factors: [] };
  for (let i = 0; i <= turns; i++) {
    const table = await cost('#/compare', '.compare td');
    const slid = await costOf(() => slideToEnd(page));
    const two = await cost('#/compare/two', '.scatter .shape');
    const factors = await cost('#/factors', '.rows a');
    await show(page, '#/compare/choose', '.choose-row');
    // The first turn fetches the screens.
    if (i > 0) {
      times.table.push(table);
      times.end.push(slid);
      times.two.push(two);
      times.factors.push(factors);
    }
  }
  console.log(`  ${beside} builds side by side: ${told(times.table)}`);
  console.log(`    slid to the last of them: ${told(times.end)}`);
  console.log(`  two figures of them:  ${told(times.two)}`);
  console.log(`  shop factors of all:  ${told(times.factors)}`);
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}
