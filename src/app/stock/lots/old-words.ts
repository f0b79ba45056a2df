import { findDoc } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { Lot, LotKind } from '#shared/record/lot.ts';
import { isPast } from './lot-left.ts';

/** The lot that this tube takes now, when it is past its date; nothing where nobody said which it is. */
export function oldLot({ lots }: BuildState, of: LotKind): Lot | undefined {
  const last = lots.filter((l) => l.entry.of === of).at(-1)?.entry;
  const lot = findDoc('lot', last?.lot)?.body;
  return lot && isPast(lot, now.value) ? lot : undefined;
}

/** The same in few words, beside what is poured; '' while it is good. */
export function oldWords(state: BuildState, of: LotKind): string {
  const lot = oldLot(state, of);
  return lot ? ` · △ ${lot.name} is too old` : '';
}
