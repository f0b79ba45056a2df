import { type Entry, type EntryDraft, entryVersion } from '#shared/record/entry.ts';
import type { PhotoRecord } from '#shared/record/photo.ts';
import type { Header } from '#shared/record/read.ts';
import { idTime } from '#storage/ids.ts';
import { takeIn } from './journals.ts';
import { repaint, zoneAt } from './now.ts';
import { theStore } from './shop.ts';
import { writeThen } from './unsaved.ts';

/** With an id, this phone and the time it is written. */
export function stampEntry(draft: EntryDraft): Entry {
  const now = Date.now();
  const happenedAt = draft.happenedAt ?? now;
  const store = theStore();
  const id = store.newId();
  return {
    ...draft,
    record: 'entry',
    v: entryVersion,
    id,
    device: store.device,
    happenedAt,
    // With the phone's clock set back, an undo or a correction would else count as older than what it changes.
    recordedAt: Math.max(now, idTime(id)),
    zone: zoneAt(happenedAt),
  } as Entry;
}

/** What is written in the same transaction: headers and photos. */
export interface Alongside {
  headers?: readonly Header[];
  photos?: readonly { record: PhotoRecord; blob: Blob }[];
}

/**
 * Writes what happened and shows it once it is on disk; true says that it is.
 * Several drafts are one transaction: all of them happened, or none.
 */
export function record(
  drafts: EntryDraft | readonly EntryDraft[],
  alongside: Alongside = {},
): Promise<boolean> {
  return recordStamped((Array.isArray(drafts) ? drafts : [drafts as EntryDraft]).map(stampEntry), alongside);
}

export async function recordStamped(
  entries: readonly Entry[],
  { headers = [], photos = [] }: Alongside,
): Promise<boolean> {
  return writeThen({ entries, headers, photos }, () => {
    // A clock must not show more left than it lasts because the screen's second is an old one.
    repaint();
    takeIn(headers, entries);
  });
}

/** Takes a fact out. It stays in the time line, struck through. */
export function retract(subject: string, root: string): Promise<boolean> {
  return record({ kind: 'retracted', subject, corrects: root });
}
