import { type Signal, signal } from '@preact/signals';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { Lot, LotKind } from '#shared/record/lot.ts';
import { endOfDayText, fromDayText, toDayText } from './day-text.ts';
import { lotWords, monthsOf, secondsOf } from './lot-words.ts';

export interface LotDraft {
  of: LotKind;
  item: string;
  name: Signal<string>;
  received: QuantityInput;
  receivedOn: Signal<string>;
  openedOn: Signal<string>;
  expiresOn: Signal<string>;
  /** Months */
  keepsOpen: QuantityInput;
  price: QuantityInput;
  note: Signal<string>;
  pressed: Signal<boolean>;
}

const most: Record<LotKind, number> = { cloth: 5000, resin: 1000, hardener: 1000, tape: 10_000 };

export function lotDraft(of: LotKind, item: string, now: number, lot?: Lot): LotDraft {
  const { quantity } = lotWords[of];
  const months = lot?.keepsOpen === undefined ? undefined : monthsOf(lot.keepsOpen);
  return {
    of,
    item,
    name: signal(lot?.name ?? ''),
    received: quantityInput(lot?.received, { quantity, positive: true, max: most[of] }),
    receivedOn: signal(toDayText(lot?.receivedAt ?? now)),
    openedOn: signal(toDayText(lot?.openedAt)),
    expiresOn: signal(toDayText(lot?.expiresAt)),
    keepsOpen: quantityInput(months, { quantity: 'count', min: 1, max: 240, optional: true }),
    price: quantityInput(lot?.price, { quantity: 'number', positive: true, max: 1e6, optional: true }),
    note: signal(lot?.note ?? ''),
    pressed: signal(false),
  };
}

export function nameProblem({ name, of }: LotDraft): string | undefined {
  const text = name.value.trim();
  if (text.length > 200) return 'That is too long for a label: shorten it.';
  return text ? undefined : `Write what its label says, like ${lotWords[of].example}.`;
}

export function openedProblem(draft: LotDraft): string | undefined {
  const [received, opened] = [fromDayText(draft.receivedOn.value), fromDayText(draft.openedOn.value)];
  return received !== undefined && opened !== undefined && opened < received
    ? 'It cannot be opened before it came: check the two days.'
    : undefined;
}

export const receivedProblem = ({ receivedOn }: LotDraft): string | undefined =>
  fromDayText(receivedOn.value) === undefined ? 'Give the day it came.' : undefined;

/** As typed; undefined while something is wrong, which the fields say then. A moment kept is not rounded to its day. */
export function lotOf(draft: LotDraft, before?: Lot): Lot | undefined {
  const { of, item, name, received, keepsOpen, price, note } = draft;
  draft.pressed.value = true;
  const good = allGood([received, keepsOpen, price]);
  const receivedAt = fromDayText(draft.receivedOn.value);
  const amount = received.si.value;
  if (!good || nameProblem(draft) || openedProblem(draft)) return undefined;
  if (receivedAt === undefined || amount === undefined) return undefined;
  const same = (at: number | undefined, text: string) => at !== undefined && toDayText(at) === text;
  const opened = same(before?.openedAt, draft.openedOn.value)
    ? before?.openedAt
    : fromDayText(draft.openedOn.value);
  const expires = endOfDayText(draft.expiresOn.value);
  const { openedAt: _, expiresAt: __, keepsOpen: ___, price: ____, note: _____, ...kept } = before ?? {};
  return {
    ...kept,
    name: name.value.trim(),
    of,
    item,
    received: amount,
    receivedAt: same(before?.receivedAt, draft.receivedOn.value) ? (before?.receivedAt ?? 0) : receivedAt,
    ...(opened !== undefined && { openedAt: opened }),
    ...(expires !== undefined && { expiresAt: expires }),
    ...(keepsOpen.si.value !== undefined && { keepsOpen: secondsOf(keepsOpen.si.value) }),
    ...(price.si.value !== undefined && { price: price.si.value }),
    ...(note.value.trim() && { note: note.value.trim() }),
  };
}
