import type { Lot, LotKind } from '#shared/record/lot.ts';
import { isPast } from './lot-left.ts';

/** A lot on the shelf and what is left of it. */
export interface LotOnShelf {
  doc: string;
  lot: Lot;
  left: number;
}

/** What a build takes of one thing on the shelf. */
export interface Need {
  of: LotKind;
  /** The cloth, resin system or tape. */
  item: string;
  /** m2, kg or m; undefined while it is not known */
  amount?: number;
}

export const lotsFor = (need: Pick<Need, 'of' | 'item'>, lots: readonly LotOnShelf[]): LotOnShelf[] =>
  lots.filter(({ lot }) => lot.of === need.of && lot.item === need.item);

const opened = ({ lot }: LotOnShelf) => lot.openedAt ?? Number.POSITIVE_INFINITY;

/** The one opened first, then the one that came first; ids settle the rest, the same on every phone. */
const oldestFirst = (a: LotOnShelf, b: LotOnShelf) =>
  (opened(a) === opened(b) ? 0 : opened(a) - opened(b)) ||
  a.lot.receivedAt - b.lot.receivedAt ||
  (a.doc < b.doc ? -1 : 1);

/**
 * The lot to take: the oldest opened that is enough and still good; then the good one with most in it; then, since a
 * builder may have nothing else, one past its date.
 */
export function chooseLot(need: Need, lots: readonly LotOnShelf[], now: number): LotOnShelf | undefined {
  const own = lotsFor(need, lots).sort(oldestFirst);
  const good = own.filter(({ lot }) => !isPast(lot, now));
  const enough = good.find(({ left }) => left > 0 && left >= (need.amount ?? 0));
  const most = (list: readonly LotOnShelf[]) =>
    list.reduce<LotOnShelf | undefined>(
      (best, one) => (best && best.left >= one.left ? best : one),
      undefined,
    );
  return enough ?? most(good) ?? most(own);
}

/** How much it falls short, in what it is counted in; undefined while it is enough, or nobody knows. */
export function shortBy({ amount }: Need, { left }: LotOnShelf): number | undefined {
  return amount !== undefined && left < amount ? amount - Math.max(0, left) : undefined;
}
