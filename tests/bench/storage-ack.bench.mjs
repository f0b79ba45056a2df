// Time from asking to the acknowledged write, and what a long history does to opening:
// node tests/bench/storage-ack.bench.mjs [writes, 1500] [entries of history, 100000] [port, 4392]
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { figure, quantile } from './figure.mjs';
import { launch, servePage } from './kill-browser.mjs';

const writes = Number(process.argv[2] ?? 1500);
const history = Number(process.argv[3] ?? 100_000);
const port = Number(process.argv[4] ?? 4392);
const starts = 7;

async function inPage(profile, address, work) {
  const { page, browser, kill } = await launch(profile);
  try {
    await page.goto(address);
    return await work(page);
  } finally {
    await page.close().catch(() => {});
    await browser.close().catch(() => {});
    await kill();
  }
}

function told(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))].toFixed(1);
  return `median ${at(0.5)} ms, 99th ${at(0.99)} ms, longest ${at(1)} ms`;
}

/** The app's write and a bare one in turn, so that what else the machine does falls on both. */
async function besideBare(page) {
  const { times } = await page.evaluate((most) => window.bench.besideBare(most), writes);
  const [app, bare] = [times.map((t) => t.app), times.map((t) => t.bare)];
  console.log(`  acknowledged           ${told(app)}`);
  console.log(`  a bare strict write    ${told(bare)}`);
  for (const [what, share] of [
    ['median', 0.5],
    ['99th', 0.99],
  ])
    figure(
      `acknowledged write, ${what}`,
      `${quantile(app, share).toFixed(1)} ms, ${(quantile(app, share) / quantile(bare, share)).toFixed(2)} times a bare strict write`,
      '1.2 or less',
    );
}

const acknowledge = (page) => page.evaluate((most) => window.bench.writeOn('ack', () => {}, most), writes);

async function openings(profile, address) {
  const all = [];
  for (let i = 0; i < starts; i++)
    all.push(await inPage(profile, address, (page) => page.evaluate(() => window.bench.start())));
  console.log(`  opening                ${told(all.map((s) => s.took))}`);
  console.log(`  comparing, afterwards  ${told(all.map((s) => s.compare))}`);
  console.log(
    `  refilled               ${all.reduce((n, s) => n + s.compared.database + s.compared.lines, 0)}`,
  );
}

const { address, stop } = await servePage(port);
const profile = await mkdtemp(join(tmpdir(), 'tubewright-ack-'));
try {
  const { times, linesKept } = await inPage(profile, address, acknowledge);
  console.log(`${writes} writes in turn, second copy ${linesKept ? 'kept' : 'MISSING'}`);
  console.log(`  acknowledged           ${told(times)}`);
  await inPage(profile, address, besideBare);
  await openings(profile, address);
  const filling = Date.now();
  await inPage(profile, address, (page) => page.evaluate((n) => window.bench.fill(n), history));
  console.log(`after ${history} more entries (written in ${((Date.now() - filling) / 1000).toFixed(1)} s)`);
  const later = await inPage(profile, address, acknowledge);
  console.log(`  acknowledged           ${told(later.times)}`);
  await openings(profile, address);
} finally {
  await stop();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}
