import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { findWebKit } from '../../scripts/find-engines.mjs';
import { type Browser, type Engine, keyActions, type Page, screen, touchActions } from './engine.ts';
import { freePort, Group } from './processes.ts';
import { until } from './until.ts';

type Ask = (method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) => Promise<unknown>;

const asking =
  (address: string): Ask =>
  async (method, path, body) => {
    const answer = await fetch(address + path, {
      method,
      ...(body && { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } }),
    });
    const { value } = (await answer.json()) as { value: { error?: string; message?: string } | null };
    if (!answer.ok) throw new Error(`${path}: ${value?.error}: ${value?.message}`);
    return value;
  };

/** One page at a time has WebDriver's attention, so every command names its window first. */
class WebKitPage implements Page {
  closed = false;

  constructor(
    private readonly ask: Ask,
    private readonly handle: string,
    private readonly attention: { on: string },
  ) {}

  /** With no window manager the full screen alone leaves it at its usual size. */
  async toPhoneSize(): Promise<void> {
    await this.look();
    await this.ask('POST', '/window/rect', { x: 0, y: 0, ...screen });
    await this.ask('POST', '/window/fullscreen', {});
  }

  async open(url: string): Promise<void> {
    await this.look();
    await this.ask('POST', '/url', { url: 'about:blank' });
    await this.ask('POST', '/url', { url });
    await this.run(watchForTrouble);
  }

  async run<T, A extends unknown[]>(inPage: (...args: A) => T | Promise<T>, ...args: A): Promise<T> {
    await this.look();
    const script = `const done = arguments[1];
      (async () => (${inPage})(...JSON.parse(arguments[0])))()
        .then((value) => done(JSON.stringify({ value })), (error) => done(JSON.stringify({ error: String(error) })));`;
    const said = await this.ask('POST', '/execute/async', { script, args: [JSON.stringify(args)] });
    const { value, error } = JSON.parse(said as string);
    if (error !== undefined) throw new Error(error);
    return value;
  }

  // WebKitGTK's driver knows no finger.
  touch = (x: number, y: number, lasts: number): Promise<void> =>
    this.perform(touchActions('mouse', x, y, lasts));

  keys = (keys: readonly string[]): Promise<void> => this.perform(keyActions(keys));

  async picture(): Promise<Buffer> {
    await this.look();
    return Buffer.from((await this.ask('GET', '/screenshot')) as string, 'base64');
  }

  async close(): Promise<void> {
    await this.look();
    const [left] = (await this.ask('DELETE', '/window')) as string[];
    await this.ask('POST', '/window', { handle: left });
    this.attention.on = left ?? '';
    this.closed = true;
  }

  private async perform(actions: object[]): Promise<void> {
    await this.look();
    await this.ask('POST', '/actions', { actions });
  }

  private async look(): Promise<void> {
    if (this.attention.on === this.handle) return;
    await this.ask('POST', '/window', { handle: this.handle });
    this.attention.on = this.handle;
  }
}

/** This driver tells nothing of the console: the page itself notes what goes wrong from its loading on. */
function watchForTrouble(): void {
  const noted: string[] = [];
  Object.assign(window, { troublesNoted: noted });
  addEventListener('error', (e) => noted.push(e.message));
  addEventListener('unhandledrejection', (e) => noted.push(String(e.reason)));
  addEventListener('securitypolicyviolation', (e) =>
    noted.push(`policy refused ${e.blockedURI || e.violatedDirective}`),
  );
}

const troublesNoted = () => (window as unknown as { troublesNoted?: string[] }).troublesNoted ?? [];

async function start(folder: string): Promise<Browser> {
  const downloads = join(folder, 'downloads');
  await mkdir(downloads, { recursive: true });
  await writeFile(join(folder, 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${downloads}"\n`);
  const xvfb = Group.start('Xvfb', [
    '-displayfd',
    '3',
    '-screen',
    '0',
    `${screen.width}x${screen.height}x24`,
    '-nolisten',
    'tcp',
  ]);
  const display = await xvfb.says(/(\d+)\n/, 3);
  const port = await freePort();
  const driver = Group.start('WebKitWebDriver', [`--port=${port}`], {
    DISPLAY: `:${display}`,
    HOME: folder,
    XDG_CONFIG_HOME: folder,
    XDG_CACHE_HOME: folder,
    XDG_DATA_HOME: folder,
    LANG: 'en_US.UTF-8',
    LANGUAGE: 'en_US',
  });
  const askDriver = asking(`http://127.0.0.1:${port}`);
  await until('WebKitWebDriver answers', () => askDriver('GET', '/status').then(() => true));
  const browser = { binary: webkit.found, args: ['--automation', '--full-screen'] };
  const session = (await askDriver('POST', '/session', {
    capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': browser } },
  })) as { sessionId: string };
  const ask: Ask = (method, path, body) => askDriver(method, `/session/${session.sessionId}${path}`, body);
  const first = (await ask('GET', '/window')) as string;
  const attention = { on: first };
  const pages = [new WebKitPage(ask, first, attention)];
  const [page] = pages as [WebKitPage];
  await page.toPhoneSize();
  const end = async (signal: 'SIGTERM' | 'SIGKILL') => {
    await Promise.all([driver.end(signal), xvfb.end(signal)]);
  };
  return {
    page,
    newPage: async () => {
      // A tab behind another would neither paint nor take a touch; a window lies beside the first.
      const { handle } = (await ask('POST', '/window/new', { type: 'window' })) as { handle: string };
      const opened = new WebKitPage(ask, handle, attention);
      await opened.toPhoneSize();
      pages.push(opened);
      return opened;
    },
    troubles: async () => {
      const noted: string[] = [];
      for (const open of pages.filter((one) => !one.closed)) noted.push(...(await open.run(troublesNoted)));
      return noted;
    },
    close: async () => {
      await ask('DELETE', '').catch(() => {});
      await end('SIGTERM');
    },
    kill: () => end('SIGKILL'),
  };
}

/** WebKitGTK's own small browser, by WebDriver over HTTP. */
export const webkit: Engine = {
  name: 'WebKit',
  found: findWebKit(),
  keepsProfile: false,
  hasLinesFile: false,
  start,
};
