// Proves that the lint rules which keep the folders' arrows one way do bite, on files that break them.
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const config = fileURLToPath(new URL('../biome.json', import.meta.url));
const biome = fileURLToPath(new URL('../node_modules/@biomejs/biome/bin/biome', import.meta.url));

const PROBES = [
  {
    path: 'shared/record/probe.ts',
    forbidden: ['#calc', '#storage/open.ts', '#app/main.tsx', '../../src/calc/resin.ts', 'preact', 'idb'],
    allowed: ['./entry.ts', '#shared/units/mass.ts', 'zod/mini'],
  },
  {
    path: 'src/calc/probe.ts',
    forbidden: [
      '#storage/open.ts',
      '#app/main.tsx',
      '../storage/open.ts',
      '../app/main.tsx',
      'preact',
      'idb',
      'zod/mini',
    ],
    allowed: ['./resin.ts'],
  },
  {
    path: 'src/storage/probe.ts',
    forbidden: ['#calc', '#app/main.tsx', '../calc/resin.ts', '../app/main.tsx', 'preact/hooks'],
    allowed: ['./open.ts', '#shared/record/entry.ts', 'idb'],
  },
  {
    path: 'src/app/probe.ts',
    forbidden: ['idb'],
    allowed: ['#calc', '#storage/open.ts', '#shared/record/entry.ts', 'preact'],
  },
];

/** Ways to write an import, each of which must be seen. */
const FORMS = [
  (/** @type {string} */ name) => `import '${name}';`,
  (/** @type {string} */ name) => `import { one } from '${name}';`,
  (/** @type {string} */ name) => `import type { One } from '${name}';`,
  (/** @type {string} */ name) => `export { one } from '${name}';`,
  (/** @type {string} */ name) => `await import('${name}');`,
];

const CLOCK = 'export const now = Date.now();';

/**
 * Lints files of the same paths in an empty folder, so that no broken file ever stands among the real ones.
 * @param {Map<string, string[]>} files lines by path
 * @returns {Set<string>} 'path:line:rule' of everything refused
 */
function lint(files) {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'arrows-')));
  copyFileSync(config, join(folder, 'biome.json'));
  for (const [path, lines] of files) {
    mkdirSync(join(folder, dirname(path)), { recursive: true });
    writeFileSync(join(folder, path), `${lines.join('\n')}\n`);
  }
  const options = ['--vcs-enabled=false', '--max-diagnostics=none', '--reporter=github'];
  const { stdout } = spawnSync(process.execPath, [biome, 'lint', ...options], {
    cwd: folder,
    encoding: 'utf8',
  });
  rmSync(folder, { recursive: true });
  const refused = stdout.matchAll(/title=lint\/\w+\/(\w+),file=([^,]+),line=(\d+)/g);
  return new Set(
    [...refused].map(([, rule, file = '', line]) => `${file.replace(`${folder}/`, '')}:${line}:${rule}`),
  );
}

const allForms = (/** @type {string[]} */ names) => names.flatMap((name) => FORMS.map((form) => form(name)));
const files = new Map(
  PROBES.map(({ path, forbidden, allowed }) => [path, [...allForms(forbidden), ...allForms(allowed), CLOCK]]),
);
const refused = lint(files);

/** @type {string[]} */
const faults = [];
for (const { path, forbidden } of PROBES) {
  const lines = files.get(path) ?? [];
  const forbiddenLines = forbidden.length * FORMS.length;
  lines.forEach((line, i) => {
    const rule = line === CLOCK ? 'noRestrictedGlobals' : 'noRestrictedImports';
    const wanted = line === CLOCK ? path.startsWith('src/calc/') : i < forbiddenLines;
    const found = refused.has(`${path}:${i + 1}:${rule}`);
    if (wanted && !found) faults.push(`${path} may write  ${line}  and must not`);
    if (!wanted && found) faults.push(`${path} may not write  ${line}  and should`);
  });
}
for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
