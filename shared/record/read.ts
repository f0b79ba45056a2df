import * as z from 'zod/mini';
import { type BuildHeader, buildHeader, buildVersion } from './build.ts';
import { type AnyEntry, entry, entryVersion, foreignEntry, isEntryKind } from './entry.ts';
import { type OvenLoadHeader, ovenLoadHeader, ovenLoadVersion } from './oven-load.ts';
import {
  type ForeignRevision,
  foreignRevision,
  isDocType,
  type Revision,
  revision,
  revisionVersion,
} from './revision.ts';

export type Header = BuildHeader | OvenLoadHeader;
export type StoredRecord = AnyEntry | Header | Revision | ForeignRevision;

export type Gated<T> =
  | { ok: true; value: T }
  /** Set aside and shown, never dropped: the raw record stays where it is. */
  | { ok: false; why: string; raw: unknown };

const envelope = z.lazy(() => z.looseObject({ record: z.string(), v: z.number() }));
const typeOnly = z.lazy(() => z.looseObject({ type: z.string() }));
const kindOnly = z.lazy(() => z.looseObject({ kind: z.string() }));

function firstIssue(error: z.core.$ZodError): string {
  const issue = error.issues[0];
  return issue ? `${issue.path.join('.') || 'record'}: ${issue.message}` : 'not readable';
}

function gate<T>(schema: z.core.$ZodType<T>, raw: unknown): Gated<T> {
  const result = z.safeParse(schema, raw);
  return result.success
    ? { ok: true, value: result.data }
    : { ok: false, why: firstIssue(result.error), raw };
}

export function readEntry(raw: unknown): Gated<AnyEntry> {
  const kind = z.safeParse(kindOnly, raw);
  const ours = kind.success && isEntryKind(kind.data.kind) && !isNewer(raw, entryVersion);
  return ours ? gate(entry, raw) : gate(foreignEntry, raw);
}

export function readRevision(raw: unknown): Gated<Revision | ForeignRevision> {
  const type = z.safeParse(typeOnly, raw);
  const ours = type.success && isDocType(type.data.type) && !isNewer(raw, revisionVersion);
  return ours ? gate(revision, raw) : gate(foreignRevision, raw);
}

export function readHeader(raw: unknown): Gated<Header> {
  const outer = z.safeParse(envelope, raw);
  if (!outer.success) return { ok: false, why: firstIssue(outer.error), raw };
  const version = outer.data.record === 'build' ? buildVersion : ovenLoadVersion;
  if (isNewer(raw, version)) return { ok: false, why: 'written by a newer version of the app', raw };
  return outer.data.record === 'build' ? gate(buildHeader, raw) : gate(ovenLoadHeader, raw);
}

/** Makes the schemas of what a bench with work on it shows: for a moment in which the disk is waited for anyway. */
export function warmGate(): void {
  readEntry({ kind: 'tick' });
  readHeader({ record: 'build', v: buildVersion });
  readHeader({ record: 'ovenLoad', v: ovenLoadVersion });
}

/** The one gate for everything read from disk or from a file. */
export function readRecord(raw: unknown): Gated<StoredRecord> {
  const outer = z.safeParse(envelope, raw);
  if (!outer.success) return { ok: false, why: firstIssue(outer.error), raw };
  switch (outer.data.record) {
    case 'entry':
      return readEntry(raw);
    case 'revision':
      return readRevision(raw);
    case 'build':
    case 'ovenLoad':
      return readHeader(raw);
    default:
      return { ok: false, why: `record: '${outer.data.record}' is not a record of this app`, raw };
  }
}

function isNewer(raw: unknown, version: number): boolean {
  const outer = z.safeParse(envelope, raw);
  return outer.success && outer.data.v > version;
}
