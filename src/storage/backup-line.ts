import * as z from 'zod/mini';
import { type PhotoRecord, photoRecord } from '#shared/record/photo.ts';
import { admit, keyOf, type RawRecord, type RecordStore } from './admit.ts';
import { Refusal } from './backup-faults.ts';
import { base64Length } from './base64.ts';
import { unsafeJson } from './json.ts';

/** What a line between the first and the last holds. */
export type Held =
  | { is: 'record'; line: number; key: string; store: RecordStore; value: RawRecord; json: string }
  | { is: 'photo'; line: number; record: PhotoRecord; data: string }
  /** What the app that wrote the backup could not read itself. */
  | { is: 'setAside' };
export type HeldRecord = Held & { is: 'record' };
export type HeldPhoto = Held & { is: 'photo' };

const longestRecord = 4_000_000;
const photoLine = z.extend(photoRecord, { data: z.string() });
const setAsideLine = z.looseObject({ setAside: z.unknown() });

/** A line's JSON; a first line that is none belongs to another kind of file. */
export function parseLine(text: string, line: number): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : 'not JSON';
    throw new Refusal(line === 1 ? 'foreign' : 'notJson', line, why);
  }
}

/** Takes a line through the gate. */
export function checkLine(json: string, line: number): Held {
  const raw = parseLine(json, line);
  if (isObject(raw) && raw.record === 'photo') {
    const photo = z.safeParse(photoLine, raw);
    if (photo.success) return checkPhoto(photo.data, line);
  }
  if (json.length > longestRecord)
    throw new Refusal('tooLong', line, `${json.length} characters in one record`);
  if (z.safeParse(setAsideLine, raw).success && !unsafeJson(raw)) return { is: 'setAside' };
  const admitted = admit(raw);
  if (!admitted.ok) throw new Refusal(admitted.fault, line, admitted.why);
  const { store, value } = admitted;
  return { is: 'record', line, key: keyOf(store, value.id), store, value, json };
}

function checkPhoto({ data, ...record }: z.infer<typeof photoLine>, line: number): HeldPhoto {
  if (unsafeJson(record)) throw new Refusal('notARecord', line, 'not a photo');
  if (base64Length(data) !== record.bytes) {
    throw new Refusal('photo', line, `${record.hash} does not have ${record.bytes} bytes`);
  }
  return { is: 'photo', line, record, data };
}

const storeOf: Record<string, RecordStore> = {
  entry: 'entries',
  revision: 'revisions',
  build: 'headers',
  ovenLoad: 'headers',
};

/** A line that has been through the gate, read once more without it. */
export function checkedLine(json: string, line: number): Held {
  const value = JSON.parse(json);
  if (value.record === 'photo') {
    const { data, ...record } = value;
    return { is: 'photo', line, record, data };
  }
  const store = storeOf[value.record];
  if (!store) return { is: 'setAside' };
  return { is: 'record', line, key: keyOf(store, value.id), store, value, json };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
