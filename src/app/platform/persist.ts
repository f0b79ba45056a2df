import { type ReadonlySignal, signal } from '@preact/signals';

/** 'kept': not thrown away when the phone is full. 'unknown': the browser has not been asked what it does. */
export type Keeping = 'unknown' | 'kept' | 'mayBeCleared' | 'unsupported';

const supported = 'storage' in navigator && 'persist' in navigator.storage;
const state = signal<Keeping>(supported ? 'unknown' : 'unsupported');

/** What the browser promises about everything stored here. */
export const keeping: ReadonlySignal<Keeping> = state;

async function answer(asked: Promise<boolean>): Promise<void> {
  // Some browsers reject in a private window, which is a no.
  state.value = (await asked.catch(() => false)) ? 'kept' : 'mayBeCleared';
}

/** Reads what was promised before; asks nothing. */
export async function readKeeping(): Promise<void> {
  if (supported) await answer(navigator.storage.persisted());
}

/** Asks the browser for the promise. Some ask the builder, the others decide by themselves. */
export async function askToKeep(): Promise<void> {
  if (supported && state.value !== 'kept') await answer(navigator.storage.persist());
}

export interface Room {
  /** Bytes */
  used: number;
  /** Most this browser lets the app have, bytes */
  of: number;
}

export async function roomUsed(): Promise<Room | undefined> {
  if (!('storage' in navigator) || !('estimate' in navigator.storage)) return undefined;
  const { usage, quota } = await navigator.storage.estimate().catch((): StorageEstimate => ({}));
  return usage === undefined || quota === undefined ? undefined : { used: usage, of: quota };
}
