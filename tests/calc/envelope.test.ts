import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelope, holdTime, peak } from '#calc';
import { celsius, history, type Reading } from './histories.ts';

/** Values of a channel at a time: two where it steps, none outside its readings. */
function valuesAt(readings: readonly Reading[], time: number): number[] {
  const exact = readings.filter((r) => r.time === time).map((r) => r.temperature);
  if (exact.length > 0) return exact;
  const after = readings.findIndex((r) => r.time > time);
  const [from, to] = [readings[after - 1], readings[after]];
  if (!from || !to) return [];
  return [
    from.temperature + ((time - from.time) / (to.time - from.time)) * (to.temperature - from.temperature),
  ];
}

const channels = fc.array(history, { minLength: 1, maxLength: 4 });
const close = (got: number, wanted: number): void => expect(Math.abs(got - wanted)).toBeLessThan(1e-6);

describe('the coldest and the hottest of several channels', () => {
  it('are at any time the lowest and the highest of those that are read around it', () => {
    fc.assert(
      fc.property(channels, fc.double({ min: 0, max: 1, noNaN: true }), (all, share) => {
        const ends = all.map((c) => c.at(-1)?.time ?? 0);
        const time = share * Math.max(...ends);
        const there = all.flatMap((c) => valuesAt(c, time));
        // Only between readings: a step has two values at its own time.
        if (there.length === 0 || all.some((c) => c.some((r) => r.time === time))) return;
        const [coldest] = valuesAt(envelope({ channels: all, pick: 'coldest' }), time);
        const [hottest] = valuesAt(envelope({ channels: all, pick: 'hottest' }), time);
        close(coldest ?? Number.NaN, Math.min(...there));
        close(hottest ?? Number.NaN, Math.max(...there));
      }),
    );
  });

  it('run in order of time over everything that was read', () => {
    fc.assert(
      fc.property(channels, fc.constantFrom('coldest' as const, 'hottest' as const), (all, pick) => {
        const points = envelope({ channels: all, pick });
        points.forEach((point, index) => {
          expect(point.time).toBeGreaterThanOrEqual(points[index - 1]?.time ?? point.time);
        });
        const times = all.flatMap((c) => c.map((r) => r.time));
        expect(points[0]?.time).toBe(Math.min(...times));
        expect(points.at(-1)?.time).toBe(Math.max(...times));
      }),
    );
  });

  it('hold the highest and the lowest that was read on any channel', () => {
    fc.assert(
      fc.property(channels, (all) => {
        const temperatures = all.flatMap((c) => c.map((r) => r.temperature));
        const top = peak({ readings: envelope({ channels: all, pick: 'hottest' }) });
        expect(top.temperature).toBe(Math.max(...temperatures));
        const low = envelope({ channels: all, pick: 'coldest' }).map((r) => r.temperature);
        expect(Math.min(...low)).toBe(Math.min(...temperatures));
      }),
    );
  });

  it('of one channel are that channel', () => {
    const one = celsius([0, 20], [30, 66], [90, 66]);
    for (const pick of ['coldest', 'hottest'] as const)
      expect(envelope({ channels: [one], pick })).toEqual(one);
  });

  it('change over where two lines cross, so that time in a band is exact', () => {
    const up = celsius([0, 20], [60, 80]);
    const down = celsius([0, 80], [60, 20]);
    const coldest = envelope({ channels: [up, down], pick: 'coldest' });
    expect(coldest).toEqual(celsius([0, 20], [30, 50], [60, 20]));
    expect(holdTime({ readings: coldest, low: 313.15 })).toBeCloseTo(1200, 6);
    expect(envelope({ channels: [up, down], pick: 'hottest' })).toEqual(celsius([0, 80], [30, 50], [60, 80]));
  });

  it('change over twice between two readings when a third line goes under', () => {
    const coldest = envelope({
      channels: [celsius([0, 20], [60, 80]), celsius([0, 40], [60, 40]), celsius([0, 90], [60, 30])],
      pick: 'coldest',
    });
    expect(coldest.map((r) => Math.round(r.time / 60))).toEqual([0, 20, 50, 60]);
  });

  it('step where a channel comes in or goes out', () => {
    const all = [celsius([0, 60], [60, 60]), celsius([20, 40], [40, 40])];
    expect(envelope({ channels: all, pick: 'coldest' })).toEqual(
      celsius([0, 60], [20, 60], [20, 40], [40, 40], [40, 60], [60, 60]),
    );
    expect(envelope({ channels: all, pick: 'hottest' })).toEqual(
      celsius([0, 60], [20, 60], [40, 60], [60, 60]),
    );
  });

  it('keep a channel that was read once, and a step on a channel', () => {
    expect(envelope({ channels: [celsius([0, 60], [60, 60]), celsius([30, 90])], pick: 'hottest' })).toEqual(
      celsius([0, 60], [30, 60], [30, 90], [30, 60], [60, 60]),
    );
    const step = celsius([0, 20], [10, 20], [10, 80], [20, 80]);
    expect(envelope({ channels: [step], pick: 'hottest' })).toEqual(step);
  });

  it('go straight across where no channel is read', () => {
    const all = [celsius([0, 20], [10, 30]), celsius([20, 50], [30, 50])];
    expect(envelope({ channels: all, pick: 'coldest' })).toEqual(
      celsius([0, 20], [10, 30], [20, 50], [30, 50]),
    );
  });

  it('are nothing when nothing was read', () => {
    expect(envelope({ channels: [], pick: 'coldest' })).toEqual([]);
    expect(envelope({ channels: [[], []], pick: 'hottest' })).toEqual([]);
  });

  it('are found in 100,000 readings on each of three channels', () => {
    const long = (offset: number): Reading[] =>
      Array.from({ length: 100_000 }, (_, k) => ({
        time: k * 2,
        temperature: 330 + Math.sin(k / 50 + offset),
      }));
    const all = [long(0), long(2), long(4)];
    const points = envelope({ channels: all, pick: 'coldest' });
    const lowest = points.reduce((least, r) => Math.min(least, r.temperature), 400);
    expect(points.length).toBeGreaterThan(100_000);
    expect(lowest).toBeCloseTo(329, 6);
  });

  it('want to know which of the two', () => {
    const wrong = { channels: [], pick: 'middle' } as unknown as Parameters<typeof envelope>[0];
    expect(() => envelope(wrong)).toThrow('pick must be coldest or hottest');
  });
});
