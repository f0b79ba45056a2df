import { readdir, readlink, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from '../../../scripts/ensure-chromium.mjs';

/** A browser with all its processes, on a profile that outlives it. */
export interface KillablePhone {
  page: Page;
  /** SIGKILL: nothing gets a chance to write, to close or to say good-bye. */
  kill: () => Promise<void>;
}

/** A browser tells who holds its profile by a link to 'host-pid'. */
async function processOn(profile: string): Promise<number> {
  const holder = await readlink(join(profile, 'SingletonLock'));
  const pid = Number(holder.slice(holder.lastIndexOf('-') + 1));
  if (!(pid > 1)) throw new Error(`no process holds ${profile}`);
  return pid;
}

interface Elsewhere {
  /** Starts the browser there. */
  executablePath: string;
  /** Where the profile's files are seen from here. */
  files: string;
}

export async function switchOn(profile: string, elsewhere?: Elsewhere): Promise<KillablePhone> {
  const files = elsewhere?.files ?? profile;
  // A killed browser leaves its lock behind.
  for (const file of await readdir(files)) {
    if (file.startsWith('Singleton')) await rm(join(files, file), { force: true });
  }
  const executablePath = elsewhere?.executablePath ?? (await findChromium());
  const context = await chromium.launchPersistentContext(profile, {
    ...(executablePath ? { executablePath } : {}),
    args: QUIET_FLAGS,
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    locale: 'en-US',
  });
  context.setDefaultTimeout(15_000);
  const pid = await processOn(files);
  const kill = async () => {
    const gone = new Promise((closed) => context.once('close', closed));
    process.kill(-pid, 'SIGKILL');
    await gone;
  };
  return { page: context.pages()[0] ?? (await context.newPage()), kill };
}
