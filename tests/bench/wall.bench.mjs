// What dragging one station costs: 5 pieces of 12 stations on a 6 m tube at 1 mm, rolled, developed, nested.
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '../..');
const outDir = join(root, 'node_modules/.cache/wall-bench');
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

const LENGTH = 6;
const STATIONS = 12;
const RUNS = 200;
/** One frame at 60 Hz on a processor 4 times slower. */
const FRAME = 1000 / 60 / 4;

const mandrels = {
  cylinder: { stations: at([0.05, 0.05]), between: 'straight' },
  taper: { stations: at([0.06, 0.04]), between: 'straight' },
};

function at(values) {
  return values.map((value, k) => ({ at: (k * LENGTH) / (values.length - 1), value }));
}

function piecesFor(run) {
  return [0, 1, 2, 3, 4].map((piece) => {
    const plies = Array.from(
      { length: STATIONS },
      (_, k) => 2 + Math.sin(k + piece) + (k === 5 ? run / RUNS : 0),
    );
    return {
      kind: 'cloth',
      thickness: 0.0003,
      start: 0,
      clock: 1.2 * piece,
      angle: piece === 2 ? Math.PI / 4 : 0,
      overlap: 0.015,
      arealWeight: 0.193,
      density: 1800,
      wraps: { stations: at(plies), between: piece % 2 === 0 ? 'smooth' : 'straight' },
    };
  });
}

function drag(mandrel, run, times) {
  const timed = (name, work) => {
    const start = performance.now();
    const result = work();
    times[name].push(performance.now() - start);
    return result;
  };
  return timed('all', () => {
    const roll = timed('roll', () =>
      calc.rollPieces({ mandrel, pieces: piecesFor(run), length: LENGTH, step: 0.001 }),
    );
    const flat = timed('develop', () => roll.pieces.map((_, piece) => calc.developPiece({ roll, piece })));
    timed('weigh and check', () => {
      calc.tubeMass({ roll, resinDensity: 1180, fiberVolumeFraction: 0.35 });
      calc.edgesStack({ roll });
      calc.plyDrops({ roll });
    });
    const pieces = flat.map(({ outline }, k) => ({
      id: `${k}`,
      outline,
      count: 1,
      warpAngle: roll.pieces[k].spec.angle,
    }));
    return timed('nest', () =>
      calc.nestPieces({ pieces, rollWidth: 1.27, gap: 0.012, selvage: 0.01, tries: 1 }),
    );
  });
}

function told(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const ms = (share) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(2);
  return `least ${ms(0)} ms, median ${ms(0.5)} ms, 95th ${ms(0.95)} ms`;
}

for (const [name, mandrel] of Object.entries(mandrels)) {
  const times = { all: [], roll: [], develop: [], 'weigh and check': [], nest: [] };
  for (let run = 0; run < RUNS / 4; run += 1) drag(mandrel, run, times);
  for (const list of Object.values(times)) list.length = 0;
  for (let run = 0; run < RUNS; run += 1) drag(mandrel, run, times);
  console.log(`${name}: a frame at 4x slowed is ${FRAME.toFixed(2)} ms`);
  for (const [what, list] of Object.entries(times)) console.log(`  ${what.padEnd(16)} ${told(list)}`);
}
