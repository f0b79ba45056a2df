import type { Migration } from '../migrate.ts';

/** The stores of the first version, frozen here: later shapes are later migrations. */
export const first: Migration = {
  number: 1,
  name: 'first',
  apply(database) {
    const entries = database.createObjectStore('entries', { keyPath: 'id' });
    entries.createIndex('bySubject', ['subject', 'id']);
    const headers = database.createObjectStore('headers', { keyPath: 'id' });
    headers.createIndex('byStart', ['record', 'startedAt', 'id']);
    const revisions = database.createObjectStore('revisions', { keyPath: 'id' });
    revisions.createIndex('byDoc', 'doc');
    revisions.createIndex('byType', 'type');
    const photos = database.createObjectStore('photos', { keyPath: 'hash' });
    photos.createIndex('byBytes', 'record.bytes');
    const summaries = database.createObjectStore('summaries', { keyPath: 'subject' });
    summaries.createIndex('byOpen', 'open');
    database.createObjectStore('phone');
    database.createObjectStore('meta');
  },
};
