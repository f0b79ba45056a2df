// Kills the browser at random moments of acknowledged writes and looks what is left:
// node tests/bench/kill-storage.bench.mjs [kills, 20] [port, 4391]
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { launch, servePage } from './kill-browser.mjs';

const kills = Number(process.argv[2] ?? 20);
const port = Number(process.argv[3] ?? 4391);
/** Looking reads whole files; a new profile now and then keeps them short. */
const killsPerProfile = 25;

const sums = {
  kills: 0,
  acknowledged: 0,
  lost: 0,
  lackedInLines: 0,
  lackedInDatabase: 0,
  tornBatches: 0,
  unreadable: 0,
  notOpened: 0,
  olderLost: 0,
  databaseCameBackEmpty: 0,
  refilledDatabase: 0,
  refilledLines: 0,
  withoutLines: 0,
};
let slowestOpening = 0;

async function writeAndKill(profile, address, run) {
  const acknowledged = [];
  const { page, kill } = await launch(profile);
  await page.exposeBinding('acknowledged', (_, ids) => acknowledged.push(...ids));
  await page.goto(address);
  page.evaluate((name) => window.bench.writeOn(name, window.acknowledged), run).catch(() => {});
  await pause(30 + Math.random() * 1200);
  await kill();
  return acknowledged;
}

async function look(profile, address, run) {
  const { page, browser, kill } = await launch(profile);
  try {
    await page.goto(address);
    return await page.evaluate((name) => window.bench.look(name), run);
  } finally {
    await page.close().catch(() => {});
    await browser.close().catch(() => {});
    await kill();
  }
}

/** Returns how many entries there are now. */
async function once(profile, address, run, before) {
  const acknowledged = await writeAndKill(profile, address, run);
  sums.kills += 1;
  sums.acknowledged += acknowledged.length;
  let left;
  try {
    left = await look(profile, address, run);
  } catch (error) {
    sums.notOpened += 1;
    console.error(`${run}: ${error.message}`);
    return before;
  }
  const [ids, inLines, atOpening] = [left.ids, left.inLines, left.atOpening].map((list) => new Set(list));
  sums.lost += acknowledged.filter((id) => !ids.has(id)).length;
  sums.lackedInLines += acknowledged.filter((id) => !inLines.has(id)).length;
  sums.lackedInDatabase += acknowledged.filter((id) => !atOpening.has(id)).length;
  sums.tornBatches += left.torn;
  sums.unreadable += left.unreadable;
  sums.olderLost += Math.max(0, before + left.ids.length - left.counts.entries);
  sums.databaseCameBackEmpty += left.refilled.database > 0 ? 1 : 0;
  sums.refilledDatabase += left.compared.database;
  sums.refilledLines += left.compared.lines;
  sums.withoutLines += left.linesKept ? 0 : 1;
  slowestOpening = Math.max(slowestOpening, left.took);
  return left.counts.entries;
}

const { address, stop } = await servePage(port);
try {
  for (let done = 0; done < kills; ) {
    const profile = await mkdtemp(join(tmpdir(), 'tubewright-kill-'));
    let entries = 0;
    for (let i = 0; i < killsPerProfile && done < kills; i++, done++) {
      entries = await once(profile, address, `run-${done}`, entries);
    }
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
} finally {
  stop();
}
for (const [what, sum] of Object.entries(sums)) console.log(`${what.padEnd(24)} ${sum}`);
console.log(`${'slowestOpening'.padEnd(24)} ${Math.round(slowestOpening)} ms`);
const bad = sums.lost + sums.olderLost + sums.tornBatches + sums.unreadable + sums.notOpened;
process.exitCode = bad > 0 ? 1 : 0;
