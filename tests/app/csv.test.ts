import papa from 'papaparse';
import { afterEach, describe, expect, it } from 'vitest';
import { buildColumns, buildRow } from '#app/phone/data/builds-table.ts';
import { csvText } from '#app/phone/data/csv.ts';
import { isoWithOffset } from '#app/phone/data/file-words.ts';
import { readingColumns, readingRows } from '#app/phone/data/readings-table.ts';
import { settings } from '#app/state/settings.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { defaultSettings } from '#shared/record/settings.ts';
import { type buildHeader, ovenLoadHeader } from '../record/arbitraries.ts';
import { begun, buildOf, cupOf, entriesOf, ovenOf } from './shop-of.ts';

afterEach(() => {
  settings.value = defaultSettings;
});

/** The table as a spreadsheet reads it: rows by the heads of their columns. */
function read(text: string): Record<string, string>[] {
  const { data, errors } = papa.parse<Record<string, string>>(text.replace('\uFEFF', ''), { header: true });
  expect(errors).toEqual([]);
  return data;
}

const tableOfBuilds = async (...states: ReturnType<typeof buildOf>[]) =>
  read(await csvText(buildColumns(), states.map(buildRow)));

const weighed = [
  ...cupOf('a', 1, 10),
  { minute: 50, kind: 'weight', what: 'cured', mass: 0.231 } as const,
  { minute: 51, kind: 'disposition', outcome: 'good', text: 'No dry spot.' } as const,
  { minute: 60, kind: 'closed' } as const,
];

describe('a table of builds', () => {
  it('has one row a build, with its results in the units of its heads', async () => {
    const [row] = await tableOfBuilds(buildOf(weighed));
    // 231 g less 130 g of cloth is 101 g of resin: 101/231 is 43.7 % by weight.
    expect(row).toMatchObject({
      Tube: 'Boom',
      'No.': '1',
      'Dry cloth [g]': '130',
      'Tube [g]': '231',
      'Resin in it [g]': '101',
      'Resin share by weight [%]': '43.72',
      'Resin mixed [g]': '130',
      Judged: 'good',
      'Which is': 'good',
    });
  });

  it('follows the units that are chosen, and says so in its heads', async () => {
    settings.value = { ...defaultSettings, units: 'inchPound' };
    const [row] = await tableOfBuilds(buildOf(weighed));
    // 231 g / 28.349523125 g an ounce
    expect(row?.['Tube [oz]']).toBe('8.148');
  });

  it('leaves what is not known yet empty, and never writes a zero for it', async () => {
    const [row] = await tableOfBuilds(buildOf([]));
    expect(row?.['Tube [g]']).toBe('');
    expect(row?.['Wall, mean [mm]']).toBe('');
    expect(row?.['Resin mixed [g]']).toBe('');
    expect(row?.Closed).toBe('');
  });

  it('names the lots that it was made from, each once and no roll that was put back', async () => {
    const from = (minute: number, of: 'cloth' | 'hardener', label: string) =>
      ({ minute, kind: 'lotDrawn', of, lot: label, label }) as const;
    const [row] = await tableOfBuilds(
      buildOf([
        from(0, 'cloth', 'Roll 1'),
        from(1, 'cloth', 'Roll 2'),
        from(1, 'hardener', 'Bottle 1'),
        from(5, 'hardener', 'Bottle 2'),
        from(6, 'hardener', 'Bottle 1'),
      ]),
    );
    expect(row?.['Cloth lot']).toBe('Roll 2');
    expect(row?.['Hardener lot']).toBe('Bottle 1, Bottle 2');
  });

  it('writes times with the offset they were lived at', async () => {
    const [row] = await tableOfBuilds(buildOf(weighed));
    expect(row?.Started).toBe('2026-05-16T08:00:00-04:00');
    expect(Date.parse(row?.Started ?? '')).toBe(begun);
    expect(row?.Closed).toBe('2026-05-16T09:00:00-04:00');
  });

  for (const note of ['=1+2', '+1', '-1', '@SUM(A1)', '\t=1', '  =1', '=1\n+2', '＝1']) {
    it(`keeps a note that begins like a formula a note: ${JSON.stringify(note)}`, async () => {
      const [row] = await tableOfBuilds(buildOf([{ minute: 1, kind: 'note', text: note }]));
      expect(row?.Notes).toBe(`'${note}`);
    });
  }

  it('keeps commas, quotes and line breaks of names inside their cell', async () => {
    const name = 'Mast, "upper"\nspare';
    const [row, more] = await tableOfBuilds(buildOf([], { name } as Partial<typeof buildHeader>));
    expect(row?.Tube).toBe(name);
    expect(more).toBeUndefined();
  });
});

