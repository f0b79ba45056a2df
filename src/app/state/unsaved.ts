import { signal } from '@preact/signals';
import { type Batch, WriteError, type WriteFailure } from '#storage/store.ts';
import { theStore } from './shop.ts';

/** A write that did not happen. It stays on the screen, with what it holds, until it succeeds. */
export interface Unsaved {
  batch: Batch;
  reason: WriteFailure;
  then: () => void;
}

export const unsaved = signal<readonly Unsaved[]>([]);

/** What a batch says, apart from when it was said: pressing again after a failure must not pour twice. */
function says(batch: Batch): string {
  // What a new header's own entries name is as new as its id.
  const begun = new Set(batch.headers?.map((header) => header.id));
  // A document just begun gets a new name at every press.
  const revisions = batch.revisions?.map((r) => (r.parents.length === 0 ? { ...r, doc: '' } : r));
  return JSON.stringify({ ...batch, revisions }, (key, value) =>
    ['id', 'recordedAt', 'happenedAt', 'startedAt', 'clock', 'at', 'parents'].includes(key) ||
    (key === 'subject' && begun.has(value))
      ? undefined
      : value,
  );
}

/** Writes, and only then lets the screens know. A failure is kept and shown; false says so. */
export async function writeThen(batch: Batch, then: () => void): Promise<boolean> {
  if (unsaved.value.some((u) => says(u.batch) === says(batch))) return retryUnsaved();
  try {
    await theStore().write(batch);
  } catch (error) {
    const reason = error instanceof WriteError ? error.reason : 'refused';
    unsaved.value = [...unsaved.value, { batch, reason, then }];
    return false;
  }
  then();
  return true;
}

/** Tries what did not get written again, oldest first; true when all of it is on disk. */
export async function retryUnsaved(): Promise<boolean> {
  const waiting = unsaved.value;
  unsaved.value = [];
  let all = true;
  for (const { batch, then } of waiting) all = (await writeThen(batch, then)) && all;
  return all;
}
