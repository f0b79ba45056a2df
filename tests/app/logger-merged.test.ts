import { describe, expect, it } from 'vitest';
import { type Logged, merged } from '#app/curing/oven/merged.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { ovenSeries } from '#app/curing/oven/oven-series.ts';
import { celsius, lit, load, slow } from './oven-loads.ts';

/** Every 10 s from one minute to another, at the temperature of each moment. */
function logged(channel: string, from: number, to: number, degrees: (minute: number) => number): Logged {
  const count = Math.round(((to - from) * 60) / 10) + 1;
  const minute = (i: number) => from + i / 6;
  return {
    channel,
    at: Float64Array.from({ length: count }, (_, i) => lit + minute(i) * 60_000),
    temperature: Float64Array.from({ length: count }, (_, i) => celsius(degrees(minute(i)))),
  };
}

const at = (time: number, temperature = 300) => ({ time, temperature });

describe('readings of several sources', () => {
  it('count once where a logger and a hand speak of the same time', () => {
    const file = [0, 10, 20, 30].map((t) => at(t));
    expect(merged([file, [at(-60), at(15, 350), at(90)]]).map((r) => r.time)).toEqual([
      -60, 0, 10, 20, 30, 90,
    ]);
  });

  it('fill what a logger left out', () => {
    const file = [0, 10, 20, 1000, 1010].map((t) => at(t));
    expect(merged([file, [at(5), at(500), at(1005)]]).map((r) => r.time)).toEqual([
      0, 10, 20, 500, 1000, 1010,
    ]);
  });

  it('of two files that overlap are those of the first, then the rest of the second', () => {
    const first = [0, 10, 20, 30].map((t) => at(t, 300));
    const second = [20, 30, 40, 50].map((t) => at(t, 310));
    expect(merged([first, second])).toEqual([...first, at(40, 310), at(50, 310)]);
    expect(merged([first, first])).toEqual(first);
  });

  it('of a single source stay as they are, and none are none', () => {
    expect(merged([[], [at(3)]])).toEqual([at(3)]);
    expect(merged([])).toEqual([]);
  });
});

describe('an oven load with a logger’s file', () => {
  const state = load(
    {
      boom: [
        [0, 23],
        [30, 60],
        [300, 40],
      ],
    },
    { off: 300 },
  );
  const file = logged('boom', 0, 240, (m) => (m <= 20 ? 22 + 2.2 * m : 66));

  it('is judged by the logger where it read, and shows the readings by hand beside it', () => {
    const [boom] = ovenSeries(state, [file]).parts;
    expect(boom?.readings).toHaveLength(file.at.length + 1);
    expect(boom?.readings.at(-1)).toEqual({ time: 18_000, temperature: celsius(40) });
    expect(boom?.byHand?.map((r) => r.time)).toEqual([0, 1800, 18_000]);
  });

  it('holds from when the file says so, and its ramp is that of five minutes', () => {
    const results = ovenResults(state, [{ resin: slow }], [file]);
    expect(results.highestPart?.temperature).toBeCloseTo(celsius(66), 9);
    // 22 °C up at 2.2 a minute is at 65 °C after 19.5 min.
    expect(results.steepest * 60).toBeCloseTo(2.2, 6);
    const none = ovenResults(state, [{ resin: slow }]);
    expect(results.held).toBeGreaterThan(none.held);
  });
});
