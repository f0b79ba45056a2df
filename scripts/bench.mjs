// Runs the benchmarks in tests/bench one after the other, on the built app: npm run bench [words of a file name]
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'tests', 'bench');
const wanted = process.argv.slice(2);

const files = (existsSync(folder) ? readdirSync(folder) : [])
  .filter((file) => file.endsWith('.bench.mjs'))
  .filter((file) => wanted.length === 0 || wanted.some((word) => file.includes(word)))
  .sort();

if (files.length === 0) {
  console.error('There is no such benchmark: tests/bench holds them, named something.bench.mjs.');
  process.exitCode = 1;
}
for (const file of files) {
  console.log(`\n${file.replace('.bench.mjs', '')}`);
  const { status } = spawnSync(process.execPath, [join(folder, file)], { cwd: root, stdio: 'inherit' });
  if (status !== 0) {
    console.error(`${file} did not finish.`);
    process.exitCode = 1;
  }
}
