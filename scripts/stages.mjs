// The checks that npm run check and npm test are made of. Each gives how many passed and failed.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { enginesHere } from './find-engines.mjs';

/** @typedef {{ passed: number, failed: number, skipped?: number, note?: string, output: string }} Result */
/** @typedef {{ name: string, run: () => Promise<Result>, needs?: string }} Stage */

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const RESULTS = join(ROOT, 'node_modules/.cache/results');
const UNIT_FOLDERS = ['calc', 'reference', 'units', 'record', 'app'];

/**
 * @param {string} script a JavaScript file below the project root
 * @param {string[]} args
 * @returns {Promise<{ ok: boolean, output: string }>}
 */
function node(script, args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (text) => {
        output += text;
      });
    }
    child.on('error', (error) => resolve({ ok: false, output: `${output}${error.message}\n` }));
    child.on('close', (code) => resolve({ ok: code === 0, output: stripVTControlCharacters(output) }));
  });
}

/**
 * @param {string} name
 * @param {string} script
 * @param {string[]} args
 * @param {string} [needs]
 * @returns {Stage}
 */
function single(name, script, args, needs) {
  const run = async () => {
    const { ok, output } = await node(script, args);
    return { passed: ok ? 1 : 0, failed: ok ? 0 : 1, output };
  };
  return needs ? { name, run, needs } : { name, run };
}

/** @param {string[]} folders */
function hasTests(folders) {
  return folders.some((folder) => {
    const path = join(ROOT, 'tests', folder);
    if (!existsSync(path)) return false;
    return readdirSync(path, { recursive: true }).some((file) => /\.(test|spec)\.tsx?$/.test(String(file)));
  });
}

/**
 * A suite that ran nothing, or broke outside any test, has not passed.
 * @param {{ ok: boolean, output: string }} ended
 * @param {{ passed: number, failed: number, skipped: number } | undefined} counts
 * @returns {Result}
 */
function judge({ ok, output }, counts) {
  if (!counts) return { passed: 0, failed: 1, output: `${output}\nThe suite ended without a report.\n` };
  const { passed, failed, skipped } = counts;
  if (passed + failed === 0) return { ...counts, failed: 1, output: `${output}\nThe suite ran no tests.\n` };
  return { passed, failed: failed === 0 && !ok ? 1 : failed, skipped, output };
}

/**
 * @param {string} name
 * @param {string[]} folders
 * @param {(report: string) => Promise<Result>} runSuite
 * @param {string} [needs]
 * @returns {Stage}
 */
function suite(name, folders, runSuite, needs) {
  const run = async () => {
    if (!hasTests(folders)) return { passed: 0, failed: 0, output: '' };
    const report = join(RESULTS, `${name}.json`);
    mkdirSync(RESULTS, { recursive: true });
    // A report left over from an earlier run must not stand for this one.
    rmSync(report, { force: true });
    return runSuite(report);
  };
  return needs ? { name, run, needs } : { name, run };
}

/** @param {string} file */
function readReport(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}

/** @param {string[]} projects */
function vitest(...projects) {
  return async (/** @type {string} */ report) => {
    const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${report}`];
    const which = projects.flatMap((project) => ['--project', project]);
    const ended = await node('node_modules/vitest/vitest.mjs', ['run', ...which, ...reporters]);
    const json = readReport(report);
    const counts = json && {
      passed: json.numPassedTests,
      failed: json.numFailedTests,
      skipped: json.numPendingTests + json.numTodoTests,
    };
    return judge(ended, counts);
  };
}

async function playwright(/** @type {string} */ report) {
  const ended = await node('node_modules/@playwright/test/cli.js', ['test']);
  const json = readReport(report);
  const counts = json && {
    passed: json.stats.expected + json.stats.flaky,
    failed: json.stats.unexpected,
    skipped: json.stats.skipped,
  };
  const late = json ? passedAtSecondTry(json) : [];
  const result = judge(ended, counts);
  return late.length > 0 ? { ...result, note: `passed at the second try: ${late.join('; ')}` } : result;
}

/**
 * @param {{ suites?: any[], specs?: any[] }} suite
 * @returns {string[]}
 */
function passedAtSecondTry({ suites = [], specs = [] }) {
  const own = specs.filter(({ tests }) => tests.some((/** @type {any} */ { status }) => status === 'flaky'));
  return [...own.map(({ file, title }) => `${file}: ${title}`), ...suites.flatMap(passedAtSecondTry)];
}

/** @type {Stage} */
const lockFile = {
  name: 'lock file',
  run: async () => {
    const found = /"resolved":/.test(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'));
    const output = found
      ? 'package-lock.json names download addresses ("resolved"). Keep .npmrc, and run npm install again.\n'
      : '';
    return { passed: found ? 0 : 1, failed: found ? 1 : 0, output };
  },
};

const types = single('types', 'node_modules/typescript/bin/tsc', ['-b']);
const lint = single('lint', 'node_modules/@biomejs/biome/bin/biome', [
  'check',
  '--error-on-warnings',
  '--max-diagnostics=200',
]);
const arrows = single('arrows', 'scripts/arrows.mjs', []);
const unit = suite('unit', UNIT_FOLDERS, vitest('pure', 'app'));
const storage = suite('storage', ['storage', 'platform'], vitest('storage'));
const build = single('build', 'node_modules/vite/bin/vite.js', ['build', '--logLevel', 'warn']);
const size = single('size', 'scripts/size.mjs', [], 'build');
const browser = suite('browser', ['browser'], playwright, 'build');

/** The job in every browser that is here. */
const inEngines = suite('engines', ['engines'], vitest('engines'));
/** @type {Stage} */
export const engines = {
  ...inEngines,
  needs: 'build',
  run: async () => ({ ...(await inEngines.run()), note: enginesHere() }),
};

export const QUICK = [types, lint, arrows, lockFile, unit];
export const ALL = [...QUICK, storage, build, size, browser, engines];
