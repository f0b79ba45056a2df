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

/** Why it was not written; undefined when it was. */
async function attempt({ batch }: Pick<Unsaved, 'batch'>): Promise<WriteFailure | undefined> {
  try {
    await theStore().write(batch);
    return undefined;
  } catch (error) {
    return error instanceof WriteError ? error.reason : 'refused';
  }
}

/** Writes, and only then lets the screens know. A failure is kept and shown; false says so. */
export async function writeThen(batch: Batch, then: () => void): Promise<boolean> {
  if (unsaved.value.some((u) => says(u.batch) === says(batch))) return retryUnsaved();
  const reason = await attempt({ batch });
  if (reason) unsaved.value = [...unsaved.value, { batch, reason, then }];
  else then();
  return !reason;
}

let trying: Promise<boolean> | undefined;

/** Tries what did not get written again, oldest first; true when all of it is on disk. Each stays in sight until it is. */
export function retryUnsaved(): Promise<boolean> {
  trying ??= tryAll().finally(() => {
    trying = undefined;
  });
  return trying;
}

async function tryAll(): Promise<boolean> {
  let all = true;
  for (const one of unsaved.value) {
    const reason = await attempt(one);
    const stays = reason ? [{ ...one, reason }] : [];
    unsaved.value = unsaved.value.flatMap((u) => (u === one ? stays : [u]));
    if (reason) all = false;
    else one.then();
  }
  return all;
}
