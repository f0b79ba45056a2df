// What one change of a wall costs in loads: 12 stations, 6 pieces, 3 load cases, in a Chromium slowed 4 times.
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright';
import { build } from 'vite';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';

const root = resolve(import.meta.dirname, '../..');
const outDir = join(root, 'node_modules/.cache/load-bench');
const SLOWED = 4;
const FRAME = 1000 / 60;

await build({
  configFile: false,
  logLevel: 'warn',
  root,
  build: {
    target: 'es2022',
    outDir,
    emptyOutDir: true,
    copyPublicDir: false,
    lib: {
      entry: join(root, 'src/calc/index.ts'),
      formats: ['iife'],
      name: 'calc',
      fileName: () => 'calc.js',
    },
  },
});
const executablePath = await findChromium();
const browser = await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: QUIET_FLAGS });
const page = await browser.newPage();
await page.addScriptTag({ content: await readFile(join(outDir, 'calc.js'), 'utf8') });
const session = await page.context().newCDPSession(page);
await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });

const times = await page.evaluate(() => {
  const { calc } = /** @type {any} */ (window);
  const [length, count] = [6, 12];
  const places = Array.from({ length: count }, (_, k) => (k * length) / (count - 1));
  const strength = { xt: 1.1e9, xc: 5e8, yt: 3e7, yc: 1.2e8, s: 5e7 };
  const carbon = { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, strength, density: 1500 };
  const straight = (/** @type {number} */ a, /** @type {number} */ b) => ({
    between: 'straight',
    stations: [
      { at: 0, value: a },
      { at: length, value: b },
    ],
  });
  const pieces = (/** @type {number} */ run) =>
    [0, 1, 2, 3, 4, 5].map((k) => ({
      kind: 'cloth',
      thickness: 0.0003,
      start: 0,
      clock: 1.1 * k,
      angle: k === 2 ? Math.PI / 4 : 0,
      overlap: 0.015,
      wraps: straight(2.4 + run / 1000, 1.3),
    }));
  const spread = { kind: 'spread', stations: places.map((at) => ({ at, value: 12 - at })) };
  const loads = [
    [spread, { kind: 'torque', at: length, torque: 5 }],
    [
      { kind: 'point', at: length, force: 40 },
      { kind: 'axial', at: length, force: -300 },
    ],
    [spread, { kind: 'point', at: 4, force: 60 }, { kind: 'axial', at: 5, force: -500 }],
  ];
  const all = [];
  for (let run = 0; run < 120; run += 1) {
    const roll = calc.rollPieces({ mandrel: straight(0.06, 0.04), pieces: pieces(run), length, step: 0.02 });
    const began = performance.now();
    const materials = roll.pieces.map((_, k) => (k % 2 ? { ...carbon, crimpFactor: 0.9 } : carbon));
    const stations = places.map((at) => ({
      at,
      section: calc.wallSection(calc.pliesAt({ roll, at, materials })),
    }));
    calc.tubeChecks({
      stations,
      supports: [
        { kind: 'sleeve', from: 0, to: 0.5, holdsTwist: true, holdsAxial: true },
        { kind: 'rest', at: 3 },
      ],
      cases: loads.map((list) => ({ loads: list, loadFactor: 1.5 })),
      safetyFactor: 2,
      freeLength: length,
    });
    if (run >= 20) all.push(performance.now() - began);
  }
  return all.sort((a, b) => a - b);
});
const at = (/** @type {number} */ share) => (times[Math.floor(share * (times.length - 1))] ?? 0).toFixed(1);
console.log(
  `12 stations, 6 pieces, 3 load cases, ${SLOWED}x slowed: median ${at(0.5)} ms, 95th ${at(0.95)} ms, ` +
    `least ${at(0)} ms of a frame of ${FRAME.toFixed(1)} ms`,
);
await browser.close();
