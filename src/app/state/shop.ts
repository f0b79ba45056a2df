import { signal } from '@preact/signals';
import type { FirstRead, FirstReadOptions } from '#storage/first-read.ts';
import { openStore } from '#storage/open-store.ts';
import { type OpenFailure, type Refilled, type Store, WriteError } from '#storage/store.ts';
import { connecting, demoChosen, shopName } from './chosen-shop.ts';

export type Shop =
  | { phase: 'opening' }
  | { phase: 'failed'; reason: OpenFailure; detail: string }
  | { phase: 'open'; store: Store; demo: boolean }
  /** Another tab with a newer version took the database over. */
  | { phase: 'lost' };

export const shop = signal<Shop>({ phase: 'opening' });

/** What one copy of the record got back from the other at the last opening; said once. */
export const refilled = signal<Refilled | undefined>(undefined);

/** Opens it with what the first screen shows; `drawn` is when that is on the screen. */
export async function openShop(
  first: FirstReadOptions,
  drawn: Promise<unknown>,
): Promise<{ store: Store; first: FirstRead } | undefined> {
  const demo = demoChosen();
  const result = await openStore({
    name: shopName(),
    summarize: () => import('./summarize.ts').then((m) => m.summarize),
    connecting,
    first,
    drawn,
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
  return { store, first: result.first };
}

/** The open store. Screens are shown only while there is one. */
export function theStore(): Store {
  if (shop.value.phase !== 'open') throw new WriteError('closed');
  return shop.value.store;
}
