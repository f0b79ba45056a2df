// Runs the benchmarks in tests/bench one after the other, on the built app, and ends with a table of their figures.
//   npm run bench                       every one, the long ones shortened: about a quarter of an hour
//   npm run bench cold-start lighthouse those whose file names have one of the words, in full
//   npm run bench -- --all              every one in full
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'tests', 'bench');
const all = process.argv.includes('--all');
const wanted = process.argv.slice(2).filter((word) => !word.startsWith('--'));

/**
 * What the long ones are asked for when all are run: they prove their figure in full by their own word.
 * @type {Record<string, string[]>}
 */
const shortened = {
  'cold-start': ['5', '100'],
  compare: ['1000'],
  kills: ['50'],
  logger: ['20000'],
  'storage-ack': ['300', '20000'],
  memory: ['12'],
  'restore-fuzz': ['2000', '20', '60'],
};
/** Left out unless asked for by name or with --all: there is no short form that says anything. */
const onlyInFull = ['big-shop'];

const named = (/** @type {string} */ file) => file.replace('.bench.mjs', '');
const files = readdirSync(folder)
  .filter((file) => file.endsWith('.bench.mjs'))
  .filter((file) =>
    wanted.length > 0
      ? wanted.some((word) => file.includes(word))
      : all || !onlyInFull.some((word) => file.includes(word)),
  )
  .sort();

/**
 * Runs one, lets its words through and keeps its figures: lines that begin with a bar.
 * @param {string} file
 * @returns {Promise<{figures: string[][], finished: boolean}>}
 */
async function run(file) {
  const short = all || wanted.length > 0 ? [] : (shortened[named(file)] ?? []);
  const child = spawn(process.execPath, [join(folder, file), ...short], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise((resolve) => child.once('close', resolve));
  /** @type {string[][]} */
  const figures = [];
  for await (const line of createInterface({ input: child.stdout })) {
    if (line.startsWith('| ')) figures.push(line.slice(2).split(' | '));
    else console.log(line);
  }
  return { figures, finished: (await ended) === 0 };
}

if (files.length === 0) {
  console.error('There is no such benchmark: tests/bench holds them, named something.bench.mjs.');
  process.exitCode = 1;
}
/** @type {string[][]} */
const table = [];
for (const file of files) {
  const began = Date.now();
  console.log(`\n${named(file)}`);
  const { figures, finished } = await run(file);
  table.push(...figures);
  console.log(`  took ${((Date.now() - began) / 1000).toFixed(0)} s`);
  if (finished) continue;
  console.error(`${file} did not finish.`);
  process.exitCode = 1;
}
if (table.length > 0) {
  const width = Math.max(...table.map(([what = '']) => what.length));
  const second = Math.max(...table.map(([, value = '']) => value.length));
  console.log('\nAll figures');
  for (const [what = '', value = '', goal = ''] of table) {
    const wantedIs = goal.trim() === '' ? '' : `  goal: ${goal.trim()}`;
    console.log(`  ${what.padEnd(width)}  ${value.padEnd(second)}${wantedIs}`.trimEnd());
  }
}