describe('a table of readings', () => {
  const reading = (minute: number, channel: string, temperature: number) =>
    ({ minute, kind: 'reading', channel, temperature }) as const;

  it('has one row a reading in the order they were read, with time and channel', async () => {
    const oven = ovenOf([
      { minute: 0, kind: 'ovenStage', stage: 'lit' },
      reading(30, 'part-1', 339.15),
      reading(10, 'air', 263.15),
    ]);
    const rows = read(await csvText(readingColumns(), readingRows(oven)));
    expect(rows).toEqual([
      {
        'Oven load': '1',
        Time: '2026-05-16T08:10:00-04:00',
        'Since lit [min]': '10',
        Channel: 'Air',
        Sees: 'air',
        'Temperature [°C]': '-10',
        Read: 'by hand',
      },
      {
        'Oven load': '1',
        Time: '2026-05-16T08:30:00-04:00',
        'Since lit [min]': '30',
        Channel: 'Boom no. 1',
        Sees: 'part',
        'Temperature [°C]': '66',
        Read: 'by hand',
      },
    ]);
  });

  it('has what a logger read too, and says where a file of it is missing', () => {
    const oven = ovenOf([{ minute: 0, kind: 'ovenStage', stage: 'lit' }, reading(10, 'air', 300)]);
    const at = Float64Array.of(begun + 60_000, begun + 120_000);
    const logged = [{ channel: 'part-1', at, temperature: Float64Array.of(310.15, 320.15) }];
    const rows = readingRows(oven, [
      { name: 'oven.csv', at: begun, logged },
      { name: 'second.csv', at: begun },
    ]);
    expect(rows.map((r) => [r.channel, r.source, r.temperature, r.since])).toEqual([
      ['Air', 'by hand', 300, 600],
      ['Boom no. 1', 'oven.csv', 310.15, 60],
      ['Boom no. 1', 'oven.csv', 320.15, 120],
      ['', 'second.csv, which is not on this phone', undefined, 0],
    ]);
  });

  it('has the corrected reading only, and none that was struck out', () => {
    const first = entriesOf('oven-1', [
      reading(10, 'air', 400),
      reading(20, 'air', 350),
      reading(30, 'air', 360),
    ]);
    const [wrong, struck] = first;
    const later = [
      { ...first[0], id: 'oven-1-z1', corrects: wrong?.id, temperature: 340, recordedAt: begun + 9e6 },
      { ...first[0], id: 'oven-1-z2', kind: 'retracted', corrects: struck?.id, recordedAt: begun + 9e6 },
    ] as typeof first;
    const rows = readingRows(foldOvenLoad(ovenLoadHeader, [...first, ...later]));
    expect(rows.map((r) => r.temperature)).toEqual([340, 360]);
  });
});

describe('a time with its offset', () => {
  it('names the same instant in every zone', () => {
    for (const zone of [-720, -240, -210, 0, 330, 345, 840]) {
      const text = isoWithOffset(begun, zone);
      expect(Date.parse(text)).toBe(begun);
      expect(text).toMatch(/[+-]\d\d:\d\d$/);
    }
    expect(isoWithOffset(begun, 330)).toBe('2026-05-16T17:30:00+05:30');
  });
});
