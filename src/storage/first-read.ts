import { closedSince } from '#shared/record/build-state.ts';
import { type AnyEntry, benchSubject } from '#shared/record/entry.ts';
import { holding, settle } from '#shared/record/journal.ts';
import { type Gated, type Header, readHeader, warmGate } from '#shared/record/read.ts';
import type { RawRecord } from './admit.ts';
import type { Connection } from './connection.ts';
import { ofSubject, type Reader } from './reader.ts';
import { droppedKeys, mostRead, type Summaries, subjectOf } from './summaries.ts';

/** One build, oven load, or the bench itself, through the gate. */
export interface ReadSubject {
  subject: string;
  header: Gated<Header> | undefined;
  entries: Gated<AnyEntry>[];
}

/** All that the first screen shows. */
export interface FirstRead {
  /** The bench, and every build and oven load that is not closed. */
  journals: ReadSubject[];
  /** Whether any build was ever started. */
  everBuilt: boolean;
  /** This phone's value by the key that was asked for. */
  phoneValue: unknown;
}

export interface FirstReadOptions {
  /** Entries of the bench older than this are history, ms */
  benchSince?: number | undefined;
  phoneKey: string;
}

interface RawSubject {
  subject: string;
  header: RawRecord | undefined;
  entries: RawRecord[];
}

/**
 * Reads it in one transaction: on a slow phone every further one is felt at the opening. Says nothing when so many
 * summaries wait to be made that reading their subjects would take longer than making them.
 */
function readRaw(connection: Connection, { benchSince, phoneKey }: FirstReadOptions) {
  return connection.transact(
    ['headers', 'entries', 'summaries', 'meta', 'phone'],
    'readonly',
    async (transaction) => {
      const headers = transaction.objectStore('headers');
      const bySubject = transaction.objectStore('entries').index('bySubject');
      const read = async (subject: string): Promise<RawSubject> => {
        const [header, entries] = await Promise.all([
          headers.get(subject),
          bySubject.getAll(ofSubject(subject)),
        ]);
        return { subject, header, entries };
      };
      const [open, dropped, bench, firstBuild, phoneValue] = await Promise.all([
        transaction.objectStore('summaries').index('byOpen').getAllKeys(),
        transaction.objectStore('meta').getAllKeys(droppedKeys(), mostRead + 1),
        bySubject.getAll(ofSubject(benchSubject, benchSince)),
        headers.index('byStart').getAllKeys(IDBKeyRange.bound(['build'], ['build', []]), 1),
        transaction.objectStore('phone').get(phoneKey),
      ]);
      if (dropped.length > mostRead) return undefined;
      const subjects = [open, dropped.map(subjectOf)].map((some) => Promise.all(some.map(read)));
      if (open.length + dropped.length + bench.length > 0) warmGate();
      const [ofOpen = [], ofWritten = []] = await Promise.all(subjects);
      return {
        bench,
        open: ofOpen,
        written: ofWritten,
        everBuilt: firstBuild.length > 0,
        phoneValue,
      };
    },
  );
}

const isOpen = ({ entries }: ReadSubject): boolean =>
  closedSince(holding(settle(entries.flatMap((e) => (e.ok ? [e.value] : []))))) === undefined;

/** What is not closed, the bench and this phone's settings. Never reads all of history. */
export async function firstRead(
  connection: Connection,
  { reader, summaries }: { reader: Reader; summaries: Summaries },
  options: FirstReadOptions,
): Promise<FirstRead> {
  let raw = await readRaw(connection, options);
  while (!raw) {
    await summaries.makeDropped();
    raw = await readRaw(connection, options);
  }
  const gated = ({ subject, header, entries }: RawSubject): ReadSubject => ({
    subject,
    header: reader.gateHeader(header),
    entries: reader.gateEntries(entries),
  });
  // Of what was written to since its summary was made, the entries themselves tell.
  const written = raw.written
    .filter(({ header }) => readHeader(header).ok)
    .map(gated)
    .filter(isOpen);
  const bench = { subject: benchSubject, header: undefined, entries: reader.gateEntries(raw.bench) };
  const { everBuilt, phoneValue } = raw;
  return { journals: [bench, ...raw.open.map(gated), ...written], everBuilt, phoneValue };
}
