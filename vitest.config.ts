import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { findChromium, QUIET_FLAGS } from './scripts/ensure-chromium.mjs';

// Node 20 has a WebSocket, for Firefox, but shows it only when asked to.
const execArgv = typeof WebSocket === 'undefined' ? ['--experimental-websocket'] : [];
const jsx = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } } as const;
const executablePath = await findChromium();

const inNode = {
  environment: 'node' as const,
  setupFiles: ['tests/property-seed.ts'],
  // Properties run hundreds of cases; a slow machine is no reason to fail one.
  testTimeout: 60_000,
};

export default defineConfig({
  test: {
    allowOnly: false,
    projects: [
      {
        ...jsx,
        test: {
          ...inNode,
          name: 'pure',
          // Nothing here has a state of its own: one process reads every module once, a third of the time.
          isolate: false,
          include: ['tests/{calc,reference,units,record}/**/*.test.ts'],
        },
      },
      { ...jsx, test: { ...inNode, name: 'app', include: ['tests/app/**/*.test.{ts,tsx}'] } },
      {
        ...jsx,
        // Found while the tests run, they would make the page reload under a test.
        optimizeDeps: { include: ['idb', 'uuid', 'zod/mini', 'fast-check', 'odex', 'papaparse'] },
        test: {
          name: 'storage',
          include: ['tests/{storage,platform}/**/*.test.ts'],
          testTimeout: 60_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            api: { host: '127.0.0.1' },
            provider: playwright({
              launchOptions: { ...(executablePath ? { executablePath } : {}), args: QUIET_FLAGS },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        test: {
          name: 'engines',
          environment: 'node',
          include: ['tests/engines/*.test.ts'],
          testTimeout: 60_000,
          execArgv,
        },
      },
    ],
  },
});
