// Finds a Chromium for the browser tests, or installs one.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NAMES = ['chromium', 'google-chrome', 'google-chrome-stable'];
const FIXED_PATHS = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** Keeps a test browser from talking to anybody. */
export const QUIET_FLAGS = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
];

/** @param {string} path */
export function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function fromEnvironment() {
  for (const name of ['CHROMIUM_PATH', 'CHROME_PATH']) {
    const path = process.env[name];
    if (!path) continue;
    if (!runnable(path)) throw new Error(`${name} is set to ${path}, which cannot be run.`);
    return path;
  }
  return undefined;
}

/** @param {string[]} names */
export function fromPath(names) {
  // A browser out of /snap runs confined and cannot read the profile folder a test gives it.
  const folders = (process.env.PATH ?? '').split(delimiter).filter((f) => f && !f.startsWith('/snap'));
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(runnable);
}

async function fromPlaywright() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
}

/**
 * The Chromium to drive, if there is one on this machine.
 * @returns {Promise<string | undefined>}
 */
export async function findChromium() {
  return fromEnvironment() ?? fromPath(NAMES) ?? FIXED_PATHS.find(runnable) ?? (await fromPlaywright());
}

/**
 * @param {string} command
 * @param {string[]} args
 */
function run(command, args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'], env }).status === 0;
}

function isDebianAsRoot() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  return /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));
}

/**
 * @param {string[]} packages
 * @returns whether they are here now; never on anything but a Debian that may be changed
 */
export function installByApt(packages) {
  if (!isDebianAsRoot()) return false;
  const apt = ['install', '-y', '--no-install-recommends', ...packages];
  return run('apt-get', apt) || (run('apt-get', ['update']) && run('apt-get', apt));
}

function install() {
  if (installByApt(['chromium'])) return;
  const cli = fileURLToPath(new URL('../node_modules/@playwright/test/cli.js', import.meta.url));
  run(process.execPath, [cli, 'install', '--with-deps', 'chromium']);
}

export async function ensureChromium() {
  const found = await findChromium();
  if (found) return found;
  console.log('No Chromium found: installing one for the browser tests');
  install();
  const installed = await findChromium();
  if (installed) return installed;
  throw new Error('No Chromium could be installed. Install one, or set CHROMIUM_PATH to it, and run again.');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    await ensureChromium();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
