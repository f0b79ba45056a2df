// Installs the packages the lock file names, when what is installed differs. No imports outside node:.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, link?: boolean, os?: string[], cpu?: string[] }} LockedPackage */

/**
 * @param {string} file
 * @returns {Record<string, LockedPackage> | undefined}
 */
function readPackages(file) {
  if (!existsSync(file)) return undefined;
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * Why an install is needed, or undefined when everything is in place.
 * npm writes node_modules/.package-lock.json last, so an install that was cut short has none.
 * @returns {string | undefined}
 */
function missing() {
  const wanted = readPackages(join(root, 'package-lock.json'));
  if (!wanted)
    throw new Error('package-lock.json is missing or unreadable: restore it from version control.');
  const installed = readPackages(join(root, 'node_modules', '.package-lock.json'));
  if (!installed) return 'nothing is installed yet';
  for (const [path, { version, integrity, optional }] of Object.entries(wanted)) {
    if (path === '') continue;
    const present = installed[path];
    if (!present) {
      if (optional) continue;
      return `${path} is not installed`;
    }
    if (present.version !== version || present.integrity !== integrity) return `${path} is another version`;
    if (!existsSync(join(root, path, 'package.json'))) return `${path} is gone`;
  }
  for (const [path, { os, cpu }] of Object.entries(installed)) {
    if (os && !os.includes(process.platform)) return `${path} is for another system`;
    if (cpu && !cpu.includes(process.arch)) return `${path} is for another processor`;
  }
  return undefined;
}

const major = Number(process.versions.node.split('.')[0]);
if (major < 20) {
  console.error(`Node ${process.versions.node} is too old: Tubewright needs Node 20 or newer.`);
  process.exit(1);
}

const reason = missing();
if (reason) {
  console.log(`Installing packages (${reason})`);
  // --include=dev: NODE_ENV=production would leave the build tools out.
  const { status } = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error('The packages could not be installed. The lines above say why; a network is needed once.');
    process.exit(1);
  }
}
