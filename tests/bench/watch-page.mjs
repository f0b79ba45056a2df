// What a page takes while it works: time, memory, and turns it does not give.
import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

export const mega = (bytes) => `${(bytes / 1e6).toFixed(0)} MB`;

/** Watches a page while it works: seconds, its processor's seconds, most memory, longest stretch without a turn. */
export async function watched(page, browser, work) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const metric = async (name) => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return metrics.find((m) => m.name === name).value;
  };
  const system = await browser.newBrowserCDPSession();
  await page.evaluate(() => {
    window.longest = 0;
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) window.longest = Math.max(window.longest, duration);
    }).observe({ type: 'longtask' });
  });
  const peaks = { heap: 0, memory: 0 };
  let going = true;
  const sampling = (async () => {
    while (going) {
      peaks.heap = Math.max(peaks.heap, await metric('JSHeapUsedSize'));
      const { processInfo } = await system.send('SystemInfo.getProcessInfo');
      for (const { id, type } of processInfo) {
        if (type === 'renderer') peaks.memory = Math.max(peaks.memory, residentOf(id));
      }
      await pause(250);
    }
  })();
  const [began, spent] = [Date.now(), await metric('TaskDuration')];
  await work();
  const seconds = (Date.now() - began) / 1000;
  const processor = (await metric('TaskDuration')) - spent;
  going = false;
  await sampling;
  const longest = await page.evaluate(() => window.longest);
  return (
    `${seconds.toFixed(0)} s (${processor.toFixed(0)} s of the page's processor), peak JS heap ${mega(peaks.heap)}, ` +
    `peak memory of the page's process ${mega(peaks.memory)}, longest task ${longest.toFixed(0)} ms`
  );
}

function residentOf(id) {
  try {
    return 1024 * Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0);
  } catch {
    return 0;
  }
}

/** Into the field as from the disk: through the driver a file of this size does not go. */
export async function choose(page, path) {
  const cdp = await page.context().newCDPSession(page);
  const { result } = await cdp.send('Runtime.evaluate', {
    expression: 'document.querySelector("input[type=file]")',
  });
  await cdp.send('DOM.setFileInputFiles', { files: [path], objectId: result.objectId });
}
