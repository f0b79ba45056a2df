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

export function supportDraft(support: Support | undefined, length: number): SupportDraft {
  const free = support?.holds === 'builtIn' ? undefined : support;
  return {
    holds: signal(support?.holds ?? 'builtIn'),
    at: placeInput(support?.at ?? 0, length),
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
