import { signal } from '@preact/signals';
import { openStore } from '#storage/open-store.ts';
import { type OpenFailure, type Refilled, type Store, WriteError } from '#storage/store.ts';

export type Shop =
  | { phase: 'opening' }
  | { phase: 'failed'; reason: OpenFailure; detail: string }
  | { phase: 'open'; store: Store; demo: boolean }
  /** Another tab with a newer version took the database over. */
  | { phase: 'lost' };

export const shop = signal<Shop>({ phase: 'opening' });

/** What one copy of the record got back from the other at the last opening; said once. */
export const refilled = signal<Refilled | undefined>(undefined);

const chosenKey = 'tubewright-shop';

export function demoChosen(): boolean {
  try {
    return localStorage.getItem(chosenKey) === 'demo';
  } catch {
    return false;
  }
}

export function chooseShop(which: 'own' | 'demo'): void {
  try {
    localStorage.setItem(chosenKey, which);
  } catch {
    // Without localStorage the builder's own shop opens, which is the safe side.
  }
}

export async function openShop(): Promise<Store | undefined> {
  const demo = demoChosen();
  const result = await openStore({
    name: demo ? 'tubewright-demo' : 'tubewright',
    summarize: () => import('./summarize.ts').then((m) => m.summarize),
  });
  if (!result.ok) {
    shop.value = { phase: 'failed', reason: result.reason, detail: result.detail };
    return undefined;
  }
  const { store } = result;
  store.compared.then((back) => {
    if (back.database + back.lines + (back.photos ?? 0) > 0) refilled.value = back;
  });
  store.onLost(() => {
    shop.value = { phase: 'lost' };
  });
  shop.value = { phase: 'open', store, demo };
  return store;
}

/** The open store. Screens are shown only while there is one. */
export function theStore(): Store {
  if (shop.value.phase !== 'open') throw new WriteError('closed');
  return shop.value.store;
}
