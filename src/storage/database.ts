import { type IDBPDatabase, type OpenDBCallbacks, openDB } from 'idb';
import { type Migration, migrate } from './migrate.ts';
import { migrations as ours } from './migrations/list.ts';
import type { Schema } from './schema.ts';
import type { OpenFailure } from './store.ts';

/** Renaming one loses what is in it: the name is how the data is found. */
export type DatabaseName = 'tubewright' | 'tubewright-demo';

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

const attempts = 5;
const betweenAttempts = 300;

/**
 * Opens the database and brings it up to date. A database of a newer version is left alone. The files of one that was
 * in use when the browser died are held until its last process is gone: that passes, so it is asked again.
 */
export async function openDatabase(options: OpenOptions): Promise<Opened> {
  for (let left = attempts; ; left--) {
    const opened = await openOnce(options);
    if (opened.ok || opened.reason !== 'unreadable' || left === 1) return opened;
    await new Promise((resolve) => setTimeout(resolve, betweenAttempts));
  }
}

function openOnce(options: OpenOptions): Promise<Opened> {
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

/** An unknown error is one of the disk: the files are there, and cannot be read or written now. */
const reasons: Record<string, OpenFailure> = {
  VersionError: 'newerVersion',
  UnknownError: 'unreadable',
  QuotaExceededError: 'full',
};

export function failureOf(error: unknown): { reason: OpenFailure; detail: string } {
  const detail = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const name = error instanceof Error ? error.name : '';
  return { reason: reasons[name] ?? 'unavailable', detail };
}
