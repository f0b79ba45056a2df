// What counting a cure costs: 100,000 readings of a logger, on a processor 4 times slower.
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '../..');
const outDir = join(root, 'node_modules/.cache/cure-bench');
// Built as for the phone: run through a loader, every call between files would cost more than its work.
await build({
  configFile: false,
  logLevel: 'warn',
  root,
  build: {
    target: 'es2022',
    outDir,
    emptyOutDir: true,
    copyPublicDir: false,
    lib: { entry: join(root, 'src/calc/index.ts'), formats: ['es'], fileName: 'calc' },
  },
});
const calc = await import(pathToFileURL(join(outDir, 'calc.js')).href);

const READINGS = 100_000;
const RUNS = 30;
/** A phone is taken to be so many times slower than this machine. */
const SLOWER = 4;
const WANTED = 20;

const readings = Array.from({ length: READINGS }, (_, k) => ({
  time: k * 10,
  temperature: 333.15 + 20 * Math.sin(k / 500) + (k % 7) / 10,
}));
const curePoints = [
  { temperature: 298.15, time: 172800 },
  { temperature: 339.15, time: 10800 },
];

/** @param {string} name @param {() => unknown} work */
function time(name, work) {
  const took = Array.from({ length: RUNS }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  const middle = SLOWER * (took[Math.floor(RUNS / 2)] ?? 0);
  const says = middle <= WANTED ? `under ${WANTED} ms` : `OVER ${WANTED} ms`;
  console.log(`  ${name}, ${READINGS} readings, 4x slowed: ${middle.toFixed(1)} ms (${says})`);
}

time('equivalent time', () =>
  calc.equivalentTime({ readings, referenceTemperature: 333.15, activationEnergy: 57000 }),
);
time('cure time used', () => calc.cureTimeUsed({ readings, curePoints }));
time('cure progress, with stalling', () =>
  calc.cureProgress({ readings, curePoints, wanted: 380, own: 400 }),
);
time('part by the air', () => calc.followingReadings({ readings, timeConstant: 130, start: 296 }));
