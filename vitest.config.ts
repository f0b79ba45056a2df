import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { findChromium, QUIET_FLAGS } from './scripts/ensure-chromium.mjs';

const jsx = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } } as const;
const executablePath = await findChromium();

export default defineConfig({
  test: {
    allowOnly: false,
    projects: [
      {
        ...jsx,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/{calc,reference,units,record,app}/**/*.test.{ts,tsx}'],
        },
      },
      {
        ...jsx,
        test: {
          name: 'storage',
          include: ['tests/{storage,platform}/**/*.test.ts'],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: { ...(executablePath ? { executablePath } : {}), args: QUIET_FLAGS },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
