import type { AnyEntry } from '#shared/record/entry.ts';
import { isLoggerFile } from '#shared/record/photo.ts';
import { type Gated, type Header, readEntry, readHeader, readRevision } from '#shared/record/read.ts';
import {
  type DocType,
  type ForeignRevision,
  heads,
  type Revision,
  type RevisionOf,
  revisionVersion,
} from '#shared/record/revision.ts';
import type { RawRecord } from './admit.ts';
import type { Connection } from './connection.ts';
import { idFloor } from './ids.ts';

/** All entries of a subject in the order of their ids, from a time on. */
export function ofSubject(subject: string, since?: number): IDBKeyRange {
  const from = since === undefined ? '' : idFloor(since);
  return IDBKeyRange.bound([subject, from], [subject, []], false, true);
}

export interface Counts {
  builds: number;
  ovenLoads: number;
  entries: number;
  revisions: number;
  photos: number;
  photoBytes: number;
  /** Files of loggers */
  files: number;
  fileBytes: number;
  unreadable: number;
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** Everything that is read goes through the gate here. */
export class Reader {
  /** Ids that the gate turned away so far; they are told, and their records stay where they are. */
  private readonly unreadable = new Set<string>();

  constructor(private readonly connection: Connection) {}

  async entries(subject: string, since?: number): Promise<Gated<AnyEntry>[]> {
    const raw = await this.connection.transact(['entries'], 'readonly', (transaction) =>
      transaction.objectStore('entries').index('bySubject').getAll(ofSubject(subject, since)),
    );
    return this.gateEntries(raw);
  }

  gateEntries(raw: readonly RawRecord[]): Gated<AnyEntry>[] {
    return raw.map((one) => this.noted(one.id, readEntry(one)));
  }

  async header(id: string): Promise<Gated<Header> | undefined> {
    const raw = await this.connection.transact(['headers'], 'readonly', (transaction) =>
      transaction.objectStore('headers').get(id),
    );
    return this.gateHeader(raw);
  }

  gateHeader(raw: RawRecord | undefined): Gated<Header> | undefined {
    return raw && this.noted(raw.id, readHeader(raw));
  }

  /** A revision of a newer version counts as made from its parents, though it cannot be shown. */
  async heads<T extends DocType>(type: T): Promise<RevisionOf<T>[]> {
    const all = await this.gatedRevisions('byType', type);
    return heads(all).filter(
      (revision): revision is RevisionOf<T> => revision.type === type && revision.v <= revisionVersion,
    );
  }

  async revisions(doc: string): Promise<(Revision | ForeignRevision)[]> {
    const all = await this.gatedRevisions('byDoc', doc);
    return all.sort((a, b) => (a.id < b.id ? -1 : 1));
  }

  private async gatedRevisions(
    index: 'byDoc' | 'byType',
    key: string,
  ): Promise<(Revision | ForeignRevision)[]> {
    const raw = await this.connection.transact(['revisions'], 'readonly', (transaction) =>
      transaction.objectStore('revisions').index(index).getAll(key),
    );
    return raw.flatMap((one) => {
      const gated = this.noted(one.id, readRevision(one));
      return gated.ok ? [gated.value] : [];
    });
  }

  private noted<T>(id: string, gated: Gated<T>): Gated<T> {
    if (!gated.ok) this.unreadable.add(id);
    return gated;
  }

  async photo(hash: string): Promise<Blob | undefined> {
    const found = await this.connection.transact(['photos'], 'readonly', (transaction) =>
      transaction.objectStore('photos').get(hash),
    );
    return found?.blob;
  }

  counts(): Promise<Counts> {
    return this.connection.transact(
      ['headers', 'entries', 'revisions', 'photos'],
      'readonly',
      async (transaction) => {
        const byStart = transaction.objectStore('headers').index('byStart');
        const [builds, ovenLoads, entries, revisions, blobs] = await Promise.all([
          byStart.count(IDBKeyRange.bound(['build'], ['build', []])),
          byStart.count(IDBKeyRange.bound(['ovenLoad'], ['ovenLoad', []])),
          transaction.objectStore('entries').count(),
          transaction.objectStore('revisions').count(),
          // The blobs stay on disk until somebody reads one.
          transaction.objectStore('photos').getAll(),
        ]);
        const [files, photos] = [true, false].map((wanted) =>
          blobs.flatMap(({ record }) => (isLoggerFile(record) === wanted ? [record.bytes] : [])),
        ) as [number[], number[]];
        return {
          builds,
          ovenLoads,
          entries,
          revisions,
          photos: photos.length,
          photoBytes: sum(photos),
          files: files.length,
          fileBytes: sum(files),
          unreadable: this.unreadable.size,
        };
      },
    );
  }
}
