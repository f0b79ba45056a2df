import { type RawRecord, type RecordStore, recordStores } from './admit.ts';
import { pages } from './compare.ts';
import type { Connection } from './connection.ts';
import { ofSubject } from './reader.ts';

/** Records in memory at one time: the phone goes on being used meanwhile. */
const atOnce = 1000;

/** Some builds, oven loads and documents, to be handed on by themselves. */
export interface Only {
  subjects: readonly string[];
  docs: readonly string[];
}

export interface StoredRecords {
  store: RecordStore;
  records: readonly RawRecord[];
}

async function* some(connection: Connection, { subjects, docs }: Only): AsyncGenerator<StoredRecords> {
  for (const id of subjects) {
    const header = await connection.transact(['headers'], 'readonly', (t) =>
      t.objectStore('headers').get(id),
    );
    if (header) yield { store: 'headers', records: [header] };
  }
  for (const doc of docs) {
    const records = await connection.transact(['revisions'], 'readonly', (t) =>
      t.objectStore('revisions').index('byDoc').getAll(doc),
    );
    yield { store: 'revisions', records };
  }
  for (const subject of subjects) {
    const records = await connection.transact(['entries'], 'readonly', (t) =>
      t.objectStore('entries').index('bySubject').getAll(ofSubject(subject)),
    );
    yield { store: 'entries', records };
  }
}

/** What goes into a file: everything, or only what was asked for. */
export async function* recordsFor(connection: Connection, only?: Only): AsyncGenerator<StoredRecords> {
  if (only) {
    yield* some(connection, only);
    return;
  }
  for (const store of recordStores) {
    for await (const records of pages(connection, store, atOnce)) yield { store, records };
  }
}

/** Names of the pictures and files that these records speak of. */
export const hashesIn = (records: readonly RawRecord[]): string[] =>
  records.flatMap((r) => (typeof r.hash === 'string' ? [r.hash] : []));
