import { type Signal, signal } from '@preact/signals';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { Support } from '#shared/record/load-plan.ts';
import { onTube, placeInput } from './place-input.ts';

export type Holds = Support['holds'];

export interface SupportDraft {
  holds: Signal<Holds>;
  at: QuantityInput;
  length: QuantityInput;
  holdsTwist: Signal<boolean>;
  holdsAxial: Signal<boolean>;
}

/** What is likeliest next: held fast at end 0, then resting at the end that nothing holds yet. */
function likely(others: readonly Support[], length: number): Pick<Support, 'holds' | 'at'> {
  if (others.length === 0) return { holds: 'builtIn', at: 0 };
  const near = (place: number) => others.some(({ at }) => Math.abs(at - place) < length / 4);
  return { holds: 'rests', at: near(length) ? 0 : length };
}

export function supportDraft(
  support: Support | undefined,
  length: number,
  others: readonly Support[] = [],
): SupportDraft {
  const first = support ?? likely(others, length);
  const free = support?.holds === 'builtIn' ? undefined : support;
  return {
    holds: signal(first.holds),
    at: placeInput(first.at, length),
    length: quantityInput(support?.holds === 'sleeve' ? support.length : undefined, {
      quantity: 'length',
      positive: true,
      max: 15,
    }),
    holdsTwist: signal(free?.holdsTwist ?? false),
    holdsAxial: signal(free?.holdsAxial ?? false),
  };
}

/** What is drawn while it is typed, and saved once it is good. */
export function supportOfDraft(draft: SupportDraft, id: string, tube: number): Support | undefined {
  const at = draft.at.si.value;
  const long = draft.length.si.value;
  if (at === undefined) return undefined;
  const base = { id, at: onTube(at, tube) };
  const holds = {
    ...(draft.holdsTwist.value && { holdsTwist: true }),
    ...(draft.holdsAxial.value && { holdsAxial: true }),
  };
  switch (draft.holds.value) {
    case 'builtIn':
      return { ...base, holds: 'builtIn' };
    case 'rests':
      return { ...base, holds: 'rests', ...holds };
    case 'sleeve':
      return long === undefined ? undefined : { ...base, holds: 'sleeve', length: long, ...holds };
  }
}

/** Shows what is wrong; true when it can be saved. */
export const supportIsGood = (draft: SupportDraft): boolean =>
  allGood(draft.holds.value === 'sleeve' ? [draft.at, draft.length] : [draft.at]);
