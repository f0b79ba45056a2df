import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findChromium } from '../../../scripts/ensure-chromium.mjs';
import { type KillablePhone, switchOn } from './killable-phone.ts';

// A name space of our own, in which anybody may mount: no rights on the machine are needed, where the kernel has them.
const own = ['--user', '--map-root-user', '--mount'];
const block = 4096;

/** Why there can be no small disk here; undefined where there can. */
export function whyNoSmallDisk(): string | undefined {
  const mounts = ['unshare', [...own, 'sh', '-c', 'mount -t tmpfs none /mnt']] as const;
  const ends = [spawnSync(...mounts), spawnSync('nsenter', ['--version'])];
  return ends.every(({ status }) => status === 0)
    ? undefined
    : 'this machine lets no test mount a small disk';
}

/** A file system of its own, so small that it can be filled, with a browser's profile on it. */
export class SmallDisk {
  private constructor(
    private readonly folder: string,
    private readonly holder: ChildProcess,
    private readonly browser: string,
  ) {}

  static async of(megabytes: number): Promise<SmallDisk> {
    const folder = mkdtempSync(join(tmpdir(), 'tubewright-disk-'));
    const disk = join(folder, 'disk');
    mkdirSync(disk);
    const mount = `mount -t tmpfs -o size=${megabytes}m none "$0" && echo mounted && exec sleep infinity`;
    const holder = spawn('unshare', [...own, 'sh', '-c', mount, disk], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await new Promise((mounted, failed) => {
      holder.stdout?.once('data', mounted);
      holder.once('exit', () => failed(new Error('the small disk was not mounted')));
    });
    const browser = join(folder, 'browser');
    const chromium = await findChromium();
    const enter = `nsenter --target ${holder.pid} --user --mount --preserve-credentials`;
    writeFileSync(browser, `#!/bin/sh\nexec ${enter} "${chromium}" "$@"\n`);
    chmodSync(browser, 0o755);
    return new SmallDisk(folder, holder, browser);
  }

  private get disk(): string {
    return join(this.folder, 'disk');
  }

  /** The disk as it is seen from outside. */
  private get outside(): string {
    return `/proc/${this.holder.pid}/root${this.disk}`;
  }

  on(): Promise<KillablePhone> {
    return switchOn(this.disk, { executablePath: this.browser, files: this.outside });
  }

  /** To the last block: until the system itself says that there is no room. */
  fill(): void {
    const file = openSync(join(this.outside, 'filler'), 'a');
    try {
      for (;;) writeSync(file, Buffer.alloc(block, 1));
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOSPC')) throw error;
    } finally {
      closeSync(file);
    }
  }

  /** The builder frees some space. */
  makeRoom(): void {
    rmSync(join(this.outside, 'filler'));
  }

  end(): void {
    this.holder.kill('SIGKILL');
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
