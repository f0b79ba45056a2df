import type { AnyEntry } from '#shared/record/entry.ts';
import type { PhotoRecord } from '#shared/record/photo.ts';
import type { Gated, Header } from '#shared/record/read.ts';
import type { DocType, ForeignRevision, Revision, RevisionOf } from '#shared/record/revision.ts';
import type { Summary } from '#shared/record/summary.ts';
import type { BackupOptions } from './backup.ts';
import type { Good, Watched } from './backup-check.ts';
import type { FirstRead } from './first-read.ts';
import type { Counts } from './reader.ts';
import type { RestoreOutcome } from './restore.ts';

/** Folds one subject into its cached summary. The app passes it in when it is needed, so that storage needs no calc. */
export type Summarize = (header: Header, entries: readonly AnyEntry[]) => Summary;

export interface Batch {
  entries?: readonly AnyEntry[];
  headers?: readonly Header[];
  revisions?: readonly (Revision | ForeignRevision)[];
  photos?: readonly { record: PhotoRecord; blob: Blob }[];
}

/** Why a write did not happen. Words for people are made in the app. */
export type WriteFailure = 'full' | 'closed' | 'newerVersion' | 'refused' | 'failed' | 'unreadable';
export class WriteError extends Error {
  constructor(
    readonly reason: WriteFailure,
    options?: ErrorOptions,
  ) {
    super(`not saved: ${reason}`, options);
    this.name = 'WriteError';
  }
}

export type OpenFailure = 'newerVersion' | 'unavailable' | 'unreadable' | 'full' | 'blocked';
export type OpenResult =
  | { ok: true; store: Store; refilled: Refilled; first: FirstRead }
  | { ok: false; reason: OpenFailure; detail: string };

/** How many records one copy lacked and got back from the other. */
export interface Refilled {
  database: number;
  lines: number;
  /** Photos and loggers' files that the database got back, when there were any. */
  photos?: number;
}

export interface Page {
  summaries: Summary[];
  /** Pass it on to get the next page; absent at the end. */
  next?: string;
}

/** The one door to what is kept. Every write is one durable transaction in both copies. */
export interface Store {
  readonly database: string;
  readonly device: string;
  /**
   * What one copy lacked, `refilled` included. When the database is not empty the ends of both copies are compared
   * after opening, so that the first screen does not wait; never rejects.
   */
  readonly compared: Promise<Refilled>;
  /** Sorts by time and never goes back on this device, whatever the clock does. */
  newId(): string;
  /** Resolves only when it is on disk in the database, and in the lines file where there is one. Throws WriteError. */
  write(batch: Batch): Promise<void>;
  /** All of one subject's entries by id; `since` (ms) skips older ones by their id. */
  entries(subject: string, since?: number): Promise<Gated<AnyEntry>[]>;
  header(id: string): Promise<Gated<Header> | undefined>;
  /** Every head of every document of a type, retired ones too: two heads of one document are a conflict. */
  heads<T extends DocType>(type: T): Promise<RevisionOf<T>[]>;
  /** All revisions of one document, oldest first. */
  revisions(doc: string): Promise<(Revision | ForeignRevision)[]>;
  /** Newest first, missing or outdated ones made anew. */
  summaries(options: { of: Summary['of']; limit: number; after?: string }): Promise<Page>;
  summary(subject: string): Promise<Summary | undefined>;
  /** All of both kinds, in slices, in no order that could be relied on. */
  eachSummary(take: (slice: Summary[]) => void): Promise<void>;
  /**
   * Builds and oven loads not closed: those whose summary says `open: 1` (indexed), and those whose summary was
   * dropped by a write and not made again yet. Never reads all of history.
   */
  openSubjects(): Promise<string[]>;
  photo(hash: string): Promise<Blob | undefined>;
  /** This phone's own values (settings, when the last backup was): they never travel in a backup. */
  phoneValue(key: string): Promise<unknown>;
  setPhoneValue(key: string, value: unknown): Promise<void>;
  /** Called with the subjects and documents that another tab wrote. */
  onOthersWrote(listener: (ids: string[]) => void): () => void;
  /** Called when the connection is lost for good: a newer version of the app wants the database, or it was deleted. */
  onLost(listener: () => void): () => void;
  /** `unreadable`: records met since opening that the gate turned away. */
  counts(): Promise<Counts>;
  /** Whether the second copy, the lines file, is being kept; false until it is open, a moment after the database. */
  linesKept(): boolean;
  /** It was kept and had to be given up: this page goes on without, and the next opening makes up for it. */
  linesStopped(): boolean;
  /** `only`: some subjects and documents, in the same form, for another phone to merge. */
  backup(options: BackupOptions): AsyncGenerator<string>;
  /**
   * Merges a checked backup: union of entries, headers and revisions. Writing it twice changes nothing. Refused
   * before anything is written when an id is here with other content, or when the file is not the one that was
   * checked. Throws WriteError, and the reason of `stop`: what is in by then stays, and another go adds the rest.
   */
  restore(checked: Good, watched?: Watched): Promise<RestoreOutcome>;
  close(): Promise<void>;
}
