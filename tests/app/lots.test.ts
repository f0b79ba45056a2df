import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../property-seed.ts';
import { summarize } from '#app/state/summarize.ts';
import { chooseLot, type LotOnShelf, type Need, shortBy } from '#app/stock/lots/choose-lot.ts';
import {
  bestBy,
  drawsByLot,
  endsAt,
  isPast,
  type LotDraw,
  leftIn,
  runsOutAt,
} from '#app/stock/lots/lot-left.ts';
import type { Lot } from '#shared/record/lot.ts';
import { heads } from '#shared/record/revision.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { buildHeader, entries } from '../record/arbitraries.ts';

const day = 86_400_000;
const now = Date.UTC(2026, 4, 16);
const roll: Lot = { name: 'Roll 2', of: 'cloth', item: 'carbon', received: 6, receivedAt: now - 200 * day };
const draw = (amount: number, daysAgo: number, lot = 'roll-2'): LotDraw => ({
  of: 'cloth',
  lot,
  amount,
  at: now - daysAgo * day,
});

describe('what is left of a lot', () => {
  it('is what came less what builds drew', () => {
    expect(leftIn(roll, [draw(1.25, 30), draw(0.75, 10)])).toBe(4);
  });

  it('is what a count found less what was drawn after it: what came before is in the count', () => {
    const counted = { ...roll, counted: { at: now - 20 * day, amount: 3 } };
    expect(leftIn(counted, [draw(1.25, 30), draw(0.75, 10)])).toBe(2.25);
  });

  it('is below nothing where more was drawn than it held, so that it can be said', () => {
    expect(leftIn(roll, [draw(7, 3)])).toBe(-1);
  });

  const amounts = fc.array(
    fc.record({ amount: fc.double({ min: 0, max: 10, noNaN: true }), days: fc.nat(300) }),
  );
  it('never depends on the order of the builds', () => {
    fc.assert(
      fc.property(
        amounts.chain((list) =>
          fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
        ),
        fc.option(fc.nat(300)),
        ([one, other], countedAgo) => {
          const counted = countedAgo === null ? {} : { counted: { at: now - countedAgo * day, amount: 2 } };
          const left = (list: typeof one) => {
            const builds = list.map(({ amount, days }) => ({ draws: [draw(amount, days)] }));
            return leftIn({ ...roll, ...counted }, drawsByLot(builds).get('roll-2') ?? []);
          };
          expect(left(one)).toBe(left(other));
        },
      ),
    );
  });
});

describe('two phones that drew from one lot', () => {
  const drawnBy = (all: Parameters<typeof summarize>[1]) =>
    (summarize(buildHeader, all) as BuildSummary).draws.map((d) => [d.lot, d.of, d.amount, d.at]);

  it('agree after both merges, whichever came first, and merging again changes nothing', () => {
    fc.assert(
      fc.property(
        entries().chain((all) => fc.tuple(fc.constant(all), fc.subarray(all), fc.subarray(all))),
        ([, mine, theirs]) => {
          const once = drawnBy([...mine, ...theirs]);
          expect(drawnBy([...theirs, ...mine])).toEqual(once);
          expect(drawnBy([...mine, ...theirs, ...theirs, ...mine])).toEqual(once);
        },
      ),
    );
  });

  it('keep both their versions of a lot or a structure, the same ones on each', () => {
    const revision = (id: string, parents: string[]) => ({ id, parents });
    const [first, mine, theirs] = [revision('a', []), revision('b', ['a']), revision('c', ['a'])];
    const merged = heads([first, mine, theirs]);
    expect(heads([first, theirs, mine])).toEqual(merged);
    expect(heads([...merged, first, mine, theirs])).toEqual(merged);
    expect(merged.map((r) => r.id)).toEqual(['b', 'c']);
  });
});

