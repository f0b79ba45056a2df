import { type AnyEntry, entryVersion } from '#shared/record/entry.ts';
import type { PhotoRecord } from '#shared/record/photo.ts';
import type { Header } from '#shared/record/read.ts';
import type { Revision } from '#shared/record/revision.ts';
import { foldVersion, type Summary } from '#shared/record/summary.ts';
import { type Checked, checkBackup, type Good } from '#storage/backup-check.ts';
import { readLines } from '#storage/backup-lines.ts';
import { deleteStore, openStore } from '#storage/open-store.ts';
import { photoHash } from '#storage/photo-hash.ts';
import { type Store, type Summarize, WriteError } from '#storage/store.ts';

export const name = 'tubewright-demo';

/** Counts the notes of a build, so that a test sees which entries a summary was made from. */
export const summarize: Summarize = (header, entries) =>
  ({
    of: header.record,
    ...(entries.some((e) => e.kind === 'closed') ? {} : { open: 1 }),
    subject: header.id,
    foldVersion,
    number: header.number,
    startedAt: header.startedAt,
    lastAt: header.startedAt,
    ...(header.record === 'build'
      ? {
          name: header.name,
          words: entries.map((e) => e.kind).join(' '),
          clothMass: 0.1,
          fiber: 'carbon',
          fiberDensity: 1780,
          resinDensity: 1150,
          wantedFiberVolume: 0.35,
          cups: 0,
          ovenLoads: [],
          cloth: 'Carbon plain, 193 g',
          arealWeight: 0.193,
          resin: 'Laminating epoxy, SLOW',
          poured: [],
          ratings: [],
          notes: [],
          photos: [],
          draws: [],
        }
      : { builds: [], readings: entries.length, tubes: [] }),
  }) as Summary;

const opened = new Set<Store>();

export async function open(fold: Summarize = summarize): Promise<Store> {
  const result = await openStore({ name, summarize: async () => fold });
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  opened.add(result.store);
  return result.store;
}

/** Closes what a test left open and deletes both copies. */
export async function cleanUp(): Promise<void> {
  for (const store of opened) {
    await store.compared;
    await store.close();
  }
  opened.clear();
  await deleteStore(name);
}

export function note(id: string, subject: string, text = 'even wet-out', more: object = {}): AnyEntry {
  return {
    record: 'entry',
    v: entryVersion,
    kind: 'note',
    id,
    subject,
    happenedAt: 1_700_000_000_000,
    recordedAt: 1_700_000_000_000,
    zone: 60,
    device: 'phone-a',
    text,
    ...more,
  } as AnyEntry;
}

export function cloth(doc: string, id: string, parents: string[] = [], more: object = {}): Revision {
  return {
    record: 'revision',
    v: 1,
    type: 'cloth',
    doc,
    id,
    parents,
    at: 1_700_000_000_000,
    device: 'phone-a',
    body: { name: 'Twill 200', fiber: 'carbon', fiberDensity: 1780, arealWeight: 0.2 },
    ...more,
  } as Revision;
}

const schedule = { start: 295, stages: [{ kind: 'hold', lasts: 3600 }], holdLow: 330, readEvery: 600 };

export function ovenLoad(id: string, startedAt: number, more: object = {}): Header {
  return {
    record: 'ovenLoad',
    v: 1,
    id,
    number: 1,
    schedule,
    channels: [{ id: 'c1', sees: 'air', name: 'Air' }],
    limits: [],
    startedAt,
    zone: 60,
    device: 'phone-a',
    ...more,
  } as unknown as Header;
}

export async function photo(text: string): Promise<{ record: PhotoRecord; blob: Blob }> {
  const blob = new Blob([text], { type: 'image/jpeg' });
  const hash = await photoHash(await blob.arrayBuffer());
  return {
    record: { record: 'photo', v: 1, hash, type: 'image/jpeg', bytes: blob.size, addedAt: 1_700_000_000_000 },
    blob,
  };
}

/** Why a write failed, or 'written'. */
export async function outcome(write: Promise<unknown>): Promise<string> {
  try {
    await write;
    return 'written';
  } catch (error) {
    if (error instanceof WriteError) return error.reason;
    throw error;
  }
}

export async function backupText(store: Store, photos = true): Promise<string> {
  let text = '';
  for await (const piece of store.backup({ photos, app: '0.1.0', at: 1_700_000_000_000 })) text += piece;
  return text;
}

export const checkBytes = (bytes: Uint8Array<ArrayBuffer>): Promise<Checked> =>
  checkBackup(new Blob([bytes]));

export const check = (text: string): Promise<Checked> => checkBackup(new Blob([text]));

/** What a file says between its first and its last line. */
export async function saidIn({ file }: Good): Promise<unknown[]> {
  const said: unknown[] = [];
  for await (const { lines } of readLines(file)) said.push(...lines.map((line) => JSON.parse(line)));
  return said.slice(1, -1);
}

/** Everything that is kept, as sorted lines: equal for equal states. */
export async function state(store: Store): Promise<string[]> {
  return (await backupText(store)).split('\n').slice(1, -2).sort();
}
