import { roleTick } from '#app/laying-up/build/ticks.ts';
import { theStore } from '#app/state/shop.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';

/** The pieces weighed one by one are all the cloth there is: their sum is its weight, kg. */
export function sumAsWeight(state: BuildState, mass: number): EntryDraft[] {
  const subject = state.header.id;
  const ticks = roleTick(state, 'weighCloth', { newId: () => theStore().newId() });
  return [{ kind: 'weight', subject, what: 'cutCloth', mass }, ...ticks];
}
