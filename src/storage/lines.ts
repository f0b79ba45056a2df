import type { Answer, CallName, Calls, Chunk, Tail } from './lines-protocol.ts';
import type { StoredPhoto } from './schema.ts';
import { WriteError } from './store.ts';

/** How long the worker may take before the second copy is given up for this page, ms */
const patience = 8000;
/** After a phone's sleep the timer fires before the answer that lies ready; this long it may still come, ms */
const grace = 2000;

interface Waiting {
  resolve(answer: unknown): void;
  reject(error: Error): void;
}

/**
 * The second copy: an append-only file in the origin's private file system, one checksummed line a record, written
 * by a worker. A browser's database can come back empty after a crash; this file has its own way to the disk.
 * A photo and its record are a file of their own beside it.
 *
 * When anything fails the page goes on with the database alone and appends nothing more, so that the file has its
 * gap at the end, where the next opening looks for it.
 */
export class Lines {
  private worker: Worker | undefined;
  private readonly waiting = new Map<number, Waiting>();
  private tickets = 0;
  private taken: { slot: number; tails: Tail[] } | undefined;
  private failed = false;
  private opening: Promise<void> | undefined;

  constructor(private readonly name: string) {}

  /**
   * Resolves when it is known whether there is a file; never rejects. Whoever asks first starts the worker: the first
   * screen need not wait for it.
   */
  get ready(): Promise<void> {
    this.opening ??= this.open();
    return this.opening;
  }

  private async open(): Promise<void> {
    this.worker = startWorker();
    this.worker?.addEventListener('message', ({ data }: MessageEvent<Answer>) => this.settle(data));
    this.worker?.addEventListener('error', () => this.giveUp('the worker failed'));
    try {
      this.taken = await this.ask('open', { name: this.name });
    } catch {
      this.giveUp('no lines file');
    }
  }

  /** The number of this page's file while it is kept. */
  get slot(): number | undefined {
    return this.failed ? undefined : this.taken?.slot;
  }

  /** The ends of all files of this database as they were found on opening. */
  get tails(): readonly Tail[] {
    return this.taken?.tails ?? [];
  }

  kept(): boolean {
    return this.slot !== undefined;
  }

  stopped(): boolean {
    return this.failed && this.taken !== undefined;
  }

  /**
   * Resolves when the lines are flushed, or when the file had to be given up; `kept` tells. Throws WriteError when
   * there is no room: a database that runs full may be gone at its next opening, so one copy is not enough there.
   */
  async append(records: readonly string[]): Promise<void> {
    await this.ready;
    if (!this.kept() || records.length === 0) return;
    try {
      await this.ask('append', { records: [...records] });
    } catch (error) {
      if (error instanceof WriteError) throw error;
      this.giveUp('a line was not written');
    }
  }

  /** Resolves when they are flushed; false when one was not written, which a later opening makes up for. */
  async keepPhotos(photos: readonly StoredPhoto[]): Promise<boolean> {
    await this.ready;
    for (const photo of photos) {
      if (!this.kept()) return false;
      if (!(await this.ask('keepPhoto', { photo }).catch(() => false))) return false;
    }
    return true;
  }

  photoNames(): Promise<string[]> {
    return this.ask('photoNames', {});
  }

  readPhoto(hash: string): Promise<StoredPhoto | undefined> {
    return this.ask('readPhoto', { hash });
  }

  /** All records of one file, a chunk at a time. */
  async *read(slot: number): AsyncGenerator<string[]> {
    let offset: number | undefined = 0;
    while (offset !== undefined) {
      const chunk: Chunk = await this.ask('read', { slot, offset });
      yield chunk.records;
      offset = chunk.next;
    }
  }

  async close(): Promise<void> {
    await this.opening;
    if (this.kept()) await this.ask('close', {}).catch(() => {});
    this.giveUp('closed');
  }

  private ask<N extends CallName>(call: N, ask: Calls[N]['ask']): Promise<Calls[N]['answer']> {
    const { worker } = this;
    if (!worker || this.failed) return Promise.reject(new Error('there is no worker'));
    const ticket = ++this.tickets;
    return new Promise((resolve, reject) => {
      let timer = setTimeout(() => {
        timer = setTimeout(() => reject(new Error('the worker does not answer')), grace);
      }, patience);
      const settled = () => {
        clearTimeout(timer);
        this.waiting.delete(ticket);
      };
      this.waiting.set(ticket, {
        resolve(answer) {
          settled();
          resolve(answer as Calls[N]['answer']);
        },
        reject(error) {
          settled();
          reject(error);
        },
      });
      worker.postMessage({ call, ticket, ...ask });
    });
  }

  private settle(data: Answer): void {
    const waiting = this.waiting.get(data.ticket);
    if (data.ok) waiting?.resolve(data.answer);
    else waiting?.reject(data.full ? new WriteError('full', { cause: data.why }) : new Error(data.why));
  }

  private giveUp(why: string): void {
    this.failed = true;
    this.opening ??= Promise.resolve();
    this.worker?.terminate();
    for (const { reject } of this.waiting.values()) reject(new Error(why));
  }
}

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./lines-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}
