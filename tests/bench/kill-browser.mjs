// A real browser on a profile that outlives it, for kills and cold starts.
import { spawn } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright';
import { build } from 'vite';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';

const root = resolve(import.meta.dirname, '../..');

/** A browser that does not end by itself is ended after this, ms */
const longestQuit = 10_000;

/** Builds a page of this folder, and serves it under the policy of the app; port 0 is any that is free. */
export async function servePage(port, name = 'kill-page') {
  const outDir = await mkdtemp(join(tmpdir(), `tubewright-${name}-`));
  await build({
    configFile: false,
    logLevel: 'warn',
    root: join(root, 'tests/bench', name),
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    base: './',
    worker: { format: 'es' },
    build: { target: 'es2022', outDir, emptyOutDir: true, assetsInlineLimit: 0, modulePreload: false },
  });
  const server = serve(outDir);
  await new Promise((ready) => server.listen(port, '127.0.0.1', ready));
  const stop = async () => {
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
    await rm(outDir, { recursive: true });
  };
  return { address: `http://localhost:${server.address().port}/`, stop };
}

/** Starts Chromium on the profile; `kill` ends it with all its processes, at once, `quit` as one closes a browser. */
export async function launch(profile, flags = []) {
  for (const file of await readdir(profile)) {
    if (file.startsWith('Singleton') || file === 'DevToolsActivePort') await rm(join(profile, file));
  }
  const executable = await findChromium();
  if (!executable) throw new Error('there is no Chromium');
  const child = spawn(
    executable,
    [
      ...QUIET_FLAGS,
      ...flags,
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
    // Its helpers die a moment later, and until then hold the files of the profile.
    for (let left = 500; left > 0 && groupLives(child.pid); left--) await pause(10);
  };
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await debugPort(profile)}`);
    const context = browser.contexts()[0];
    const quit = async () => {
      const session = await browser.newBrowserCDPSession().catch(() => undefined);
      await session?.send('Browser.close').catch(() => {});
      await Promise.race([gone, pause(longestQuit)]);
      await kill();
    };
    return { page: context.pages()[0] ?? (await context.newPage()), browser, kill, quit };
  } catch (error) {
    await kill();
    throw error;
  }
}

function groupLives(pid) {
  try {
    process.kill(-pid, 0);
    return true;
  } catch {
    return false;
  }
}

async function debugPort(profile) {
  for (let left = 750; ; left--) {
    const text = await readFile(join(profile, 'DevToolsActivePort'), 'utf8').catch(() => '');
    const port = text.split('\n')[0];
    if (port) return port;
    if (left === 0) throw new Error('the browser did not start');
    await pause(20);
  }
}
