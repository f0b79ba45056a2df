import { type IDBPDatabase, type OpenDBCallbacks, openDB } from 'idb';
import { type Migration, migrate } from './migrate.ts';
import { migrations as ours } from './migrations/list.ts';
import type { Schema } from './schema.ts';
import type { OpenFailure } from './store.ts';

export type Database = IDBPDatabase<Schema>;
export type Opened = { ok: true; database: Database } | { ok: false; reason: OpenFailure; detail: string };

export interface OpenOptions {
  name: string;
  migrations?: readonly Migration[];
  /** Refuse to make a new database: reopening after a lost connection must never go on with an empty one. */
  existing?: boolean;
  /** A newer version wants in, or somebody deletes the database. */
  onBlocking: () => void;
  /** The browser cut the connection. */
  onTerminated: () => void;
  /** How long another tab may keep an older version open, ms */
  patience?: number;
}

/** Opens the database and brings it up to date. A database of a newer version is left alone. */
export function openDatabase(options: OpenOptions): Promise<Opened> {
  const { name, migrations = ours, patience = 3000 } = options;
  return new Promise((resolve) => {
    let waiting = true;
    const finish = (result: Opened) => {
      waiting = false;
      resolve(result);
    };
    const callbacks: OpenDBCallbacks<Schema> = {
      upgrade(database, from, _, transaction) {
        if (options.existing && from === 0) {
          transaction.done.catch(() => {});
          transaction.abort();
          return;
        }
        // The typed view fits the newest shape only; migrations see the stores as they were.
        void migrate(migrations, from, database as never, transaction as never);
      },
      blocked() {
        setTimeout(() => {
          finish({ ok: false, reason: 'blocked', detail: 'another tab keeps an older version open' });
        }, patience);
      },
      blocking: options.onBlocking,
      terminated: options.onTerminated,
    };
    // Where storage is switched off, asking for it throws before there is anything to wait for.
    const opening = Promise.resolve().then(() => openDB<Schema>(name, migrations.length, callbacks));
    opening.then(
      (database) => {
        // Too late for whoever asked: an unused connection would block the next one.
        if (waiting) finish({ ok: true, database });
        else database.close();
      },
      (error: unknown) => finish({ ok: false, ...failureOf(error) }),
    );
  });
}

export function failureOf(error: unknown): { reason: OpenFailure; detail: string } {
  const detail = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const newer = error instanceof Error && error.name === 'VersionError';
  return { reason: newer ? 'newerVersion' : 'unavailable', detail };
}
