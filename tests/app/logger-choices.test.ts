import { describe, expect, it } from 'vitest';
import { assigned, broughtBy, choicesOf, notUsed } from '#app/curing/logger/channel-choices.ts';
import type { HeatColumn } from '#app/curing/logger/columns.ts';
import { repairsOf } from '#app/curing/logger/fault.ts';
import { holdsRepair } from '#app/curing/logger/holds-repair.ts';
import { loggedOf, loggedResults } from '#app/curing/logger/logged-results.ts';
import { openFile } from '#app/curing/logger/open-file.ts';
import { asBefore } from '#app/curing/logger/remembered.ts';
import { tryFile } from '#app/curing/logger/try-file.ts';
import { lastReading, nextReadingDue } from '#app/curing/oven/reading-due.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { bytesOf } from './logger-files.ts';
import { celsius, entries, lit, load, loadHeader, slow } from './oven-loads.ts';

const state = load({});
const column = (at: number, name: string, sees: HeatColumn['sees']): HeatColumn => ({
  column: at,
  name,
  unit: 'C',
  unitSaid: true,
  sees,
});

describe('columns of a file', () => {
  it('go to the sensor their head names, else to the next that sees the same', () => {
    const columns = [
      column(1, 'Air', 'air'),
      column(2, 'Sprit top', 'part'),
      column(3, 'TC3', 'part'),
      column(4, 'TC4', 'part'),
      column(5, 'Shop', undefined),
    ];
    expect(assigned(columns, state).map((c) => c.to)).toEqual(['air', 'sprit', 'boom', 'new part', notUsed]);
  });

  it('bring a channel of their own when none stands for them', () => {
    const { channels, to } = broughtBy(
      assigned([column(1, 'Door', 'air'), column(2, 'Back', 'air'), column(3, 'Coil', 'element')], state),
      () => 'made',
    );
    expect(channels).toEqual([
      { id: 'made', sees: 'air', name: 'Back' },
      { id: 'made', sees: 'element', name: 'Coil' },
    ]);
    expect(to.get(1)).toBe('air');
  });

  it('can go to every sensor of the oven load, to a new one, or nowhere', () => {
    expect(choicesOf(state).map((c) => c.value)).toEqual([
      'air',
      'boom',
      'sprit',
      'new air',
      'new part',
      'new element',
      notUsed,
    ]);
  });
});

/** A file as the app would take it in, and the oven load with it. */
function taken(text: string) {
  const bytes = bytesOf(text);
  const { table, looked } = openFile(bytes, { near: lit, hottest: celsius(66) });
  if (!looked.ok) throw new Error(looked.why);
  const { dialect, heat } = looked.look;
  const columns = assigned(heat, state).map(({ column: at, unit, to }) => ({
    column: at,
    unit,
    channel: to,
  }));
  const clocked = { zone: 0, startsAt: lit, shift: 0 };
  const tried = tryFile(table, { dialect, columns, clocked, span: { lit, out: undefined }, choices: {} });
  const entry = {
    kind: 'loggerFile',
    hash: 'aa',
    name: 'a.csv',
    bytes: bytes.length,
    dialect,
    columns,
    startsAt: lit,
    shift: 0,
    clockZone: 0,
    repairs: tried.repairs,
    series: tried.series.map(({ channel, readings }) => ({ channel, readings })),
    from: tried.from,
    until: tried.until,
  };
  const all = entries('oven', [{ kind: 'ovenStage', stage: 'lit', happenedAt: lit }, entry] as never);
  return { tried, bytes, state: foldOvenLoad(loadHeader, all) };
}

const rows = (count: number, jumpAt = -1) =>
  Array.from({ length: count }, (_, i) => {
    const at = new Date(lit + i * 10_000 - (jumpAt >= 0 && i >= jumpAt ? 1_500_000 : 0)).toISOString();
    return `${at.slice(0, 19).replace('T', ' ')},${Math.min(66, 23 + i / 5).toFixed(1)},${Math.min(65, 22 + i / 6).toFixed(1)}`;
  });

describe('a file in the record', () => {
  it('puts off the next reading, and leaves nothing older to show on the bench', () => {
    const { tried, state: withFile } = taken(['Time,Air,Boom', ...rows(900)].join('\n'));
    const readings = withFile.readings.map((r) => ({
      ...r,
      at: [{ root: 'a', at: lit, temperature: 296.15 }],
    }));
    const byHand = { ...withFile, readings, loggerFiles: [] };
    expect(lastReading(byHand)).toBe(296.15);
    expect(lastReading({ ...byHand, loggerFiles: withFile.loggerFiles })).toBeUndefined();
    expect(nextReadingDue(withFile, lit, true)).toBe((tried.until ?? 0) + 15 * 60_000);
  });

  it('gives from its bytes and its entry what its preview gave', () => {
    const { tried, bytes, state: withFile } = taken(['Time,Air,Boom', ...rows(900, 400)].join('\n'));
    const [fact] = withFile.loggerFiles;
    if (!fact) throw new Error('no file');
    const logged = loggedOf({ bytes: bytes.buffer as ArrayBuffer, entry: fact.entry });
    expect(logged.map((l) => [l.channel, l.at.length])).toEqual(
      tried.series.map((s) => [s.channel, s.readings]),
    );
    expect(tried.faults.map((f) => f.kind)).toEqual(['clockBack']);
    expect(tried.faults.every((f) => holdsRepair(fact.entry.repairs, f))).toBe(true);
    expect(tried.faults.some((f) => holdsRepair(repairsOf([]), f))).toBe(false);
  });

  it('is reckoned over all of its readings, and passed on in as many as a picture needs', () => {
    const { bytes, state: withFile } = taken(['Time,Air,Boom', ...rows(20_000)].join('\n'));
    const logged = withFile.loggerFiles.flatMap(({ entry }) =>
      loggedOf({ bytes: bytes.buffer as ArrayBuffer, entry }),
    );
    const { results, traces } = loggedResults(withFile, [{ resin: slow }], logged);
    expect(traces.map((t) => t.at.length)).toEqual([20_000, 20_000, 0]);
    expect(results.series.coldest.length).toBeLessThan(1100);
    expect(results.series.coldest.at(-1)?.time).toBe(199_990);
    // At 63 °C after 2,460 s at a sixth of a degree every ten seconds, and held from there on.
    expect(results.held).toBeCloseTo(199_990 - 2460, -2);
    expect(results.highestPart?.temperature).toBeCloseTo(celsius(65), 9);
  });

  it('says how the next one of the same look is read: the same sensors, in the units they had', () => {
    const { state: before } = taken(['Time,Air,Boom', ...rows(100)].join('\n'));
    const [fact] = before.loggerFiles;
    if (!fact) throw new Error('no file');
    const entry = { ...fact.entry, columns: [{ column: 2, channel: 'boom', unit: 'F' as const }] };
    const next = load(
      {},
      {
        header: {
          channels: [
            { id: 'a', sees: 'air', name: 'Air' },
            { id: 'mast', sees: 'part', name: 'Mast no. 1' },
          ],
        },
      },
    );
    const columns = assigned([column(1, 'Air', 'air'), column(2, 'Boom', 'part')], next);
    const read = asBefore(columns, { entry, channels: before.readings.map((r) => r.channel) }, next);
    expect(read.map((c) => [c.to, c.unit])).toEqual([
      [notUsed, 'C'],
      ['mast', 'F'],
    ]);
  });
});
