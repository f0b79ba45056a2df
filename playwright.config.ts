import { defineConfig } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from './scripts/ensure-chromium.mjs';

const PORT = 4188;
const executablePath = await findChromium();

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  workers: 2,
  retries: 0,
  forbidOnly: true,
  timeout: 60_000,
  reporter: [['line'], ['json', { outputFile: 'node_modules/.cache/results/browser.json' }]],
  use: {
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
    command: `node scripts/serve.mjs dist --port ${PORT} --quiet`,
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
  },
});
