// Memory of the page over an hour at the bench, the clock run forward, with presses through the screens:
// node tests/bench/memory.bench.mjs [rounds, 60]
import { join, resolve } from 'node:path';
import { chromium } from 'playwright';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';
import { figure } from './figure.mjs';

const rounds = Number(process.argv[2] ?? 60);
/** Rounds before the first measurement: by then screens are loaded, folds are kept and the engine has compiled what it runs. */
const warmUp = 20;
const root = resolve(import.meta.dirname, '../..');
const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };

const server = serve(join(root, 'dist'));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
const page = await (await browser.newContext(phone)).newPage();
await page.clock.install();
await page.goto(`http://localhost:${server.address().port}/`);
await page.getByRole('button', { name: 'Load the demo shop' }).tap();
await page.getByText('Demo shop, not your record').waitFor();
await page.getByRole('heading', { name: 'On the bench' }).waitFor();
const cdp = await page.context().newCDPSession(page);

async function held() {
  for (let i = 0; i < 3; i++) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await cdp.send('Memory.getDOMCounters');
  return { megabytes: usedSize / 1024 ** 2, nodes, listeners: jsEventListeners };
}

/** A minute at the bench: through the screens, and the clocks go on. */
async function round() {
  const bench = () => page.getByRole('link', { name: 'Bench', exact: true }).evaluate((link) => link.click());
  for (const kind of ['build', 'oven']) {
    // Pressed by script: where on the screen it stands, under the strip or the actions, is not what is measured.
    await page
      .locator(`.screen a[href^="#/${kind}/"]`)
      .first()
      .evaluate((row) => row.click());
    await page.getByRole('heading').first().waitFor();
    await page.clock.runFor(2000);
    await bench();
    await page.getByRole('heading', { name: 'On the bench' }).waitFor();
  }
  for (const tab of ['Plans', 'Record']) {
    await page.getByRole('link', { name: tab, exact: true }).evaluate((link) => link.click());
    await page.getByRole('heading').first().waitFor();
    await page.clock.runFor(2000);
  }
  await bench();
  await page.getByRole('heading', { name: 'On the bench' }).waitFor();
  await page.clock.fastForward(Math.max(3600_000 / rounds - 8000, 0));
}

try {
  for (let i = 0; i < warmUp; i++) await round();
  const before = await held();
  for (let i = 0; i < rounds; i++) await round();
  const after = await held();
  const told = ({ megabytes, nodes, listeners }) =>
    `${megabytes.toFixed(1)} MB, ${nodes} nodes, ${listeners} listeners`;
  console.log(`  before: ${told(before)}; after an hour in ${rounds} rounds: ${told(after)}`);
  figure(
    'memory after an hour at the bench',
    `${(after.megabytes - before.megabytes).toFixed(2)} MB and ${after.nodes - before.nodes} nodes more`,
    'no growth',
  );
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}