describe('until when a lot is good', () => {
  it('is the date on the label, or the time it keeps once opened, whichever comes first', () => {
    const labeled = { ...roll, expiresAt: now + 100 * day };
    expect(bestBy(labeled)).toEqual({ at: now + 100 * day, by: 'label' });
    const opened = { ...labeled, openedAt: now - 10 * day, keepsOpen: (30 * day) / 1000 };
    expect(bestBy(opened)).toEqual({ at: now + 20 * day, by: 'opened' });
    expect(bestBy({ ...opened, keepsOpen: (365 * day) / 1000 })?.by).toBe('label');
    expect(bestBy({ ...roll, keepsOpen: 5 })).toBeUndefined();
  });

  it('is over the moment after', () => {
    const lot = { ...roll, expiresAt: now };
    expect([isPast(lot, now), isPast(lot, now + 1)]).toEqual([false, true]);
  });
});

describe('when a lot is of no more use', () => {
  it('is when it runs out at the pace of the last months', () => {
    // 2 m2 in 40 days, 4 m2 left: 80 days.
    const days = ((runsOutAt(roll, [draw(1, 40), draw(1, 5)], now) ?? 0) - now) / day;
    expect(days).toBeCloseTo(80, 6);
  });

  it('is not told by what was drawn long ago', () => {
    expect(runsOutAt(roll, [draw(1, 200)], now)).toBeUndefined();
  });

  it('is before everything else when it is empty, and last when nothing tells', () => {
    expect(endsAt(roll, [draw(6, 1)], now)).toBe(Number.NEGATIVE_INFINITY);
    expect(endsAt(roll, [], now)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('the lot a build takes', () => {
  const need: Need = { of: 'cloth', item: 'carbon', amount: 1.1 };
  const shelf = (doc: string, left: number, more: Partial<Lot> = {}): LotOnShelf => ({
    doc,
    left,
    lot: { ...roll, ...more },
  });

  it('is the oldest opened that is enough and still good', () => {
    const lots = [
      shelf('unopened', 6),
      shelf('newer', 5, { openedAt: now - 5 * day }),
      shelf('older', 2, { openedAt: now - 50 * day }),
      shelf('short', 1, { openedAt: now - 90 * day }),
      shelf('past', 4, { openedAt: now - 99 * day, expiresAt: now - day }),
      shelf('other', 9, { item: 'glass', openedAt: now - 100 * day }),
    ];
    expect(chooseLot(need, lots, now)?.doc).toBe('older');
  });

  it('is one that is not opened rather than an opened one that is short', () => {
    const lots = [shelf('short', 0.8, { openedAt: now - 9 * day }), shelf('full', 6)];
    expect(chooseLot(need, lots, now)?.doc).toBe('full');
  });

  it('is the fullest when none is enough, and then it says by how much it is short', () => {
    const lots = [shelf('a', 0.3), shelf('b', 0.8)];
    const chosen = chooseLot(need, lots, now);
    expect(chosen?.doc).toBe('b');
    expect(chosen && shortBy(need, chosen)).toBeCloseTo(0.3, 12);
  });

  it('is one past its date only when there is nothing else', () => {
    const past = shelf('past', 5, { expiresAt: now - day });
    expect(chooseLot(need, [past], now)?.doc).toBe('past');
    expect(chooseLot(need, [past, shelf('good', 0.2)], now)?.doc).toBe('good');
  });

  it('is none where the shelf has none of it', () => {
    expect(chooseLot({ of: 'cloth', item: 'aramid' }, [shelf('a', 5)], now)).toBeUndefined();
  });

  it('does not depend on the order of the shelf', () => {
    const some = fc.array(fc.tuple(fc.nat(8), fc.option(fc.nat(4)), fc.nat(3)), { maxLength: 7 });
    fc.assert(
      fc.property(
        some.chain((list) => {
          const lots = list.map(([left, open, came], i) =>
            shelf(`lot-${i}`, left, {
              receivedAt: now - came * day,
              ...(open !== null && { openedAt: now - open * day }),
            }),
          );
          return fc.tuple(fc.constant(lots), fc.shuffledSubarray(lots, { minLength: lots.length }));
        }),
        ([one, other]) => {
          expect(chooseLot(need, other, now)?.doc).toBe(chooseLot(need, one, now)?.doc);
        },
      ),
    );
  });
});
