import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { findFirefox } from '../../scripts/find-engines.mjs';
import { BidiLink } from './bidi-link.ts';
import { type Browser, type Engine, keyActions, type Page, screen, touchActions } from './engine.ts';
import { Group } from './processes.ts';

const preferences = (downloads: string) => ({
  'browser.download.dir': downloads,
  'browser.download.folderList': 2,
  'browser.download.useDownloadDir': true,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.homepage_override.mstone': 'ignore',
  'datareporting.policy.dataSubmissionEnabled': false,
  'intl.accept_languages': 'en-US',
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'toolkit.telemetry.reportingpolicy.firstRun': false,
  // Killed often enough, it would offer its safe mode instead of the page.
  'toolkit.startup.max_resumed_crashes': -1,
});

class FirefoxPage implements Page {
  constructor(
    private readonly link: BidiLink,
    private readonly context: string,
  ) {}

  async prepare(): Promise<void> {
    const { context } = this;
    await this.link.ask('browsingContext.setViewport', { context, viewport: screen, devicePixelRatio: 2 });
  }

  async open(url: string): Promise<void> {
    const { context } = this;
    await this.link.ask('browsingContext.navigate', { context, url: 'about:blank', wait: 'complete' });
    await this.link.ask('browsingContext.navigate', { context, url, wait: 'complete' });
  }

  async run<T, A extends unknown[]>(inPage: (...args: A) => T | Promise<T>, ...args: A): Promise<T> {
    const answer = await this.link.ask('script.callFunction', {
      functionDeclaration: `async (json) => JSON.stringify([await (${inPage})(...JSON.parse(json))])`,
      arguments: [{ type: 'string', value: JSON.stringify(args) }],
      awaitPromise: true,
      userActivation: false,
      target: { context: this.context },
    });
    if (answer.type === 'exception') throw new Error(JSON.stringify(answer.exceptionDetails));
    return JSON.parse((answer.result as { value: string }).value)[0];
  }

  async touch(x: number, y: number, lasts: number): Promise<void> {
    await this.perform(touchActions('touch', x, y, lasts));
  }

  async keys(keys: readonly string[]): Promise<void> {
    await this.perform(keyActions(keys));
  }

  async picture(): Promise<Buffer> {
    const { data } = await this.link.ask('browsingContext.captureScreenshot', { context: this.context });
    return Buffer.from(data as string, 'base64');
  }

  async close(): Promise<void> {
    await this.link.ask('browsingContext.close', { context: this.context });
  }

  private async perform(actions: object[]): Promise<void> {
    await this.link.ask('input.performActions', { context: this.context, actions });
  }
}

async function start(folder: string): Promise<Browser> {
  const downloads = join(folder, 'downloads');
  await mkdir(downloads, { recursive: true });
  const set = Object.entries(preferences(downloads)).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  await writeFile(join(folder, 'user.js'), set.join('\n'));
  const args = ['--headless', '--no-remote', '--profile', folder, '--remote-debugging-port', '0'];
  const group = Group.start(firefox.found ?? '', [...args, 'about:blank']);
  const link = await BidiLink.to(await group.says(/WebDriver BiDi listening on (ws:\S+)/, 2));
  await link.ask('session.new', { capabilities: {} });
  await link.ask('session.subscribe', { events: ['log.entryAdded'] });
  const troubles: string[] = [];
  link.onEvent('log.entryAdded', ({ level, text }) => {
    if (level === 'error') troubles.push(String(text));
  });
  const pageOn = async (context: unknown) => {
    const page = new FirefoxPage(link, String(context));
    await page.prepare();
    return page;
  };
  const { contexts } = await link.ask('browsingContext.getTree', {});
  return {
    page: await pageOn((contexts as { context: string }[])[0]?.context),
    newPage: async () =>
      pageOn((await link.ask('browsingContext.create', { type: 'tab', background: false })).context),
    troubles: async () => troubles,
    // Its profile is thrown away: nothing has to be put in order first.
    close: () => group.end('SIGKILL'),
    kill: () => group.end('SIGKILL'),
  };
}

/** Gecko, by WebDriver BiDi over the browser's own socket. */
export const firefox: Engine = {
  name: 'Firefox',
  found: findFirefox(),
  keepsProfile: true,
  hasLinesFile: true,
  start,
};
