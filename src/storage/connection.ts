import { type Database, type OpenOptions, openDatabase } from './database.ts';
import { asWriteError, connectionWasLost } from './failures.ts';
import type { StoreName, Transaction } from './schema.ts';
import { type OpenFailure, type OpenResult, WriteError, type WriteFailure } from './store.ts';

type Failed = Extract<OpenResult, { ok: false }>;
export type Durability = 'strict' | 'relaxed';

/** One connection, reopened once when the browser drops it. Every access goes through `transact`. */
export class Connection {
  private handle: Promise<Database>;
  private ended: WriteFailure | undefined;
  /** The disk would not open it again; a full one does once there is room, so whoever comes next asks anew. */
  private shut = false;
  private troubled = false;
  /** Chromium throws a database away that it finds torn, and a full disk tears it: what the new one lacks is owed. */
  private eaten = false;
  private putBack: ((database: Database) => Promise<void>) | undefined;
  private readonly running = new Set<Promise<unknown>>();
  private readonly lostListeners = new Set<() => void>();

  private constructor(
    private readonly options: Pick<OpenOptions, 'name' | 'migrations'>,
    database: Database,
  ) {
    this.handle = Promise.resolve(database);
  }

  static async open(
    options: Pick<OpenOptions, 'name' | 'migrations' | 'patience'>,
  ): Promise<{ ok: true; connection: Connection } | Failed> {
    let connection: Connection | undefined;
    const opened = await openDatabase({
      ...options,
      onBlocking: () => connection?.lose('closed'),
      onTerminated: () => connection?.reopen(),
    });
    if (!opened.ok) return opened;
    connection = new Connection(options, opened.database);
    return { ok: true, connection };
  }

  /**
   * Runs `work` in one transaction and resolves when it is complete; aborts it when `work` throws. Inside, only
   * requests of the transaction may be awaited: anything else lets it commit half done.
   */
  async transact<S extends StoreName, M extends 'readonly' | 'readwrite', T>(
    stores: S[],
    mode: M,
    work: (transaction: Transaction<S, M>) => Promise<T>,
    durability: Durability = 'strict',
  ): Promise<T> {
    const run = this.attempt(stores, mode, work, durability);
    this.running.add(run);
    try {
      return await run;
    } finally {
      this.running.delete(run);
    }
  }

  private async attempt<S extends StoreName, M extends 'readonly' | 'readwrite', T>(
    stores: S[],
    mode: M,
    work: (transaction: Transaction<S, M>) => Promise<T>,
    durability: Durability,
  ): Promise<T> {
    if (this.shut) this.reopen();
    const used = this.handle;
    try {
      return await this.once(stores, mode, work, durability);
    } catch (error) {
      const dropped = this.handle !== used || connectionWasLost(error);
      if (this.ended || !dropped || error instanceof WriteError) throw error;
      if (this.handle === used) this.reopen();
      return this.once(stores, mode, work, durability);
    }
  }

  private async once<S extends StoreName, M extends 'readonly' | 'readwrite', T>(
    stores: S[],
    mode: M,
    work: (transaction: Transaction<S, M>) => Promise<T>,
    durability: Durability,
  ): Promise<T> {
    const database = await this.database();
    const transaction = database.transaction<S[], M>(stores, mode, { durability });
    const done = transaction.done;
    done.catch(() => {});
    try {
      const result = await work(transaction);
      // What was read is read: only what was written can still fail.
      if (mode === 'readwrite') await done;
      return result;
    } catch (error) {
      abort(transaction);
      throw error;
    }
  }

  private async database(): Promise<Database> {
    if (this.ended) throw new WriteError(this.ended);
    const database = await this.handle;
    if (this.ended) throw new WriteError(this.ended);
    return database;
  }

  /** Drops the dead handle and opens a new one; gives up for good when there is nothing to open any more. */
  private reopen(): void {
    if (this.ended) return;
    this.shut = false;
    void this.handle.then((old) => old.close()).catch(() => {});
    this.handle = this.openAgain();
    this.handle.catch(() => {});
  }

  private async openAgain(): Promise<Database> {
    const again = (existing: boolean) =>
      openDatabase({
        ...this.options,
        existing,
        onBlocking: () => this.lose('closed'),
        onTerminated: () => this.reopen(),
      });
    let opened = await again(!this.eaten);
    if (!opened.ok && opened.reason === 'unavailable' && this.troubled && this.putBack) {
      this.eaten = true;
      opened = await again(false);
    }
    if (!opened.ok) throw new WriteError(this.refused(opened.reason), { cause: new Error(opened.detail) });
    if (!this.eaten) return opened.database;
    try {
      await this.putBack?.(opened.database);
    } catch (error) {
      opened.database.close();
      this.shut = true;
      throw asWriteError(error);
    }
    this.eaten = false;
    return opened.database;
  }

  /** What is done to a new database that takes the place of one that a full disk destroyed. */
  onEaten(putBack: (database: Database) => Promise<void>): void {
    this.putBack = putBack;
  }

  /** A page that gave up here would throw away what is typed on it, and its clocks with it. */
  private refused(reason: OpenFailure): WriteFailure {
    if (reason === 'full' || reason === 'unreadable') {
      this.shut = true;
      this.troubled = true;
      return reason;
    }
    const ended = reason === 'newerVersion' ? reason : 'closed';
    this.lose(ended);
    return ended;
  }

  /** Gives the database up at once: whoever waits for it is a newer version, or deletes it. */
  private lose(reason: WriteFailure): void {
    if (this.ended) return;
    this.ended = reason;
    void this.handle.then((database) => database.close()).catch(() => {});
    for (const listener of this.lostListeners) listener();
  }

  onLost(listener: () => void): () => void {
    this.lostListeners.add(listener);
    return () => this.lostListeners.delete(listener);
  }

  async close(): Promise<void> {
    await Promise.allSettled(this.running);
    this.ended ??= 'closed';
    await this.handle.then((database) => database.close()).catch(() => {});
  }
}

function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // It has ended by itself already.
  }
}
