// What Lighthouse says of the built app, as a phone and as a desk: node tests/bench/lighthouse.bench.mjs
// It is 111 MB of packages that nothing else needs: installed beside the app's own, on the first run.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { serve } from '../../scripts/serve.mjs';
import { figure } from './figure.mjs';
import { launch } from './kill-browser.mjs';

const version = '12.2.3';
const root = resolve(import.meta.dirname, '../..');
const tools = join(root, 'node_modules/.cache/lighthouse');
const cli = join(tools, 'node_modules/lighthouse/cli/index.js');
const judged = ['performance', 'accessibility', 'best-practices'];

const run = (command, args, env = {}) =>
  new Promise((done, fail) => {
    const child = spawn(command, args, {
      cwd: root,
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, ...env },
    });
    child.once('error', fail);
    child.once('close', (code) => (code === 0 ? done() : fail(new Error(`${command} ended with ${code}`))));
  });

if (!existsSync(cli)) {
  await mkdir(tools, { recursive: true });
  await run('npm', ['install', '--prefix', tools, '--no-save', '--no-audit', `lighthouse@${version}`]);
}

const server = serve(join(root, 'dist'));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://localhost:${server.address().port}/`;
const profile = await mkdtemp(join(tmpdir(), 'tubewright-lighthouse-'));

/** Loads the demo shop into the profile; gives the address of the mixing screen of a tube on its bench. */
async function loadDemo() {
  const { page, browser, kill } = await launch(profile);
  try {
    await page.goto(address);
    await page.getByRole('button', { name: 'Load the demo shop' }).click();
    await page.getByText('Demo shop, not your record').waitFor();
    const row = page.locator('main a[href^="#/build/"], .screen a[href^="#/build/"]').first();
    return ((await row.getAttribute('href')) ?? '').replace('/build/', '/mix/');
  } finally {
    await browser.close().catch(() => {});
    await kill();
  }
}

async function judge(what, hash, { desk, demo }) {
  const out = join(profile, 'report.json');
  const flags = ['--headless=new', ...QUIET_FLAGS, ...(demo ? [`--user-data-dir=${profile}`] : [])];
  await run(
    process.execPath,
    [
      cli,
      `${address}${hash}`,
      '--quiet',
      '--output=json',
      `--output-path=${out}`,
      `--only-categories=${judged.join(',')}`,
      `--chrome-flags=${flags.join(' ')}`,
      ...(demo ? ['--disable-storage-reset'] : []),
      ...(desk ? ['--preset=desktop'] : []),
    ],
    { CHROME_PATH: await findChromium() },
  );
  const { categories, audits } = JSON.parse(await readFile(out, 'utf8'));
  const scores = judged.map((name) => `${name} ${Math.round((categories[name].score ?? 0) * 100)}`);
  figure(`lighthouse, ${what}, ${desk ? 'desk' : 'phone'}`, scores.join(', '), '100 each');
  for (const name of judged) {
    for (const { id, weight } of categories[name].auditRefs) {
      const { score, title, displayValue = '' } = audits[id];
      if (weight > 0 && score !== null && score < 0.95)
        console.log(`  ${what}, ${desk ? 'desk' : 'phone'}: ${title} ${displayValue} (${name}, ${score})`);
    }
  }
}

try {
  for (const desk of [false, true]) await judge('empty bench', '', { desk, demo: false });
  const mix = await loadDemo();
  for (const desk of [false, true]) {
    await judge('demo bench', '', { desk, demo: true });
    await judge('mixing screen', mix, { desk, demo: true });
  }
} finally {
  server.closeAllConnections();
  server.close();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}
