import * as z from 'zod/mini';
import { buildVersion } from '#shared/record/build.ts';
import { id, stamp } from '#shared/record/common.ts';
import { ovenLoadVersion } from '#shared/record/oven-load.ts';
import { readRecord } from '#shared/record/read.ts';
import { unsafeJson } from './json.ts';

export const recordStores = ['headers', 'revisions', 'entries'] as const;
export type RecordStore = (typeof recordStores)[number];

/** A record as it lies on disk: what the stores need to file it, and whatever else it carries. */
export interface RawRecord {
  record: string;
  id: string;
  [field: string]: unknown;
}

export type Admitted =
  | { ok: true; store: RecordStore; value: RawRecord }
  | { ok: false; fault: 'tooDeep' | 'notARecord'; why: string };

/** A header of a newer version: it cannot be shown, but it can be kept and passed on. */
const newerHeader = z.looseObject({
  record: z.enum(['build', 'ovenLoad']),
  v: z.number().check(z.gt(Math.max(buildVersion, ovenLoadVersion))),
  id,
  startedAt: stamp,
});

/**
 * Whether a parsed JSON value may be written, and where to. The value itself is kept and not what the gate makes
 * of it, so that fields of newer versions come through untouched.
 */
export function admit(raw: unknown): Admitted {
  const unsafe = unsafeJson(raw);
  if (unsafe === 'tooDeep') return { ok: false, fault: 'tooDeep', why: 'nested too deep' };
  if (unsafe) return { ok: false, fault: 'notARecord', why: 'has a field named __proto__' };
  const gated = readRecord(raw);
  if (!gated.ok && !z.safeParse(newerHeader, raw).success) {
    return { ok: false, fault: 'notARecord', why: gated.why };
  }
  const value = raw as RawRecord;
  return { ok: true, store: storeOf(value), value };
}

function storeOf({ record }: RawRecord): RecordStore {
  if (record === 'entry') return 'entries';
  return record === 'revision' ? 'revisions' : 'headers';
}

/** Names a record across stores. */
export function keyOf(store: RecordStore, recordId: string): string {
  return `${store}:${recordId}`;
}
