import * as z from 'zod/mini';
import { isLoggerFile } from '#shared/record/photo.ts';
import { keyOf, type RawRecord } from './admit.ts';
import { type Fault, orFault, Refusal } from './backup-faults.ts';
import {
  backupFormat,
  backupVersion,
  countLines,
  endLine,
  firstLine,
  type LineCounts,
} from './backup-format.ts';
import { checkLine, type HeldPhoto, type HeldRecord, parseLine } from './backup-line.ts';
import { type LineChunk, LineTooLong, readLines } from './backup-lines.ts';
import { crc32, hex32 } from './crc32.ts';
import { SeenKeys } from './fingerprint.ts';
import { unsafeJson } from './json.ts';
import { Turns } from './turns.ts';

/** Different things in a backup, each counted once however often it is in it. */
export interface Holds {
  builds: number;
  ovenLoads: number;
  entries: number;
  revisions: number;
  photos: number;
  /** Files of loggers */
  files: number;
}

export interface Good {
  ok: true;
  file: Blob;
  /** Checksum up to the end of each chunk of lines: what is read again later must give the same. */
  marks: readonly number[];
  counts: LineCounts;
  holds: Holds;
  /** When the backup was made. */
  at: number;
}
export type Checked = Fault | Good;

/** What a builder may do while a file is read: see how far it is, and stop it. */
export interface Watched {
  /** Called with the share of the bytes that were read. */
  onProgress?: (share: number) => void;
  stop?: AbortSignal | undefined;
}

const encoder = new TextEncoder();
/** Lines whose checksum is made at one go. */
const summedAtOnce = 200;

/** Checks a whole backup, line by line as it is read, and writes nothing. Throws the reason of `stop`. */
export function checkBackup(file: Blob, { onProgress, stop }: Watched = {}): Promise<Checked> {
  return orFault(async () => {
    const turns = new Turns(stop);
    const check = new Check(turns);
    for await (const chunk of chunksOf(file)) {
      await check.take(chunk);
      onProgress?.(Math.min(1, check.bytes / file.size));
      if (turns.due()) await turns.give();
    }
    return check.end(file);
  });
}

/** The lines of a file, with what stands in the way of reading them said as a fault. */
export async function* chunksOf(file: Blob): AsyncGenerator<LineChunk> {
  let next = 1;
  try {
    for await (const chunk of readLines(file)) {
      next = chunk.from + chunk.lines.length;
      yield chunk;
    }
  } catch (error) {
    if (error instanceof LineTooLong) {
      throw new Refusal(error.line === 1 ? 'foreign' : 'tooLong', error.line, error.message);
    }
    if (error instanceof DOMException && error.name !== 'AbortError') {
      throw new Refusal('unreadable', next, error.message);
    }
    throw error;
  }
}

/** The checksum of these lines, each with a line feed, after what came before. */
export async function summed(lines: readonly string[], before: number, turns: Turns): Promise<number> {
  let crc = before;
  for (let i = 0; i < lines.length; i += summedAtOnce) {
    const text = lines.slice(i, i + summedAtOnce).join('\n');
    crc = crc32(encoder.encode(`${text}\n`), crc);
    if (turns.due()) await turns.give();
  }
  return crc;
}

class Check {
  bytes = 0;
  private at = 0;
  private crc = 0;
  private readonly marks: number[] = [];
  private readonly counts = countLines();
  private readonly seen = new SeenKeys();
  private readonly corrections = new SeenKeys();
  private readonly corrected = new SeenKeys();
  private readonly holds: Holds = { builds: 0, ovenLoads: 0, entries: 0, revisions: 0, photos: 0, files: 0 };
  private ending: { text: string; line: number } | undefined;

  constructor(private readonly turns: Turns) {}

  async take({ from, lines, last }: LineChunk): Promise<void> {
    const ending = last ? lines.at(-1) : undefined;
    const body = ending === undefined ? lines : lines.slice(0, -1);
    for (const [i, text] of body.entries()) {
      if (from + i === 1) this.first(text);
      else this.line(text, from + i);
      if (this.turns.due()) await this.turns.give();
    }
    this.crc = await summed(body, this.crc, this.turns);
    this.marks.push(this.crc);
    this.bytes += lines.reduce((sum, text) => sum + text.length + 1, 0);
    if (ending !== undefined) this.ending = { text: ending, line: from + body.length };
  }

  end(file: Blob): Good {
    const { ending, at, marks, counts, holds } = this;
    if (!ending) throw new Refusal('empty', 1, 'there is nothing in it');
    const { text, line } = ending;
    if (line === 1) {
      this.first(text);
      throw new Refusal('cutShort', 1, 'there is nothing after the first line');
    }
    const end = z.safeParse(endLine, parseLine(text, line));
    if (!end.success) {
      this.line(text, line);
      throw new Refusal('cutShort', line, 'the last line, with counts and checksum, is missing');
    }
    for (const what of ['headers', 'revisions', 'entries', 'photos', 'setAside'] as const) {
      const [says, are] = [end.data.counts[what], counts[what]];
      if (says !== are) throw new Refusal('count', line, `says ${says} ${what}, there are ${are}`);
    }
    const crc = hex32(this.crc);
    if (crc !== end.data.crc32) throw new Refusal('checksum', line, `says ${end.data.crc32}, it is ${crc}`);
    return { ok: true, file, marks, counts, holds, at };
  }

  private first(text: string): void {
    const raw = parseLine(text, 1);
    const named = z.safeParse(z.looseObject({ format: z.literal(backupFormat), version: z.number() }), raw);
    if (!named.success || unsafeJson(raw))
      throw new Refusal('foreign', 1, `the first line does not say '${backupFormat}'`);
    if (named.data.version > backupVersion) {
      throw new Refusal('newerVersion', 1, `version ${named.data.version}, known up to ${backupVersion}`);
    }
    const whole = z.safeParse(firstLine, raw);
    if (!whole.success) throw new Refusal('foreign', 1, 'the first line is not complete');
    this.at = whole.data.at;
  }

  private line(text: string, line: number): void {
    const held = checkLine(text, line);
    if (held.is === 'record') this.record(held);
    else if (held.is === 'photo') this.photo(held);
    else this.counts.setAside += 1;
  }

  private record({ key, line, store, value }: HeldRecord): void {
    const before = this.seen.add(key, value, line);
    if (before < 0)
      throw new Refusal('conflict', line, `${value.id} is in line ${-before} with other content`);
    this.counts[store] += 1;
    if (before > 0) return;
    if (store === 'headers') this.holds[value.record === 'build' ? 'builds' : 'ovenLoads'] += 1;
    else this.holds[store] += 1;
    if (store === 'entries' && value.corrects !== undefined) this.correction(key, value, line);
  }

  /** Which of the two comes first in the file does not matter. */
  private correction(key: string, { id, corrects }: RawRecord, line: number): void {
    const first = keyOf('entries', String(corrects));
    if (this.corrections.lineOf(first) > 0)
      throw new Refusal('correction', line, `${id} corrects a correction`);
    const after = this.corrected.lineOf(key);
    if (after > 0) throw new Refusal('correction', after, `it corrects ${id}, which is a correction`);
    this.corrections.add(key, 0, line);
    this.corrected.add(first, 0, line);
  }

  private photo({ line, record }: HeldPhoto): void {
    this.counts.photos += 1;
    if (this.seen.add(`photos:${record.hash}`, 0, line) === 0)
      this.holds[isLoggerFile(record) ? 'files' : 'photos'] += 1;
  }
}
