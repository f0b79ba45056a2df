import type { IDBPDatabase, IDBPTransaction } from 'idb';

export interface Migration {
  number: number;
  name: string;
  /** May await requests of this transaction and nothing else. */
  apply(
    database: IDBPDatabase<unknown>,
    transaction: IDBPTransaction<unknown, string[], 'versionchange'>,
  ): void | Promise<void>;
}

/** Checks that steps count 1, 2, 3: a gap would leave some databases without a step. */
export function numbered(migrations: readonly Migration[]): readonly Migration[] {
  migrations.forEach((migration, index) => {
    if (migration.number !== index + 1) {
      throw new Error(
        `migration '${migration.name}' has number ${migration.number}, it should be ${index + 1}`,
      );
    }
  });
  return migrations;
}

/**
 * Brings a database up from an older version. An upgrade that throws after an await would leave the new version
 * number on the old stores, so whatever goes wrong aborts the transaction: version and data stay as they were.
 */
export async function migrate(
  migrations: readonly Migration[],
  from: number,
  database: IDBPDatabase<unknown>,
  transaction: IDBPTransaction<unknown, string[], 'versionchange'>,
): Promise<void> {
  transaction.done.catch(() => {});
  try {
    for (const migration of migrations) {
      if (migration.number > from) await migration.apply(database, transaction);
    }
  } catch (error) {
    transaction.abort();
    console.error('The upgrade of the database failed and was undone', error);
  }
}
