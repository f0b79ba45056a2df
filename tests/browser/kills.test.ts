import { expect, test } from '@playwright/test';
import { servePage } from '../bench/kill-browser.mjs';
import { faults, runKills } from '../bench/kill-lives.mjs';

test.use({ serviceWorkers: 'allow' });

const kills = 50;

test(`killed ${kills} times at random moments of its work, the app has every line that it acknowledged, whole`, async () => {
  test.setTimeout(480_000);
  const { address, stop } = await servePage(0, 'kill-app');
  try {
    const said: string[] = [];
    const sums = await runKills({ address, kills, atOnce: 2, say: (what: string) => said.push(what) });
    expect(sums.kills).toBe(kills);
    expect(sums.acknowledgedRecords).toBeGreaterThan(kills);
    expect(sums.saidOnScreen).toBeGreaterThan(0);
    expect(Object.fromEntries(faults.map((fault) => [fault, sums[fault]])), said.join('\n')).toEqual(
      Object.fromEntries(faults.map((fault) => [fault, 0])),
    );
  } finally {
    await stop();
  }
});
