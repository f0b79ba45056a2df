import { findDoc } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { LotKind } from '#shared/record/lot.ts';
import { isPast } from './lot-left.ts';

/** Beside what is poured: that its can is too old; '' while it is good or nobody said which it is. */
export function oldWords({ lots }: BuildState, of: LotKind): string {
  const last = lots.filter((l) => l.entry.of === of).at(-1)?.entry;
  const lot = findDoc('lot', last?.lot)?.body;
  return lot && isPast(lot, now.value) ? ` · △ ${lot.name} is too old` : '';
}
