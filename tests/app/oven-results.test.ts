import { describe, expect, it } from 'vitest';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { thinned } from '#app/curing/oven/thinned.ts';
import { cureTimeUsed } from '#calc';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius, load, type Read, slow } from './oven-loads.ts';

const min = 60;
const cured: Read = {
  boom: [
    [0, 23],
    [22, 66],
    [52, 66],
    [82, 66],
    [112, 66],
  ],
};
const results = (read: Read, stages = {}, resins: readonly ResinSystem[] = [slow]) =>
  ovenResults(
    load(read, stages),
    resins.map((resin) => ({ resin })),
  );

describe('what an oven load reads', () => {
  it('counts hold while the coldest part is at or above the foot of the band', () => {
    // Foot at 63: the boom passes it at 22 min times 40/43, the sprit stays below until it reads 63 at 52 min.
    const both = results({
      ...cured,
      sprit: [
        [0, 23],
        [22, 50],
        [52, 63],
        [82, 66],
        [112, 66],
      ],
    });
    expect(both.held).toBeCloseTo(60 * min, 6);
    expect(results(cured).held).toBeCloseTo((112 - (22 * 40) / 43) * min, 6);
    expect(both.series.by).toBe('part');
  });

  it('tells time above the head of the band apart, from the hottest', () => {
    const hot = results({
      ...cured,
      sprit: [
        [0, 23],
        [22, 78],
        [52, 78],
        [82, 66],
        [112, 66],
      ],
    });
    // Head at 72: up at 22 min times 49/55, down halfway between 78 and 66.
    expect(hot.aboveHead).toBeCloseTo((67 - (22 * 49) / 55) * min, 6);
    expect(results(cured).aboveHead).toBe(0);
  });

  it('goes by the air, and says so, only while no part was read', () => {
    const air: Read = { air: cured.boom ?? [] };
    expect(results(air).series.by).toBe('air');
    expect(results(air).held).toBeCloseTo(results(cured).held, 6);
    expect(results({ ...air, boom: [[1, 23]] }).series.by).toBe('part');
  });

  it('counts neither hold nor cure time over a stretch that nobody read for twice the due interval', () => {
    const read: Read = {
      boom: [
        [0, 23],
        [22, 66],
        [52, 66],
        [113, 66],
        [143, 66],
      ],
    };
    const { unread, held, cure } = results(read);
    expect(unread).toHaveLength(1);
    expect(unread[0]).toMatchObject({ from: 52 * min, to: 113 * min, channel: { id: 'boom' } });
    expect(held).toBeCloseTo((60 - (22 * 40) / 43 + 22) * min, 6);
    const known = results({
      boom: [
        [0, 23],
        [22, 66],
        [82, 66],
      ],
    }).cure;
    expect(cure.known && known.known && cure.share).toBeCloseTo(known.known ? known.share : Number.NaN, 9);
  });

  it('takes just twice the due interval as read', () => {
    expect(
      results({
        boom: [
          [0, 23],
          [22, 66],
          [82, 66],
        ],
      }).unread,
    ).toEqual([]);
  });

  it('lets no other sensor speak for one that is not read any more', () => {
    const { unread, held } = results({
      ...cured,
      sprit: [
        [0, 23],
        [22, 66],
      ],
    });
    expect(unread.map((g) => [g.channel.id, g.from, g.to])).toEqual([['sprit', 22 * min, 112 * min]]);
    expect(held).toBeCloseTo((22 - (22 * 40) / 43) * min, 6);
  });

  it('calls it unread when it was off long after the last reading, and nothing after that', () => {
    expect(results(cured, { off: 180 }).unread.map((g) => [g.from / min, g.to / min])).toEqual([[112, 180]]);
    expect(results(cured, { off: 150, out: 400 }).unread).toEqual([]);
  });

  it('uses the cure time of the data sheet as calc does', () => {
    const { cure, series } = results(cured);
    const share = cureTimeUsed({ readings: series.coldest, curePoints: slow.curePoints });
    expect(cure).toMatchObject({ known: true, assumed: false, resin: slow.name });
    expect(cure.known && cure.share).toBeCloseTo(share, 12);
    // An hour and a half of three at 66 °C, and a little from the way up.
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(0.55);
  });

  it('goes by the slowest resin in the oven', () => {
    const quick = { ...slow, name: 'Quick', curePoints: [{ temperature: celsius(66), time: 3600 }] };
    expect(results(cured, {}, [quick, slow]).cure).toMatchObject({ resin: slow.name });
    expect(results(cured, {}, [quick]).cure).toMatchObject({ resin: 'Quick', assumed: true });
  });

  it('says why there is no cure time to count', () => {
    const disagree = [
      { temperature: celsius(25), time: 3600 },
      { temperature: celsius(60), time: 7200 },
    ];
    const same = disagree.map((p) => ({ ...p, temperature: celsius(60) }));
    expect(results(cured, {}, []).cure).toEqual({ known: false, why: 'noTube' });
    expect(results(cured, {}, [{ ...slow, curePoints: [] }]).cure).toEqual({
      known: false,
      why: 'noCurePoints',
    });
    for (const curePoints of [disagree, same]) {
      expect(results(cured, {}, [{ ...slow, curePoints }]).cure).toEqual({
        known: false,
        why: 'curePointsDisagree',
      });
    }
  });

  it('finds what went over a limit: by how much, for how long, from when to when', () => {
    const { over } = results({
      boom: [
        [0, 23],
        [20, 78],
        [30, 90],
        [40, 78],
        [50, 66],
      ],
      air: [
        [0, 23],
        [30, 120],
      ],
    });
    expect(over).toHaveLength(1);
    expect(over[0]).toMatchObject({ first: 30 * min, last: 30 * min, isNow: false, byAir: false });
    expect(over[0]?.lasts).toBeCloseTo((16 / 12) * 10 * min, 6);
    expect(over[0]?.highest.temperature).toBe(celsius(90));
  });

  it('judges a part’s limit by the air where no part was read, and never the tape by a part', () => {
    const { over } = results({
      air: [
        [0, 23],
        [20, 85],
      ],
    });
    expect(over.map((o) => [o.limit.name, o.byAir, o.isNow])).toEqual([['release film', true, true]]);
    expect(results({ boom: [[0, 155]], air: [[0, 60]] }).over.map((o) => o.limit.name)).toEqual([
      'release film',
    ]);
  });

  it('lies on a limit without being over it', () => {
    expect(
      results({
        boom: [
          [0, 82],
          [20, 82],
        ],
      }).over,
    ).toEqual([]);
  });

  it('compares readings of one sensor only for the steepest', () => {
    const { steepest } = results({
      boom: [
        [0, 23],
        [20, 43],
      ],
      sprit: [
        [1, 60],
        [21, 70],
      ],
    });
    expect(steepest).toBeCloseTo(1 / min, 9);
  });

  it('knows nothing before the first reading', () => {
    const none = results({});
    expect(none.held).toBe(0);
    expect(none.steepest).toBe(0);
    expect(none.over).toEqual([]);
    expect(none.highestPart).toBeUndefined();
    expect(none.cure).toMatchObject({ known: true, share: 0 });
  });

  it('takes 100,000 readings of a logger', () => {
    const pairs = (offset: number) =>
      Array.from({ length: 50_000 }, (_, k) => [k / 60, 60 + Math.sin(k / 500 + offset) * 10] as const);
    const long = results({ boom: pairs(0), sprit: pairs(2) });
    expect(long.highestPart?.temperature).toBeCloseTo(celsius(70), 3);
    expect(long.cure.known && long.cure.share).toBeGreaterThan(1);
    expect(long.unread).toEqual([]);
  }, 30_000);
});

describe('a picture of many readings', () => {
  const many = Array.from({ length: 100_000 }, (_, k) => ({
    time: k,
    temperature: k === 54_321 ? 400 : 330,
  }));

  it('keeps the one peak and both ends among a few per px', () => {
    const few = thinned(many, 300);
    expect(few.length).toBeLessThanOrEqual(4 * 301);
    expect(few).toContainEqual({ time: 54_321, temperature: 400 });
    expect(few[0]).toBe(many[0]);
    expect(few.at(-1)).toBe(many.at(-1));
    expect(few.every((r, i) => i === 0 || r.time > (few[i - 1]?.time ?? 0))).toBe(true);
  });

  it('leaves few readings as they are', () => {
    expect(thinned(many.slice(0, 50), 300)).toHaveLength(50);
    expect(thinned([], 300)).toEqual([]);
  });
});
