import * as z from 'zod/mini';
import { type PhotoRecord, photoRecord } from '#shared/record/photo.ts';
import { admit, keyOf, type RawRecord, type RecordStore } from './admit.ts';
import {
  backupFormat,
  backupVersion,
  countLines,
  endLine,
  firstLine,
  type LineCounts,
} from './backup-format.ts';
import { fromBase64 } from './base64.ts';
import { crc32, hex32 } from './crc32.ts';
import { canonical, unsafeJson } from './json.ts';

/** Why a backup is refused. Words for people are made in the app. */
export type BackupFault =
  | 'empty'
  /** Not a backup of this app. */
  | 'foreign'
  | 'newerVersion'
  /** The last line is missing: the file ends too soon. */
  | 'cutShort'
  | 'notJson'
  | 'notARecord'
  | 'tooLong'
  | 'tooDeep'
  /** A photo's bytes are not what its line says. */
  | 'photo'
  /** One id, two contents: in the file, or in the file and on this phone. */
  | 'conflict'
  /** A correction that corrects a correction. */
  | 'correction'
  | 'count'
  | 'checksum';

export interface Fault {
  ok: false;
  reason: BackupFault;
  /** Counted from 1. */
  line: number;
  detail: string;
}

export interface PlacedRecord {
  line: number;
  key: string;
  store: RecordStore;
  value: RawRecord;
}
export interface PlacedPhoto {
  line: number;
  record: PhotoRecord;
  data: string;
}

export type Checked =
  | Fault
  | {
      ok: true;
      records: PlacedRecord[];
      photos: PlacedPhoto[];
      counts: LineCounts;
      /** When the backup was made. */
      at: number;
    };

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
  /** Found before anything was written. */
  | Fault;

const longestRecord = 4_000_000;
const longestPhoto = 100_000_000;
const encoder = new TextEncoder();
const photoLine = z.extend(photoRecord, { data: z.string() });
const setAsideLine = z.looseObject({ setAside: z.unknown() });

/** Thrown and caught in this file only. */
class Refusal extends Error {
  constructor(
    readonly reason: BackupFault,
    readonly line: number,
    message: string,
  ) {
    super(message);
  }
}

/** Checks a whole backup, and writes nothing. */
export function checkBackup(text: string): Checked {
  try {
    return new Check(text).run();
  } catch (error) {
    if (error instanceof Refusal) {
      return { ok: false, reason: error.reason, line: error.line, detail: error.message };
    }
    throw error;
  }
}

class Check {
  private readonly lines: string[];
  private readonly records = new Map<string, PlacedRecord>();
  private readonly photos = new Map<string, PlacedPhoto>();
  private readonly counts: LineCounts = countLines();

  constructor(text: string) {
    // Share sheets and editors put a byte order mark before and carriage returns at the ends of lines.
    this.lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
    while (this.lines.at(-1)?.trim() === '') this.lines.pop();
  }

  run(): Checked {
    if (this.lines.length === 0) throw new Refusal('empty', 1, 'there is nothing in it');
    const { at } = this.first();
    const last = this.lines.length;
    const end = z.safeParse(endLine, last > 1 ? this.json(last) : undefined);
    for (let line = 2; line < last; line++) this.take(line, this.json(line));
    if (!end.success) {
      if (last > 1) this.take(last, this.json(last));
      throw new Refusal('cutShort', last, 'the last line, with counts and checksum, is missing');
    }
    this.corrections();
    this.totals(end.data);
    return {
      ok: true,
      records: [...this.records.values()],
      photos: [...this.photos.values()],
      counts: this.counts,
      at,
    };
  }

  private text(line: number): string {
    return this.lines[line - 1] ?? '';
  }

  private json(line: number): unknown {
    const text = this.text(line);
    if (text.length > longestPhoto)
      throw new Refusal('tooLong', line, `${text.length} characters in one line`);
    try {
      return JSON.parse(text);
    } catch (error) {
      const why = error instanceof Error ? error.message : 'not JSON';
      throw new Refusal(line === 1 ? 'foreign' : 'notJson', line, why);
    }
  }

  private first(): { at: number } {
    const raw = this.json(1);
    const named = z.safeParse(z.looseObject({ format: z.literal(backupFormat), version: z.number() }), raw);
    if (!named.success || unsafeJson(raw))
      throw new Refusal('foreign', 1, `the first line does not say '${backupFormat}'`);
    if (named.data.version > backupVersion) {
      throw new Refusal('newerVersion', 1, `version ${named.data.version}, known up to ${backupVersion}`);
    }
    const whole = z.safeParse(firstLine, raw);
    if (!whole.success) throw new Refusal('foreign', 1, 'the first line is not complete');
    return whole.data;
  }

  private take(line: number, raw: unknown): void {
    const photo = z.safeParse(photoLine, raw);
    if (photo.success) {
      this.takePhoto(line, photo.data);
      return;
    }
    const length = this.text(line).length;
    if (length > longestRecord) throw new Refusal('tooLong', line, `${length} characters in one record`);
    if (z.safeParse(setAsideLine, raw).success && !unsafeJson(raw)) {
      this.counts.setAside += 1;
      return;
    }
    const admitted = admit(raw);
    if (!admitted.ok) throw new Refusal(admitted.fault, line, admitted.why);
    const { store, value } = admitted;
    const key = keyOf(store, value.id);
    const before = this.records.get(key);
    if (before && canonical(before.value) !== canonical(value)) {
      throw new Refusal('conflict', line, `${value.id} is in line ${before.line} with other content`);
    }
    this.counts[store] += 1;
    if (!before) this.records.set(key, { line, key, store, value });
  }

  private takePhoto(line: number, { data, ...record }: z.infer<typeof photoLine>): void {
    if (unsafeJson(record)) throw new Refusal('notARecord', line, 'not a photo');
    if (fromBase64(data)?.length !== record.bytes) {
      throw new Refusal('photo', line, `${record.hash} does not have ${record.bytes} bytes`);
    }
    this.counts.photos += 1;
    this.photos.set(record.hash, { line, record, data });
  }

  private corrections(): void {
    for (const { line, value } of this.records.values()) {
      const first = this.records.get(keyOf('entries', String(value.corrects)));
      if (value.record === 'entry' && first?.value.corrects !== undefined) {
        throw new Refusal('correction', line, `${value.id} corrects a correction`);
      }
    }
  }

  private totals(end: z.infer<typeof endLine>): void {
    const last = this.lines.length;
    for (const what of ['headers', 'revisions', 'entries', 'photos', 'setAside'] as const) {
      if (end.counts[what] === this.counts[what]) continue;
      throw new Refusal('count', last, `says ${end.counts[what]} ${what}, there are ${this.counts[what]}`);
    }
    let crc = 0;
    for (let line = 1; line < last; line++) crc = crc32(encoder.encode(`${this.text(line)}\n`), crc);
    if (hex32(crc) !== end.crc32)
      throw new Refusal('checksum', last, `says ${end.crc32}, it is ${hex32(crc)}`);
  }
}
