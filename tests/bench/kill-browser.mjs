// A real browser on a profile that outlives it, for kills and cold starts.
import { spawn } from 'node:child_process';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright';
import { build } from 'vite';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';

const root = resolve(import.meta.dirname, '../..');

/** Builds the page that writes, and serves it under the policy of the app. */
export async function servePage(port) {
  const outDir = join(root, 'node_modules/.cache/kill-page');
  await build({
    configFile: false,
    logLevel: 'warn',
    root: join(root, 'tests/bench/kill-page'),
    base: './',
    worker: { format: 'es' },
    build: { target: 'es2022', outDir, emptyOutDir: true, assetsInlineLimit: 0, modulePreload: false },
  });
  const server = spawn(
    process.execPath,
    [join(root, 'scripts/serve.mjs'), outDir, '--port', String(port), '--quiet'],
    { stdio: ['ignore', 'ignore', 'inherit'] },
  );
  const address = `http://localhost:${port}/`;
  for (let left = 50; ; left--) {
    const up = await fetch(address)
      .then((r) => r.ok)
      .catch(() => false);
    if (up) return { address, stop: () => server.kill() };
    if (left === 0) throw new Error(`nothing answers at ${address}`);
    await pause(100);
  }
}

/** Starts Chromium on the profile; `kill` ends it with all its processes, at once. */
export async function launch(profile) {
  for (const file of await readdir(profile)) {
    if (file.startsWith('Singleton') || file === 'DevToolsActivePort') await rm(join(profile, file));
  }
  const executable = await findChromium();
  if (!executable) throw new Error('there is no Chromium');
  const child = spawn(
    executable,
    [
      ...QUIET_FLAGS,
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  );
  const gone = new Promise((done) => child.once('exit', done));
  const kill = async () => {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch {
      // It has ended by itself.
    }
    await gone;
  };
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await debugPort(profile)}`);
    const context = browser.contexts()[0];
    return { page: await context.newPage(), browser, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

async function debugPort(profile) {
  for (let left = 150; ; left--) {
    const text = await readFile(join(profile, 'DevToolsActivePort'), 'utf8').catch(() => '');
    const port = text.split('\n')[0];
    if (port) return port;
    if (left === 0) throw new Error('the browser did not start');
    await pause(100);
  }
}
