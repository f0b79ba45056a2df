// Kills the app at random moments of its work and looks what is left; fewer kills by KILLS=100 npm run bench kills:
// node tests/bench/kills.bench.mjs [kills, 1000] [at once, 2]
import { servePage } from './kill-browser.mjs';
import { faults, runKills } from './kill-lives.mjs';

const kills = Number(process.argv[2] ?? process.env.KILLS ?? 1000);
const atOnce = Number(process.argv[3] ?? 2);
const tellEvery = 50;

const started = Date.now();
const { address, stop } = await servePage(0, 'kill-app');
const words = (sums) =>
  `${sums.kills} kills, ${sums.acknowledgedRecords} records acknowledged, ${sums.lostRecords} lost, ${sums.tornWrites} half written, ${sums.openingsFailed} openings failed`;
try {
  const sums = await runKills({
    address,
    kills,
    atOnce,
    say: (what) => console.error(`  ${what}`),
    onLife: (sums) => {
      if (sums.kills % tellEvery === 0) console.log(`  ${words(sums)}`);
    },
  });
  for (const [what, sum] of Object.entries(sums)) console.log(`  ${what.padEnd(24)} ${sum}`);
  console.log(`  ${words(sums)}, in ${Math.round((Date.now() - started) / 1000)} s`);
  process.exitCode = faults.some((fault) => sums[fault] > 0) ? 1 : 0;
} finally {
  await stop();
}
