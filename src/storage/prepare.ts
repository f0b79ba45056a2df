import * as z from 'zod/mini';
import { photoRecord } from '#shared/record/photo.ts';
import { admit, keyOf, type RawRecord, type RecordStore } from './admit.ts';
import { canonical } from './json.ts';
import { photoHash } from './photo-hash.ts';
import type { StoredPhoto } from './schema.ts';
import { type Batch, WriteError } from './store.ts';

/** A record ready to be written to both copies. */
export interface Prepared {
  key: string;
  store: RecordStore;
  value: RawRecord;
  json: string;
}

export function refuse(why: string): WriteError {
  return new WriteError('refused', { cause: new Error(why) });
}

/** Both copies get the same JSON: the database would keep what JSON drops, and the copies would never agree. */
function prepare(record: unknown): Prepared {
  const json = JSON.stringify(record);
  const admitted = admit(JSON.parse(json));
  if (!admitted.ok) throw refuse(admitted.why);
  const { store, value } = admitted;
  return { key: keyOf(store, value.id), store, value, json };
}

/** Checks every record and takes out repeats; throws when one is not a record, or comes twice and differs. */
export function prepareAll(records: readonly unknown[]): Prepared[] {
  const byKey = new Map<string, Prepared>();
  for (const record of records) {
    const prepared = prepare(record);
    const before = byKey.get(prepared.key);
    if (before && canonical(before.value) !== canonical(prepared.value)) {
      throw refuse(`${prepared.key} comes twice with different content`);
    }
    byKey.set(prepared.key, prepared);
  }
  return [...byKey.values()];
}

/** Copies the bytes out of the picked file, which the phone may take away, and checks its name against them. */
export async function preparePhoto(photo: { record: unknown; blob: Blob }): Promise<StoredPhoto> {
  const gated = z.safeParse(photoRecord, photo.record);
  if (!gated.success) throw refuse('not a photo record');
  const bytes = await photo.blob.arrayBuffer();
  const record = gated.data;
  if (record.bytes !== bytes.byteLength || record.hash !== (await photoHash(bytes))) {
    throw refuse(`photo ${record.hash} is not what its name says`);
  }
  return { hash: record.hash, record, blob: new Blob([bytes], { type: record.type }) };
}

export function recordsOf(batch: Batch): unknown[] {
  return [...(batch.headers ?? []), ...(batch.revisions ?? []), ...(batch.entries ?? [])];
}
