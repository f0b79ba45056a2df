// From the touch to 'it is on disk' on the screen, and what a temperature costs in taps and seconds:
// node tests/bench/taps.bench.mjs
import { join, resolve } from 'node:path';
import { chromium } from 'playwright';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';

const root = resolve(import.meta.dirname, '../..');
const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
/** A glove's bounce: presses sooner than this after the last are the same press, ms */
const bounce = 400;

function told(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))].toFixed(0);
  return `median ${at(0.5)} ms, 99th ${at(0.99)} ms, longest ${at(1)} ms, of ${times.length}`;
}

async function startTube(page) {
  await page.goto(`${page.url().replace(/#.*/, '')}#/start`);
  await page.getByLabel('Name').fill('Boom');
  await page.getByLabel('Cloth on the scale').fill('121 g');
  await page.getByRole('button', { name: /^Start Boom/ }).tap();
  await page.getByRole('heading', { name: 'Mandrel prep' }).waitFor();
}

/** Ticks a step and takes it back, over and over; counts from the touch until the screen says that it is written. */
async function tickTimes(page, most) {
  await page.evaluate(() => {
    window.ticked = [];
    let touched = 0;
    addEventListener(
      'pointerup',
      (event) => {
        if (event.target.closest('.action')) touched = performance.now();
      },
      true,
    );
    new MutationObserver(() => {
      if (!document.querySelector('.undo-said')?.textContent?.startsWith('Ticked') || touched === 0) return;
      window.ticked.push(performance.now() - touched);
      touched = 0;
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  for (let i = 0; i < most; i++) {
    await page.locator('.action').last().tap();
    await page.getByText('Ticked: ').waitFor();
    await page.waitForTimeout(bounce);
    await page.getByRole('button', { name: 'Undo', exact: true }).tap();
    await page.waitForTimeout(bounce);
  }
  return page.evaluate(() => window.ticked);
}

/** From the bench of the demo: a chip, then 'Log'. */
async function logTemperature(page) {
  await page.goto(`${page.url().replace(/#.*/, '')}#/`);
  await page.getByRole('heading', { name: 'On the bench' }).waitFor();
  const row = page.getByRole('link', { name: /Oven load/ }).first();
  const started = Date.now();
  let taps = 0;
  const chip = page.getByRole('button', { name: /^6\d/ }).nth(2);
  if ((await chip.count()) === 0) {
    await row.tap();
    taps++;
  }
  await chip.tap();
  await page.getByRole('button', { name: /^Log / }).tap();
  taps += 2;
  await page
    .getByText(/Logged|Undo/)
    .first()
    .waitFor();
  return { taps, seconds: (Date.now() - started) / 1000 };
}

/** From the bench, with a tube that is ready to be mixed for, to the first figure to pour to. */
async function firstTarget(page) {
  await startTube(page);
  await page.getByRole('button', { name: 'All stages' }).tap();
  await page.getByRole('button', { name: /^Mix/ }).tap();
  await page.getByRole('button', { name: 'All done to here' }).tap();
  await page.getByText('Ticked, times not seen').waitFor();
  await page.getByRole('button', { name: 'Only tick it' }).tap();
  await page.getByRole('link', { name: 'Bench', exact: true }).tap();
  const started = Date.now();
  await page.getByRole('link', { name: 'Mix the first cup' }).tap();
  await page.getByRole('button', { name: 'Tare cup 1 and start' }).tap();
  await page.getByRole('heading', { name: 'Pour resin to' }).waitFor();
  return { taps: 2, seconds: (Date.now() - started) / 1000 };
}

const server = serve(join(root, 'dist'));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://localhost:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
try {
  for (const rate of [1, 4]) {
    const page = await (await browser.newContext(phone)).newPage();
    const cdp = await page.context().newCDPSession(page);
    await page.goto(address);
    await page.waitForSelector('h1');
    await startTube(page);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate });
    const times = await tickTimes(page, 40);
    console.log(`  tap to durable acknowledgment on the screen, ${rate}x slowed: ${told(times)}`);
    await page.context().close();
  }
  const page = await (await browser.newContext(phone)).newPage();
  await page.goto(address);
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await page.getByText('Demo shop, not your record').waitFor();
  const { taps, seconds } = await logTemperature(page);
  const own = await (await browser.newContext(phone)).newPage();
  await own.goto(address);
  await own.waitForSelector('h1');
  const cup = await firstTarget(own);
  console.log(
    `  the first target of a cup from the bench: ${cup.taps} taps, ${cup.seconds.toFixed(1)} s by machine`,
  );
  console.log(`  a temperature by chips from the bench: ${taps} taps, ${seconds.toFixed(1)} s by machine`);
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}
