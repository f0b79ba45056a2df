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

/** Writes, and only then lets the screens know. A failure is kept and shown; false says so. */
export async function writeThen(batch: Batch, then: () => void): Promise<boolean> {
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

/** Tries what did not get written again, oldest first. */
export async function retryUnsaved(): Promise<void> {
  const waiting = unsaved.value;
  unsaved.value = [];
  for (const { batch, then } of waiting) await writeThen(batch, then);
}
