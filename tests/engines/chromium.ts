import { join } from 'node:path';
import { type Page as PlaywrightPage, chromium as playwright } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from '../../scripts/ensure-chromium.mjs';
import { type Browser, type Engine, type Page, screen } from './engine.ts';

const executablePath = await findChromium();

class ChromiumPage implements Page {
  constructor(private readonly page: PlaywrightPage) {}

  async open(address: string): Promise<void> {
    await this.page.goto('about:blank');
    await this.page.goto(address);
  }

  async run<T, A extends unknown[]>(inPage: (...args: A) => T | Promise<T>, ...args: A): Promise<T> {
    return this.page.evaluate(
      `(async (args) => (${inPage})(...args))(${JSON.stringify(args)})`,
    ) as Promise<T>;
  }

  async touch(x: number, y: number, lasts: number): Promise<void> {
    const session = await this.page.context().newCDPSession(this.page);
    const touchPoints = [{ x, y }];
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
    await new Promise((lifted) => setTimeout(lifted, lasts));
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await session.detach();
  }

  async keys(keys: readonly string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  picture = (): Promise<Buffer> => this.page.screenshot();

  close = (): Promise<void> => this.page.close();
}

async function start(folder: string): Promise<Browser> {
  const context = await playwright.launchPersistentContext(folder, {
    ...(executablePath && { executablePath }),
    args: QUIET_FLAGS,
    viewport: screen,
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    locale: 'en-US',
    downloadsPath: join(folder, 'downloads'),
  });
  const troubles: string[] = [];
  context.on('weberror', (error) => troubles.push(error.error().message));
  context.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  const close = () => context.close();
  return {
    page: new ChromiumPage(context.pages()[0] ?? (await context.newPage())),
    newPage: async () => new ChromiumPage(await context.newPage()),
    troubles: async () => troubles,
    close,
    kill: close,
  };
}

/** Blink, by Playwright; kills of it have a test of their own in tests/browser. */
export const chromium: Engine = {
  name: 'Chromium',
  found: executablePath,
  keepsProfile: true,
  hasLinesFile: true,
  start,
};
