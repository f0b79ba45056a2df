// Visits and cold starts of a page on a browser profile that outlives them.
import { setTimeout as pause } from 'node:timers/promises';
import { serve } from '../../scripts/serve.mjs';
import { launch } from './kill-browser.mjs';

export const slowed = 4;

export async function listen(folder) {
  const server = serve(folder);
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { server, address: `http://localhost:${server.address().port}/` };
}

export async function close(server) {
  server.closeAllConnections();
  await new Promise((done) => server.close(done));
}

/** A browser on the profile for as long as `work` takes. */
export async function withBrowser(profile, work) {
  const { page, browser, kill } = await launch(profile);
  try {
    return await work(page, browser);
  } finally {
    await browser.close().catch(() => {});
    await kill();
  }
}

/** One start of a browser that has the page in its cache and nobody to ask: ms to the first screen, and of its processor. */
export function oneStart(profile, address) {
  return withBrowser(profile, async (page) => {
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await page.goto(address, { waitUntil: 'commit' });
    const times = await page.evaluate(
      () =>
        new Promise((done) => {
          const look = () => {
            const paint = performance.getEntriesByName('first-contentful-paint')[0];
            if (document.querySelector('h1') && paint)
              done({ ready: performance.now(), paint: paint.startTime });
            else requestAnimationFrame(look);
          };
          look();
        }),
    );
    const { metrics } = await cdp.send('Performance.getMetrics');
    return { ...times, processor: 1000 * metrics.find((m) => m.name === 'TaskDuration').value };
  });
}

/**
 * Long enough on the page that it is kept whole for the starts without a network. The browser is closed and not killed:
 * killed before it wrote down what is in its cache, it would go through every file of it at each later start.
 */
export async function visit(profile, address, work = () => {}) {
  const { page, quit } = await launch(profile);
  try {
    for (let i = 0; i < 2; i++) {
      await page.goto(address);
      await page.waitForSelector('h1');
      await page.evaluate(() => navigator.serviceWorker.ready);
      await pause(1500);
    }
    await work(page);
  } finally {
    await quit();
  }
}
