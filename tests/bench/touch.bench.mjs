// How often a gloved thumb strays, screen by screen of the bench, and the lowest contrast there: npm run bench touch
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const { status } = spawnSync(
  process.execPath,
  ['node_modules/@playwright/test/cli.js', 'test', 'tests/browser/touch-budget.test.ts', '--reporter=line'],
  { cwd: root, stdio: 'inherit', env: { ...process.env, PRINT_TOUCHES: 'yes' } },
);
process.exitCode = status ?? 1;
