// What a thumb that drags a station waits for: 5 pieces of 12 stations, 4x slowed processor, frame by frame.
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';

const SLOWED = 4;
const STATIONS = 12;
const PIECES = 5;
const MOVES = 90;
const FRAME = 1000 / 60;

/** @type {import('node:http').Server} */
const server = serve(fileURLToPath(new URL('../../dist', import.meta.url)));
await new Promise((ready) => server.listen(0, '127.0.0.1', () => ready(undefined)));
const address = server.address();
if (typeof address !== 'object' || address === null) throw new Error('the server has no port');
const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
const page = await (await browser.newContext(phone)).newPage();

/** @param {string} name */
const press = (name) => page.getByRole('button', { name, exact: true }).tap();
const count = async () =>
  Number(/of (\d+)/.exec((await page.getByText(/^Station \d+ of \d+$/).textContent()) ?? '')?.[1]);

await page.goto(`http://localhost:${address.port}/`);
await press('Load the demo shop');
await page.getByText('Demo shop, not your record').waitFor({ timeout: 60_000 });
await page.goto(`http://localhost:${address.port}/#/plan/demo-plan-lower-mast/wall`);
for (const name of ['Partners', 'Glass outside']) {
  await page
    .getByRole('link', { name: new RegExp(name) })
    .first()
    .tap();
  await press('Take it out');
  await page.getByRole('heading', { name: 'Wall and cloth' }).waitFor();
}
await page.getByRole('link', { name: /Skin/ }).first().tap();
while ((await count()) < STATIONS) {
  await press('Add a station');
  await press('Station after');
  if (/^Station (\d+) of \1$/.test((await page.getByText(/^Station \d+ of/).textContent()) ?? '')) {
    for (let k = await count(); k > 1; k -= 1) await press('Station before');
  }
}
for (let k = 1; k < PIECES; k += 1) await press('Copy it');
await page.getByText(`piece ${PIECES} of ${PIECES}`).waitFor();

const cdp = await page.context().newCDPSession(page);
await cdp.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
const handle = page.locator('.station-handle').nth(5);
await handle.scrollIntoViewIfNeeded();
await page.evaluate(() => scrollBy(0, 160));
const box = await handle.boundingBox();
if (!box) throw new Error('no station on the screen');
const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };

/** Seconds of the page's own thread, so that what else the machine does is not counted. */
async function spent() {
  const { metrics } = await cdp.send('Performance.getMetrics');
  const of = (/** @type {string} */ name) => metrics.find((m) => m.name === name)?.value ?? 0;
  return {
    script: of('ScriptDuration'),
    layout: of('LayoutDuration') + of('RecalcStyleDuration'),
    all: of('TaskDuration'),
  };
}

/** @param {'touchStart' | 'touchMove' | 'touchEnd'} type @param {{x: number, y: number}} [at] */
const touch = (type, at) => cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });

/** Counts frames, and those in which the picture changed, until it is told to stop. */
const watch = () => {
  const seen = { frames: /** @type {number[]} */ ([]), redraws: 0, stop: false };
  Object.assign(window, { seen });
  const plot = document.querySelector('.station-plot');
  if (!plot) throw new Error('no picture to drag in');
  const all = { subtree: true, childList: true, attributes: true, characterData: true };
  const observer = new MutationObserver(() => {
    seen.redraws += 1;
  });
  observer.observe(plot, all);
  let last = performance.now();
  const next = () => {
    const now = performance.now();
    seen.frames.push(now - last);
    last = now;
    if (seen.stop) observer.disconnect();
    else requestAnimationFrame(next);
  };
  requestAnimationFrame(next);
};

async function drag() {
  await touch('touchStart', from);
  await page.evaluate(watch);
  const before = await spent();
  const began = performance.now();
  for (let k = 1; k <= MOVES; k += 1) {
    // As a screen reports a thumb: once a frame.
    const early = began + k * FRAME - performance.now();
    if (early > 0) await new Promise((on) => setTimeout(on, early));
    await touch('touchMove', { x: from.x + 14 * Math.sin(k / 9), y: from.y - 40 * Math.sin(k / 14) });
  }
  const after = await spent();
  const { frames, redraws } = await page.evaluate(() => {
    const { seen } = /** @type {{seen: {frames: number[], redraws: number, stop: boolean}}} */ (
      /** @type {unknown} */ (window)
    );
    seen.stop = true;
    return seen;
  });
  await touch('touchEnd');
  await page.waitForTimeout(1500);
  return {
    frames,
    redraws,
    script: after.script - before.script,
    layout: after.layout - before.layout,
    all: after.all - before.all,
  };
}

/** @param {readonly number[]} values @param {number} share */
const at = (values, share) => [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? 0;

await drag();
for (let run = 1; run <= 3; run += 1) {
  const { frames, redraws, script, layout, all } = await drag();
  const each = (/** @type {number} */ s) => `${((s * 1000) / Math.max(1, redraws)).toFixed(1)} ms`;
  const within = frames.filter((ms) => ms < 1.5 * FRAME).length / frames.length;
  console.log(
    `drag ${run}, ${PIECES} pieces of ${STATIONS} stations, ${SLOWED}x slowed: ${redraws} redraws; ` +
      `a redraw takes script ${each(script)}, style and layout ${each(layout)}, all ${each(all)} of ${FRAME.toFixed(1)} ms; ` +
      `frames median ${at(frames, 0.5).toFixed(1)} ms, 95th ${at(frames, 0.95).toFixed(1)} ms, ${Math.round(within * 100)} % in time`,
  );
}
await browser.close();
server.close();
