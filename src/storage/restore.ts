import { heads } from '#shared/record/revision.ts';
import { recordStores } from './admit.ts';
import { chunksOf, type Good, summed, type Watched } from './backup-check.ts';
import { type Fault, orFault, Refusal } from './backup-faults.ts';
import { checkedLine, type HeldPhoto, type HeldRecord } from './backup-line.ts';
import { fromBase64 } from './base64.ts';
import type { Connection } from './connection.ts';
import { canonical } from './json.ts';
import { storedOf } from './lookup.ts';
import { photoHash } from './photo-hash.ts';
import type { Reader } from './reader.ts';
import type { StoredPhoto } from './schema.ts';
import type { Summaries } from './summaries.ts';
import { Turns } from './turns.ts';
import type { Writer } from './writer.ts';

export interface RestoreCounts {
  entries: number;
  headers: number;
  revisions: number;
  photos: number;
}
export type RestoreOutcome =
  | {
      ok: true;
      added: RestoreCounts;
      /** Records that were here before. */
      already: number;
      /** Documents that now have two heads. */
      conflicts: string[];
    }
  /** `added`: how many records were in when the file turned out to be another one. 0: nothing was written. */
  | (Fault & { added: number });

/** Share of the progress that is comparing, then writing; the rest is making summaries. */
const comparing = 0.3;
const writing = 0.6;

interface Parts {
  connection: Connection;
  reader: Reader;
  writer: Writer;
  summaries: Summaries;
}

/**
 * Merges a checked backup. The file is read twice more: once to compare everything in it with what is stored, before
 * the first record is written, and once to write what is missing. Only a chunk of it is ever in memory.
 */
export async function restore(
  parts: Parts,
  checked: Good,
  { onProgress = () => {}, stop }: Watched = {},
): Promise<RestoreOutcome> {
  const merge = new Merge(parts, checked, new Turns(stop));
  const done = await orFault(async () => {
    await merge.compare((share) => onProgress(share * comparing));
    await merge.write((share) => onProgress(comparing + share * writing));
    return { ok: true as const };
  });
  const { added } = merge;
  const total = added.entries + added.headers + added.revisions + added.photos;
  if (!done.ok) return { ...done, added: total };
  await parts.summaries.makeDropped((s) => {
    stop?.throwIfAborted();
    onProgress(comparing + writing + s * (1 - comparing - writing));
  });
  onProgress(1);
  const held = Object.values(checked.holds).reduce((a, b) => a + b, 0);
  return { ok: true, added, already: held - total, conflicts: await merge.conflicts() };
}

class Merge {
  readonly added: RestoreCounts = { entries: 0, headers: 0, revisions: 0, photos: 0 };
  /** Chunks with something that is not here yet. */
  private readonly wanted = new Set<number>();
  private readonly docs = new Set<string>();

  constructor(
    private readonly parts: Parts,
    private readonly checked: Good,
    private readonly turns: Turns,
  ) {}

  async compare(onProgress: (share: number) => void): Promise<void> {
    for await (const { i, records, photos } of this.chunks(onProgress)) {
      const missing = await this.missing(records);
      const missingPhotos = await this.missingPhotos(photos);
      if (missing.length + missingPhotos.length > 0) this.wanted.add(i);
    }
  }

  async write(onProgress: (share: number) => void): Promise<void> {
    for await (const { records, photos } of this.chunks(onProgress, this.wanted)) {
      const missing = await this.missing(records);
      const missingPhotos = await this.missingPhotos(photos);
      if (missing.length + missingPhotos.length === 0) continue;
      await this.parts.writer.commit(missing, missingPhotos);
      for (const { store, value } of missing) {
        this.added[store] += 1;
        if (store === 'revisions') this.docs.add(String(value.doc));
      }
      this.added.photos += missingPhotos.length;
    }
  }

  async conflicts(): Promise<string[]> {
    const apart: string[] = [];
    for (const doc of this.docs) {
      if (heads(await this.parts.reader.revisions(doc)).length > 1) apart.push(doc);
    }
    return apart;
  }

  /** The file once more; a chunk that is not as it was when it was checked ends it before it is used. */
  private async *chunks(onProgress: (share: number) => void, only?: ReadonlySet<number>) {
    const { file, marks } = this.checked;
    let crc = 0;
    let i = 0;
    for await (const { from, lines, last } of chunksOf(file)) {
      const body = last ? lines.slice(0, -1) : lines;
      crc = await summed(body, crc, this.turns);
      if (crc !== marks[i] || last !== (i === marks.length - 1))
        throw new Refusal('changed', from, 'it is not the file that was checked');
      if (!only || only.has(i)) yield { i, ...(await this.held(body, from)) };
      i += 1;
      onProgress(i / marks.length);
    }
    if (i < marks.length) throw new Refusal('changed', 1, 'it is shorter than the file that was checked');
  }

  /** Records of one chunk, each once. */
  private async held(lines: readonly string[], from: number) {
    const records = new Map<string, HeldRecord>();
    const photos = new Map<string, HeldPhoto>();
    for (const [i, text] of lines.entries()) {
      if (from + i === 1) continue;
      const held = checkedLine(text, from + i);
      if (held.is === 'record') records.set(held.key, held);
      if (held.is === 'photo') photos.set(held.record.hash, held);
      if (this.turns.due()) await this.turns.give();
    }
    return { records: [...records.values()], photos: [...photos.values()] };
  }

  private async missing(records: readonly HeldRecord[]): Promise<HeldRecord[]> {
    if (records.length === 0) return [];
    const { stored, corrected } = await this.parts.connection.transact(
      [...recordStores],
      'readonly',
      async (transaction) => ({
        stored: await storedOf(transaction, records),
        corrected: await storedOf(transaction, records.flatMap(firstOfFact)),
      }),
    );
    const corrections = new Set(corrected.flatMap((one) => (one?.corrects === undefined ? [] : [one.id])));
    const missing: HeldRecord[] = [];
    for (const [i, record] of records.entries()) {
      const { line, store, value } = record;
      const same = stored[i];
      if (same && canonical(same) !== canonical(value))
        throw new Refusal('conflict', line, `${value.id} is on this phone with other content`);
      if (store === 'entries' && corrections.has(String(value.corrects)))
        throw new Refusal('correction', line, `${value.id} corrects a correction`);
      if (!same) missing.push(record);
      if (this.turns.due()) await this.turns.give();
    }
    return missing;
  }

  private async missingPhotos(photos: readonly HeldPhoto[]): Promise<StoredPhoto[]> {
    const missing: StoredPhoto[] = [];
    for (const { line, record, data } of photos) {
      const here = await this.parts.connection.transact(['photos'], 'readonly', (t) =>
        t.objectStore('photos').getKey(record.hash),
      );
      if (here !== undefined) continue;
      const bytes = fromBase64(data);
      if (!bytes || (await photoHash(bytes.buffer)) !== record.hash)
        throw new Refusal('photo', line, `${record.hash} is not the hash of its bytes`);
      missing.push({ hash: record.hash, record, blob: new Blob([bytes], { type: record.type }) });
      if (this.turns.due()) await this.turns.give();
    }
    return missing;
  }
}

/** What a correction names, to be looked up. */
function firstOfFact({ store, value }: HeldRecord) {
  if (store !== 'entries' || typeof value.corrects !== 'string') return [];
  return [{ store, value: { ...value, id: value.corrects } }];
}
