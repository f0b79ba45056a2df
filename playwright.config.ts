import { createServer } from 'node:net';
import { defineConfig } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from './scripts/ensure-chromium.mjs';

// A port of its own, told to the workers through the environment, so that two runs never share a server.
process.env.TEST_PORT ??= String(await freePort());
const PORT = Number(process.env.TEST_PORT);
const executablePath = await findChromium();

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  // One a core: with three at once a tap comes late enough to be taken for another.
  workers: 2,
  // A laden machine is late now and then; a fault fails twice. What needed its second try is told by name.
  retries: 1,
  forbidOnly: true,
  timeout: 60_000,
  reporter: [['line'], ['json', { outputFile: 'node_modules/.cache/results/browser.json' }]],
  use: {
    // Keeping all of the app anew for every test took a quarter of the time: what is about it says 'allow'.
    serviceWorkers: 'block',
    baseURL: `http://localhost:${PORT}/`,
    launchOptions: { ...(executablePath ? { executablePath } : {}), args: QUIET_FLAGS },
  },
  projects: [
    {
      name: 'phone',
      use: {
        viewport: { width: 360, height: 740 },
        hasTouch: true,
        isMobile: true,
        deviceScaleFactor: 2,
        locale: 'en-US',
      },
    },
  ],
  webServer: {
    command: `node scripts/serve.mjs ${process.env.TEST_DIST ?? 'dist'} --port ${PORT} --quiet`,
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
  },
});

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
