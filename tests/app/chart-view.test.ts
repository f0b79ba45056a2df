import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inView } from '#app/curing/oven/in-view.ts';
import type { Logged } from '#app/curing/oven/merged.ts';
import { panned, within, zoomed } from '#app/curing/oven/window.ts';

const seconds = (count: number, heat: (i: number) => number): Logged => ({
  channel: 'air',
  at: Float64Array.from({ length: count }, (_, i) => i * 1000),
  temperature: Float64Array.from({ length: count }, (_, i) => heat(i)),
});

const all = { from: 0, to: 100_000_000 };
const everything = { from: 0, to: 99_999_000, px: 300, longest: 60_000 };

describe('what a chart draws of 100,000 readings', () => {
  const flicker = seconds(
    100_000,
    (i) => 300 + (i % 7) / 10 + (i === 54_321 ? 80 : 0) - (i === 12_345 ? 40 : 0),
  );

  it('is four a px at most, with its highest and its lowest', () => {
    const { at, temperature } = inView(flicker, everything);
    expect(at.length).toBeLessThanOrEqual(4 * 301);
    expect(temperature).toContain(flicker.temperature[54_321]);
    expect(temperature).toContain(flicker.temperature[12_345]);
  });

  it('is every reading once it is close enough', () => {
    const { at } = inView(flicker, { from: 54_000_000, to: 54_100_000, px: 300, longest: 60_000 });
    expect(at).toEqual(Array.from({ length: 103 }, (_, i) => 53_999_000 + i * 1000).slice(0, at.length));
    expect(at.length).toBeGreaterThanOrEqual(101);
  });

  it('is in order of time, and each of it was read, whatever part is looked at', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_000_000 }),
        fc.integer({ min: 20_000, max: 50_000_000 }),
        fc.integer({ min: 20, max: 900 }),
        (from, lasts, px) => {
          const { at, temperature } = inView(flicker, { from, to: from + lasts, px, longest: 60_000 });
          expect(at.every((time, i) => i === 0 || time > (at[i - 1] ?? 0))).toBe(true);
          expect(at.every((time, i) => flicker.temperature[time / 1000] === temperature[i])).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });
});

it('a gap is not drawn across, and a stretch of hand readings is', () => {
  const series: Logged = {
    channel: 'air',
    at: Float64Array.of(0, 1000, 900_000, 901_000),
    temperature: Float64Array.of(300, 301, 340, 341),
  };
  const seen = (longest: number) => inView(series, { from: 0, to: 1_000_000, px: 100, longest }).temperature;
  expect(seen(60_000)).toEqual([300, 301, null, 340, 341]);
  expect(seen(3_600_000)).toEqual([300, 301, 340, 341]);
});

it('nothing read draws nothing', () => {
  expect(
    inView(
      seconds(0, () => 300),
      everything,
    ),
  ).toEqual({ at: [], temperature: [] });
});

describe('the stretch of time that is looked at', () => {
  const view = { from: 40_000_000, to: 60_000_000 };

  it('is zoomed about a place that stays where it is', () => {
    const closer = zoomed(view, 0.5, 0.25, all);
    expect(closer).toEqual({ from: 42_500_000, to: 52_500_000 });
    expect(zoomed(closer, 2, 0.25, all)).toEqual(view);
  });

  it('never leaves what there is, and never becomes nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { maxLength: 20 }), (moves) => {
        let at = view;
        for (const move of moves) at = move > 0 ? zoomed(at, move, 0.5, all) : panned(at, move + 1.5, all);
        expect(at.from).toBeGreaterThanOrEqual(all.from);
        expect(at.to).toBeLessThanOrEqual(all.to + 1e-3);
        expect(at.to - at.from).toBeGreaterThan(19_000);
      }),
    );
  });

  it('goes back to all of it from too wide', () => {
    expect(within({ from: -5e9, to: 5e9 }, all)).toEqual(all);
  });
});
