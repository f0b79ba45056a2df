import { heads } from '#shared/record/revision.ts';
import { recordStores } from './admit.ts';
import type { Checked, Fault, PlacedPhoto, PlacedRecord, RestoreOutcome } from './backup-check.ts';
import { fromBase64 } from './base64.ts';
import type { Connection } from './connection.ts';
import { canonical } from './json.ts';
import { photoHash } from './photo-hash.ts';
import type { Prepared } from './prepare.ts';
import type { Reader } from './reader.ts';
import type { StoredPhoto } from './schema.ts';
import type { Summaries } from './summaries.ts';
import type { Writer } from './writer.ts';

const chunkSize = 5000;
const photosAtOnce = 20;
/** Share of the progress that is checking, then writing; the rest is making summaries. */
const checking = 0.3;
const writing = 0.6;

interface Parts {
  connection: Connection;
  reader: Reader;
  writer: Writer;
  summaries: Summaries;
}

/** Thrown and caught in this file only. */
class Found extends Error {
  constructor(readonly fault: Fault) {
    super(fault.detail);
  }
}

function found(reason: Fault['reason'], line: number, detail: string): Found {
  return new Found({ ok: false, reason, line, detail });
}

/** Merges a checked backup. Everything is compared with what is stored before the first record is written. */
export async function restore(
  parts: Parts,
  checked: Checked & { ok: true },
  onProgress: (share: number) => void = () => {},
): Promise<RestoreOutcome> {
  let fresh: PlacedRecord[];
  let freshPhotos: PlacedPhoto[];
  try {
    fresh = await missingRecords(parts.connection, checked.records, (s) => onProgress(s * checking));
    freshPhotos = await missingPhotos(parts.connection, checked.photos);
  } catch (error) {
    if (error instanceof Found) return error.fault;
    throw error;
  }
  for (let i = 0; i < fresh.length; i += chunkSize) {
    await parts.writer.commit(fresh.slice(i, i + chunkSize).map(prepared));
    onProgress(checking + (writing * Math.min(i + chunkSize, fresh.length)) / fresh.length);
  }
  for (let i = 0; i < freshPhotos.length; i += photosAtOnce) {
    await parts.writer.commit([], freshPhotos.slice(i, i + photosAtOnce).map(storedPhoto));
  }
  await parts.summaries.makeDropped((s) => onProgress(checking + writing + s * (1 - checking - writing)));
  onProgress(1);
  const added = { entries: 0, headers: 0, revisions: 0, photos: freshPhotos.length };
  for (const { store } of fresh) added[store] += 1;
  const already = checked.records.length + checked.photos.length - fresh.length - freshPhotos.length;
  return { ok: true, added, already, conflicts: await conflicts(parts.reader, fresh) };
}

function prepared({ key, store, value }: PlacedRecord): Prepared {
  return { key, store, value, json: JSON.stringify(value) };
}

async function missingRecords(
  connection: Connection,
  records: readonly PlacedRecord[],
  onProgress: (share: number) => void,
): Promise<PlacedRecord[]> {
  const missing: PlacedRecord[] = [];
  for (let i = 0; i < records.length; i += chunkSize) {
    const chunk = records.slice(i, i + chunkSize);
    const stored = await connection.transact([...recordStores], 'readonly', (transaction) =>
      Promise.all(
        chunk.map(async ({ store, value }) => {
          const corrects = store === 'entries' && typeof value.corrects === 'string' && value.corrects;
          return {
            same: await transaction.objectStore(store).get(value.id),
            corrected: corrects ? await transaction.objectStore('entries').get(corrects) : undefined,
          };
        }),
      ),
    );
    for (const [j, record] of chunk.entries()) {
      const { same, corrected } = stored[j] ?? {};
      const { line, value } = record;
      if (same && canonical(same) !== canonical(value)) {
        throw found('conflict', line, `${value.id} is on this phone with other content`);
      }
      if (corrected?.corrects !== undefined) {
        throw found('correction', line, `${value.id} corrects a correction`);
      }
      if (!same) missing.push(record);
    }
    onProgress(Math.min(1, (i + chunkSize) / records.length));
  }
  return missing;
}

async function missingPhotos(connection: Connection, photos: readonly PlacedPhoto[]): Promise<PlacedPhoto[]> {
  const kept = await connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').getAllKeys());
  const here = new Set(kept);
  const missing = photos.filter(({ record }) => !here.has(record.hash));
  for (const { line, record, data } of missing) {
    const bytes = fromBase64(data);
    if (!bytes || (await photoHash(bytes.buffer)) !== record.hash) {
      throw found('photo', line, `${record.hash} is not the hash of its bytes`);
    }
  }
  return missing;
}

function storedPhoto({ record, data }: PlacedPhoto): StoredPhoto {
  const blob = new Blob([fromBase64(data) ?? ''], { type: record.type });
  return { hash: record.hash, record, blob };
}

async function conflicts(reader: Reader, fresh: readonly PlacedRecord[]): Promise<string[]> {
  const docs = new Set(
    fresh.flatMap(({ store, value }) => (store === 'revisions' ? [String(value.doc)] : [])),
  );
  const apart: string[] = [];
  for (const doc of docs) {
    if (heads(await reader.revisions(doc)).length > 1) apart.push(doc);
  }
  return apart;
}
