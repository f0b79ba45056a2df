import type { DBSchema, IDBPTransaction, StoreNames } from 'idb';
import type { PhotoRecord } from '#shared/record/photo.ts';
import type { RawRecord } from './admit.ts';

/** What was last written through one lines file; compared with the end of that file on opening. */
export interface SlotMark {
  /** Keys of the newest records, oldest first. */
  tail: string[];
  /** Greatest id that the page had made. */
  greatestId: string;
}

export interface StoredPhoto {
  hash: string;
  record: PhotoRecord;
  blob: Blob;
}

/** As the migrations leave it. Records are typed raw: the gate gives them their type when they are read. */
export interface Schema extends DBSchema {
  entries: { key: string; value: RawRecord; indexes: { bySubject: [string, string] } };
  headers: { key: string; value: RawRecord; indexes: { byStart: [string, number, string] } };
  revisions: { key: string; value: RawRecord; indexes: { byDoc: string; byType: string } };
  photos: { key: string; value: StoredPhoto; indexes: { byBytes: number } };
  summaries: { key: string; value: { subject: string }; indexes: { byOpen: number } };
  phone: { key: string; value: unknown };
  /** 'device'; ['slot', n]: a SlotMark; ['dropped', subject]: its summary is to be made anew. */
  meta: { key: IDBValidKey; value: unknown };
}

export type StoreName = StoreNames<Schema>;
export type Transaction<S extends StoreName, M extends IDBTransactionMode> = IDBPTransaction<Schema, S[], M>;
export type Writing = Transaction<
  'entries' | 'headers' | 'revisions' | 'photos' | 'summaries' | 'meta',
  'readwrite'
>;
