import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';

/** A program with all its children in a group of its own, so that they end together. */
export class Group {
  private constructor(
    readonly child: ChildProcess,
    private readonly ended: Promise<void>,
  ) {}

  static start(program: string, args: readonly string[], env: Record<string, string> = {}): Group {
    const child = spawn(program, args, {
      detached: true,
      stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
      env: { ...process.env, ...env },
    });
    const ended = new Promise<void>((resolve, reject) => {
      child.once('exit', () => resolve());
      child.once('error', reject);
    });
    ended.catch(() => {});
    return new Group(child, ended);
  }

  /** The first match in what it says on one of its outputs. */
  async says(pattern: RegExp, output: 2 | 3): Promise<string> {
    let said = '';
    return new Promise((resolve, reject) => {
      this.child.stdio[output]?.on('data', (bytes: Buffer) => {
        said += String(bytes);
        const match = pattern.exec(said)?.[1];
        if (match !== undefined) resolve(match);
      });
      this.ended.then(() => reject(new Error(`it ended before it was ready: ${said}`)), reject);
    });
  }

  async end(signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
    const { pid } = this.child;
    if (pid === undefined) return;
    try {
      process.kill(-pid, signal);
    } catch {
      // It is gone already.
    }
    await this.ended;
  }
}

export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
