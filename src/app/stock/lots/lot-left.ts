import type { Lot } from '#shared/record/lot.ts';
import type { BuildSummary } from '#shared/record/summary.ts';

export type LotDraw = BuildSummary['draws'][number];

/** What every build drew, by the lot. */
export function drawsByLot(builds: readonly Pick<BuildSummary, 'draws'>[]): Map<string, LotDraw[]> {
  const byLot = new Map<string, LotDraw[]>();
  for (const draw of builds.flatMap((b) => b.draws)) {
    byLot.set(draw.lot, [...(byLot.get(draw.lot) ?? []), draw]);
  }
  return byLot;
}

/** Added up in an order of their own, so that no order of builds changes the last digit. */
function sumOf(draws: readonly LotDraw[]): number {
  return draws
    .map((d) => d.amount)
    .sort((a, b) => a - b)
    .reduce((sum, amount) => sum + amount, 0);
}

/** Since its last count, or since it came. */
const sinceCounted = ({ counted }: Lot, draws: readonly LotDraw[]) =>
  counted ? draws.filter((d) => d.at > counted.at) : draws;

/** m2, kg or m; below 0 where more was drawn than it is said to have held. */
export function leftIn(lot: Lot, draws: readonly LotDraw[]): number {
  return (lot.counted?.amount ?? lot.received) - sumOf(sinceCounted(lot, draws));
}

const day = 86_400_000;
/** The pace is taken over this long; fewer days tell of one busy weekend. */
const paceOver = 90 * day;
const paceAtLeast = 14 * day;

/** When it would be empty at the pace of the last months, ms; undefined while nothing was drawn lately. */
export function runsOutAt(lot: Lot, draws: readonly LotDraw[], now: number): number | undefined {
  const lately = draws.filter((d) => d.at > now - paceOver && d.at <= now);
  const drawn = sumOf(lately);
  if (drawn <= 0) return undefined;
  const first = Math.min(...lately.map((d) => d.at));
  const pace = drawn / Math.max(now - first, paceAtLeast);
  return now + Math.max(0, leftIn(lot, draws)) / pace;
}

export interface BestBy {
  /** ms */
  at: number;
  /** Whether the date on the label comes first, or the time it keeps once opened. */
  by: 'label' | 'opened';
}

/** Until when it is good; undefined where no date is known. */
export function bestBy({ expiresAt, openedAt, keepsOpen }: Lot): BestBy | undefined {
  const opened = openedAt !== undefined && keepsOpen !== undefined ? openedAt + keepsOpen * 1000 : undefined;
  if (expiresAt === undefined) return opened === undefined ? undefined : { at: opened, by: 'opened' };
  return opened !== undefined && opened < expiresAt
    ? { at: opened, by: 'opened' }
    : { at: expiresAt, by: 'label' };
}

export const isPast = (lot: Lot, now: number): boolean => (bestBy(lot)?.at ?? Number.POSITIVE_INFINITY) < now;

/** When it is of no more use, whichever comes first; Infinity where nothing tells. */
export function endsAt(lot: Lot, draws: readonly LotDraw[], now: number): number {
  if (leftIn(lot, draws) <= 0) return Number.NEGATIVE_INFINITY;
  const runsOut = runsOutAt(lot, draws, now) ?? Number.POSITIVE_INFINITY;
  return Math.min(runsOut, bestBy(lot)?.at ?? Number.POSITIVE_INFINITY);
}
