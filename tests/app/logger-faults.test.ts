import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FaultKind } from '#app/curing/logger/fault.ts';
import { lit, readBack } from './logger-files.ts';

const two = (n: number) => String(n).padStart(2, '0');
const stamp = (at: number) => {
  const d = new Date(at);
  return `${d.getUTCFullYear()}-${two(d.getUTCMonth() + 1)}-${two(d.getUTCDate())} ${two(d.getUTCHours())}:${two(d.getUTCMinutes())}:${two(d.getUTCSeconds())}`;
};

interface Row {
  at: number;
  air: string;
  tube: string;
}

/** Warming by a third of a degree every ten seconds, then holding with a flicker of a tenth. */
function cure(count = 400, begins = lit): Row[] {
  const heat = (i: number, lag: number) => Math.min(66, 21 + Math.max(0, i - lag) / 3) + (i % 3) / 10;
  return Array.from({ length: count }, (_, i) => ({
    at: begins + i * 10_000,
    air: heat(i, 0).toFixed(1),
    tube: heat(i, 30).toFixed(1),
  }));
}

const text = (rows: readonly Row[]) =>
  ['Time,Air [°C],Boom [°C]', ...rows.map((r) => `${stamp(r.at)},${r.air},${r.tube}`)].join('\n');

const kinds = (rows: readonly Row[]) => readBack(text(rows)).faults.map((f) => f.kind);
const shifted = (rows: readonly Row[], from: number, ms: number) =>
  rows.map((r, i) => (i >= from ? { ...r, at: r.at + ms } : r));

/** Every row of the file in its place in time again, none lost and none twice. */
function expectWhole(rows: readonly Row[], whole: readonly Row[]) {
  const [air] = readBack(text(rows)).series;
  expect([...(air?.at ?? [])]).toEqual(whole.map((r) => r.at));
}

describe('a clock', () => {
  it('that runs well has nothing named', () => {
    expect(kinds(cure())).toEqual([]);
  });

  it('that stood still has its gaps counted and the longest shown, and nothing filled in', () => {
    const rows = cure().filter((_, i) => (i < 50 || i > 69) && (i < 200 || i > 300));
    const { faults, series } = readBack(text(rows));
    expect(faults).toMatchObject([{ kind: 'gap', count: 2, size: 1020, advised: false }]);
    expect(faults[0]?.at).toBe(lit + 199 * 10_000);
    expect(series[0]?.at).toHaveLength(rows.length);
  });

  it('that was set back or ahead is put right so that the run goes on', () => {
    for (const [by, kind] of [
      [-20 * 60_000, 'clockBack'],
      [-26 * 365 * 86_400_000, 'clockBack'],
      [40 * 86_400_000, 'clockAhead'],
    ] as const) {
      const rows = shifted(cure(), 100, by);
      expect(kinds(rows)).toEqual([kind]);
      expectWhole(rows, cure());
    }
  });

  it('with stray stamps loses those rows only', () => {
    const rows = cure().map((r, i) =>
      i === 30 || i === 31 || i === 200 ? { ...r, at: Date.UTC(2000, 0, 1) } : r,
    );
    expect(readBack(text(rows)).faults).toMatchObject([{ kind: 'wildStamps', count: 3, row: 30 }]);
    expectWhole(
      rows,
      cure().filter((_, i) => i !== 30 && i !== 31 && i !== 200),
    );
  });

  it('that was put back for winter repeats an hour, which is told apart', () => {
    const rows = shifted(cure(900), 400, -3_600_000);
    expect(readBack(text(rows)).faults).toMatchObject([{ kind: 'hourRepeated', row: 400, size: 3600 }]);
    expectWhole(rows, cure(900));
  });

  it('that was put ahead for summer misses an hour: closed on such a night, else it is only named', () => {
    const night = Date.UTC(2026, 2, 8, 1, 30);
    const onTheNight = readBack(text(shifted(cure(400, night), 180, 3_600_000)), { startsAt: night });
    expect(onTheNight.faults.find((f) => f.kind === 'hourMissing')).toMatchObject({
      row: 180,
      advised: true,
    });
    const byDay = readBack(text(shifted(cure(), 180, 3_600_000)));
    expect(byDay.faults).toMatchObject([{ kind: 'hourMissing', advised: false }]);
    expect(byDay.series[0]?.at.at(-1)).toBe(lit + 399 * 10_000 + 3_600_000);
  });

  it('that repeats stamps here and there counts each once', () => {
    const rows = cure().flatMap((r, i) =>
      i % 40 === 3 ? [r, { ...r, air: (Number(r.air) + 0.1).toFixed(1) }] : [r],
    );
    expect(readBack(text(rows)).faults).toMatchObject([{ kind: 'repeats', count: 10 }]);
    expectWhole(rows, cure());
  });

  it('that tells minutes only has its rows spread over them', () => {
    const rows = cure(360).map((r) => ({ ...r, at: Math.floor(r.at / 60_000) * 60_000 }));
    const { faults } = readBack(text(rows));
    expect(faults).toMatchObject([{ kind: 'repeats', count: 300, repair: { repeats: 'spread' } }]);
    expectWhole(rows, cure(360));
  });

  it('that says nothing in some rows loses those', () => {
    const lines = text(cure()).split('\n');
    lines[20] = 'restarted,,';
    lines[60] = ',31.0,30.0';
    const { faults, series } = readBack(lines.join('\n'));
    expect(faults.find((f) => f.kind === 'noTime')).toMatchObject({ count: 2, row: 19 });
    expect(series[0]?.at).toHaveLength(398);
  });
});

