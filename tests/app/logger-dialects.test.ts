import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openFile } from '#app/curing/logger/open-file.ts';
import { bytesOf, hands, histories, known, lit, lookOf, readBack, written } from './logger-files.ts';

const rows = (lines: readonly string[], count = 30) =>
  [...lines, ...Array.from({ length: count }, () => '')].filter(Boolean).join('\n');

/** Thirty rows, ten seconds apart, each made from its number. */
const thirty = (row: (i: number) => string) => Array.from({ length: 30 }, (_, i) => row(i)).join('\n');

describe('a history written by any logger', () => {
  it('is read back: when, how hot, and which column is which', () => {
    fc.assert(
      fc.property(histories, hands, (history, hand) => {
        const text = written(history, hand);
        const counts = ['elapsed', 's', 'min', 'day', 'amPm'].includes(hand.time);
        const { look, series } = readBack(text, {
          startsAt: counts ? history.begins : lit,
          repaired: () => false,
        });
        expect(look.orders.length).toBeLessThanOrEqual(1);
        expect(look.heat.map((h) => [h.name, h.sees, h.unit])).toEqual([
          ['Air', 'air', hand.unit],
          ['Boom', 'part', hand.unit],
        ]);
        for (const [s, values] of [history.air, history.tube].entries()) {
          const read = series[s];
          expect(read?.at).toHaveLength(values.length);
          const late = values.map((_, i) =>
            Math.abs((read?.at[i] ?? 0) - history.begins - i * history.step * 1000),
          );
          const off = values.map((value, i) => Math.abs((read?.temperature[i] ?? 0) - value - 273.15));
          expect(Math.max(...late)).toBeLessThan(10);
          expect(Math.max(...off)).toBeLessThan(0.051);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('has no fault named that is not there', () => {
    fc.assert(
      fc.property(histories, hands, (history, hand) => {
        const counts = ['elapsed', 's', 'min', 'day', 'amPm'].includes(hand.time);
        const { faults } = readBack(written(history, hand), { startsAt: counts ? history.begins : lit });
        // Flicker of a degree at 5 s is noise, and is named as such.
        expect(faults.filter((f) => f.kind !== 'noise')).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('dates in figures', () => {
  const dated = (date: (i: number) => string) =>
    `Time,Air\n${thirty((i) => `${date(i)} 10:${String(i).padStart(2, '0')}:00,2${i % 10}.5`)}`;

  it('are told apart by a figure over 12', () => {
    expect(lookOf(dated(() => '16/05/2026')).orders).toEqual(['dmy']);
    expect(lookOf(dated(() => '05/16/2026')).orders).toEqual(['mdy']);
    expect(lookOf(dated(() => '2026/05/16')).orders).toEqual(['ymd']);
  });

  it('are told apart by a run over midnight', () => {
    expect(lookOf(dated((i) => (i < 15 ? '03/04/2026' : '03/05/2026'))).orders).toEqual(['mdy']);
    expect(lookOf(dated((i) => (i < 15 ? '03/04/2026' : '04/04/2026'))).orders).toEqual(['dmy']);
  });

  it('are told apart by the day of the oven load', () => {
    const text = dated(() => '06/05/2026');
    const on = (near: number) => {
      const { looked } = openFile(bytesOf(text), { ...known, near });
      return looked.ok ? looked.look.orders : [];
    };
    expect(on(Date.UTC(2026, 4, 6, 9))).toEqual(['dmy']);
    expect(on(Date.UTC(2026, 5, 5, 9))).toEqual(['mdy']);
  });

  it('that fit both ways are asked about', () => {
    expect(lookOf(dated(() => '03/04/2026')).orders).toEqual(['dmy', 'mdy']);
  });

  it('with a month by name, and with two figures of a year, are understood', () => {
    const at = (date: string) => readBack(dated(() => date)).series[0]?.at[0];
    expect(at('16 May 2026')).toBe(Date.UTC(2026, 4, 16, 10));
    expect(at('16-May-26')).toBe(Date.UTC(2026, 4, 16, 10));
    expect(at('16.05.26')).toBe(Date.UTC(2026, 4, 16, 10));
  });

  it('with an offset of their own are that moment, whatever zone the shop is in', () => {
    const text = `Time,Air\n${thirty((i) => `2026-05-16T16:${String(i).padStart(2, '0')}:00+02:00,${20 + i}`)}`;
    expect(readBack(text, { zone: -240 }).series[0]?.at[0]).toBe(lit);
  });
});

describe('other ways to say when', () => {
  it('a time of day alone goes on over midnight', () => {
    const text = `Time,Air\n${thirty((i) => `${i < 15 ? '23:59' : '00:00'}:${String((i % 15) * 4).padStart(2, '0')},${20 + i}`)}`;
    const [air] = readBack(text, { startsAt: Date.UTC(2026, 4, 15, 23) }).series;
    expect([air?.at[0], air?.at[15]]).toEqual([Date.UTC(2026, 4, 15, 23, 59), Date.UTC(2026, 4, 16)]);
  });

  it('two figures are minutes and seconds where hours would take days', () => {
    const text = `Elapsed,Air\n${thirty((i) => `${i * 10}:30,${20 + i}`)}`;
    expect(lookOf(text).dialect.time).toMatchObject({ form: 'elapsed', unit: 'min' });
    const hours = `Elapsed,Air\n${thirty((i) => `${Math.floor(i / 6)}:${i % 6}0,${20 + i}`)}`;
    expect(lookOf(hours).dialect.time).toMatchObject({ form: 'elapsed', unit: 'h' });
  });

  it('a count without a unit is in the one in which a cure lasts hours', () => {
    const unit = (row: (i: number) => number) =>
      lookOf(`X,Air\n${thirty((i) => `${row(i)},${20 + i}`)}`).dialect.time.unit;
    expect(unit((i) => i * 30)).toBe('s');
    expect(unit((i) => i * 5)).toBe('min');
    expect(unit((i) => i / 288)).toBe('day');
  });

  it('the newest row first is turned round', () => {
    const text = `Time,Air\n${thirty((i) => `2026-05-16 14:${String(29 - i).padStart(2, '0')}:00,${50 - i}`)}`;
    const [air] = readBack(text).series;
    expect([air?.at[0], air?.temperature[0]]).toEqual([lit, 21 + 273.15]);
    expect(readBack(text).faults).toEqual([]);
  });

  it('a start in the preamble is found', () => {
    const text = `Began: 2026-05-16 09:58:00\nElapsed;Air\n${thirty((i) => `0:${String(i).padStart(2, '0')}:00;${20 + i},5`)}`;
    expect(lookOf(text).startSaid).toBe(Date.UTC(2026, 4, 16, 9, 58));
  });
});

describe('columns', () => {
  it('that are no temperatures are left alone', () => {
    const head = 'Record,Time,Oven air,Setpoint,Humidity (%),Mandrel,Battery (V)';
    const text = `${head}\n${thirty((i) => `${i},2026-05-16 14:${String(i).padStart(2, '0')}:00,${30 + i},66,41,${22 + i},3.6`)}`;
    expect(lookOf(text).heat.map((h) => [h.name, h.sees])).toEqual([
      ['Oven air', 'air'],
      ['Mandrel', 'part'],
    ]);
  });

  it('without heads are told apart by which warms first, and their unit by how hot a cure gets', () => {
    const text = thirty(
      (i) => `2026-05-16 14:${String(i).padStart(2, '0')}:00,${75 + i * 2},${75 + i * 2.6}`,
    );
    expect(lookOf(text).heat.map((h) => [h.name, h.sees, h.unit, h.unitSaid])).toEqual([
      ['Column 2', 'part', 'F', false],
      ['Column 3', 'air', 'F', false],
    ]);
  });
});

describe('what is no file of readings', () => {
  const refused = (text: string) => {
    const { looked } = openFile(bytesOf(text), known);
    return looked.ok ? 'taken' : looked.why;
  };

  it('is refused with a reason', () => {
    expect(refused('')).toBe('noColumns');
    expect(refused('Dear builder,\nthe oven is fine.\n')).toBe('noColumns');
    expect(refused(rows(['a;b;c', 'd;e;f', 'g;h;i']))).toBe('noReadings');
    expect(refused(`Name,Air,Tube\n${thirty((i) => `boom,${20 + (i % 3)},${21 - (i % 3)}`)}`)).toBe('noTime');
    expect(
      refused(`Time,Word\n${thirty((i) => `2026-05-16 14:${String(i).padStart(2, '0')}:00,open`)}`),
    ).toBe('noHeat');
  });

  it('is refused without a fall, whatever it is', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(openFile(bytes, known).looked.ok).toBeTypeOf('boolean');
      }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ maxLength: 8 }), { maxLength: 4 }), { maxLength: 12 }),
        (cells) => {
          const text = cells.map((row) => row.join(';')).join('\n');
          expect(openFile(bytesOf(text), known).looked.ok).toBeTypeOf('boolean');
        },
      ),
    );
  });
});

it('a file of another alphabet or in two bytes a letter is read all the same', () => {
  const text = `Zeit;Luft °C;Rohr °C\r\n${thirty((i) => `16.05.2026 14:${String(i).padStart(2, '0')}:00;${30 + i},5;2${i % 10},5`)}`;
  const latin = Uint8Array.from(text, (c) => c.charCodeAt(0));
  const wide = new Uint8Array(text.length * 2 + 2);
  wide.set([0xff, 0xfe]);
  for (const [i, c] of [...text].entries()) wide[2 * i + 2] = c.charCodeAt(0);
  for (const [i, c] of [...text].entries()) wide[2 * i + 3] = c.charCodeAt(0) >> 8;
  for (const bytes of [latin, wide, bytesOf(text)]) {
    const { looked } = openFile(bytes, known);
    expect(looked.ok && looked.look.heat.map((h) => [h.name, h.unit])).toEqual([
      ['Luft', 'C'],
      ['Rohr', 'C'],
    ]);
  }
});
