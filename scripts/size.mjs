// What a first visit loads before anything is on the screen, in gzip bytes, against the budget.
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';

const BUDGET = 70 * 1024;
const dist = new URL('../dist/', import.meta.url);

/** @param {string} file */
const read = (file) => readFileSync(new URL(file, dist), 'utf8');

/**
 * The scripts the page names and every script those import statically.
 * @returns {Map<string, number>} gzip bytes by file
 */
function firstLoadScripts() {
  const html = read('index.html');
  const queue = [...html.matchAll(/(?:src|href)="\.\/([^"]+\.js)"/g)].map(([, file = '']) => file);
  /** @type {Map<string, number>} */
  const bytes = new Map();
  for (const file of queue) {
    if (bytes.has(file)) continue;
    const code = read(file);
    bytes.set(file, gzipSync(code, { level: 9 }).length);
    for (const [, target = ''] of code.matchAll(/(?:\bfrom|\bimport)\s*["'](\.\.?\/[^"']+\.js)["']/g)) {
      queue.push(posix.join(posix.dirname(file), target));
    }
  }
  return bytes;
}

/** Every script of the app, those fetched once it is idle too. */
function allScripts() {
  const files = readdirSync(new URL('assets/', dist)).filter((file) => file.endsWith('.js'));
  return files.reduce((sum, file) => sum + gzipSync(read(`assets/${file}`), { level: 9 }).length, 0);
}

const scripts = firstLoadScripts();
const total = [...scripts.values()].reduce((sum, size) => sum + size, 0);
for (const [file, size] of scripts) console.log(`${String(size).padStart(8)}  ${file}`);
console.log(`${String(total).padStart(8)}  first-load script, gzip bytes (budget ${BUDGET})`);
console.log(`${String(allScripts()).padStart(8)}  all script`);
if (scripts.size === 0) {
  console.error('dist/index.html names no script: the build is not what it should be.');
  process.exitCode = 1;
}
if (total > BUDGET) {
  console.error(
    `The first-load script is ${total - BUDGET} bytes over its budget: load a part on demand instead.`,
  );
  process.exitCode = 1;
}