describe('a sensor', () => {
  const dead = (value: string) => cure().map((r) => ({ ...r, tube: value }));

  it('that is not there is named dead, whatever the logger writes instead', () => {
    for (const value of [
      '',
      '-200',
      '1372',
      '1372.0',
      '9999',
      '-999',
      '-999.9',
      'OPEN',
      '----',
      '3276.7',
      'NaN',
    ]) {
      const { faults, series } = readBack(text(dead(value)));
      expect(faults, value).toMatchObject([{ kind: 'dead', count: 400 }]);
      expect(series.find((s) => s.channel === 'Boom')?.at ?? [], value).toHaveLength(0);
    }
  });

  it('that comes and goes is left out where it is gone', () => {
    const rows = cure().map((r, i) => (i >= 100 && i < 120 ? { ...r, tube: '1372' } : r));
    const { faults, series } = readBack(text(rows));
    expect(faults).toMatchObject([{ kind: 'noReading', count: 20, row: 100, value: 1372 + 273.15 }]);
    expect(series[1]?.at).toHaveLength(380);
    expect(series[0]?.at).toHaveLength(400);
  });

  it('that does not move while the other does is left out', () => {
    const { faults, series } = readBack(text(dead('21.4')));
    expect(faults).toMatchObject([{ kind: 'flat', count: 400, advised: true }]);
    expect(series[1]?.at).toHaveLength(0);
  });

  it('that holds still in a hold is left alone', () => {
    const rows = cure(1200).map((r, i) => (i > 200 ? { ...r, air: '66.0', tube: '66.0' } : r));
    expect(kinds(rows)).toEqual([]);
  });

  it('that jumps out for one row loses that row', () => {
    const rows = cure().map((r, i) => (i === 250 ? { ...r, air: '140.0' } : r));
    const { faults, series } = readBack(text(rows));
    expect(faults).toMatchObject([{ kind: 'spike', count: 1, row: 250, value: 140 + 273.15 }]);
    expect(series[0]?.temperature.every((t) => t < 341)).toBe(true);
  });

  it('that flickers every second is smoothed to the middle of 30 s', () => {
    const flicker = [0.9, -1.1, 0.2, 1.4, -0.8, -0.3, 0.6];
    const rows = Array.from({ length: 1800 }, (_, i) => ({
      at: lit + i * 1000,
      air: (60 + (flicker[i % 7] ?? 0)).toFixed(1),
      tube: (50 + (flicker[(i * 3) % 7] ?? 0)).toFixed(1),
    }));
    const { faults, series } = readBack(text(rows));
    expect(faults).toMatchObject([{ kind: 'noise', repair: { smooth: 30 } }]);
    expect(faults[0]?.size).toBeGreaterThan(0.5);
    expect(series[0]?.at).toHaveLength(60);
    expect(series[0]?.temperature.every((t) => Math.abs(t - 333.15) <= 0.35)).toBe(true);
  });
});

describe('a file that goes on after the oven load', () => {
  it('is taken from half an hour before until an hour after', () => {
    const rows = cure(2000, lit - 3_600_000);
    const { faults, series } = readBack(text(rows), { out: lit + 3_600_000 });
    expect(faults).toMatchObject([{ kind: 'outside', count: 180 + 919 }]);
    expect([series[0]?.at[0], series[0]?.at.at(-1)]).toEqual([lit - 1_800_000, lit + 7_200_000]);
  });
});

describe('whatever is wrong with a file', () => {
  const harms: Partial<Record<FaultKind, (rows: Row[], at: number) => Row[]>> = {
    clockBack: (rows, at) => shifted(rows, at, -25 * 60_000),
    clockAhead: (rows, at) => shifted(rows, at, 3 * 86_400_000),
    gap: (rows, at) => rows.filter((_, i) => i < at || i > at + 30),
    noReading: (rows, at) => rows.map((r, i) => (i >= at && i < at + 15 ? { ...r, air: '-200' } : r)),
    repeats: (rows, at) => rows.flatMap((r, i) => (i === at ? [r, r] : [r])),
    spike: (rows, at) => rows.map((r, i) => (i === at ? { ...r, tube: '190.0' } : r)),
  };

  it('it is named, and what is left is in order and as it was read', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...(Object.keys(harms) as FaultKind[])), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.integer({ min: 40, max: 60 }),
        (chosen, from) => {
          const rows = chosen.reduce((all, kind, i) => harms[kind]?.(all, from + 70 * i) ?? all, cure(500));
          const { faults, series } = readBack(text(rows));
          expect(faults.map((f) => f.kind).sort()).toEqual([...chosen].sort());
          for (const { at, temperature } of series) {
            expect(at.every((time, i) => i === 0 || time > (at[i - 1] ?? 0))).toBe(true);
            expect(temperature.every((t) => t > 290 && t < 345)).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
