import { describe, expect, it } from 'vitest';
import { summarize } from '#app/state/summarize.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { readRecord } from '#shared/record/read.ts';
import { begun, entryOf, ovenLoadHeader } from './arbitraries.ts';

const file = (hash: string, more: object = {}) =>
  entryOf({
    kind: 'loggerFile',
    subject: 'oven-1',
    hash,
    name: 'oven.csv',
    bytes: 4000,
    dialect: {
      encoding: 'utf-8',
      delimiter: ';',
      decimal: ',',
      heads: ['Time', 'Door', 'Boom'],
      firstRow: 1,
      time: { columns: [0], form: 'elapsed' },
    },
    columns: [
      { column: 1, channel: 'door', unit: 'C' },
      { column: 2, channel: 'part-1', unit: 'C' },
    ],
    channels: [{ id: 'door', sees: 'air', name: 'Air at the door' }],
    startsAt: begun,
    clockZone: -240,
    repairs: { shifts: [], cuts: [], lowest: 213.15, highest: 973.15, repeats: 'first' },
    series: [
      { channel: 'door', readings: 500, highest: 345.15 },
      { channel: 'part-1', readings: 490, highest: 340.15 },
    ],
    from: begun,
    until: begun + 3_600_000,
    ...more,
  });

describe('a logger’s file in an oven load', () => {
  it('is a record that the gate lets through whole', () => {
    const entry = file('aa');
    expect(readRecord(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
  });

  it('brings its own channel after those of the header, and no readings of its own', () => {
    const state = foldOvenLoad(ovenLoadHeader, [file('aa')]);
    expect(state.readings.map((r) => [r.channel.id, r.at.length])).toEqual([
      ['air', 0],
      ['part-1', 0],
      ['door', 0],
    ]);
  });

  it('is one file when two phones brought it in, as it was read last', () => {
    const state = foldOvenLoad(ovenLoadHeader, [file('aa'), file('bb'), file('aa', { name: 'again.csv' })]);
    expect(state.loggerFiles.map((f) => f.entry.name).sort()).toEqual(['again.csv', 'oven.csv']);
  });

  it('is gone with its channel when it is struck out', () => {
    const brought = file('aa');
    const struck = entryOf({ kind: 'retracted', subject: 'oven-1', corrects: brought.id });
    const state = foldOvenLoad(ovenLoadHeader, [brought, struck]);
    expect([state.loggerFiles, state.readings.length]).toEqual([[], 2]);
  });

  it('counts in the summary, with its peak', () => {
    const reading = entryOf({ kind: 'reading', subject: 'oven-1', channel: 'air', temperature: 344.15 });
    expect(summarize(ovenLoadHeader, [file('aa'), reading])).toMatchObject({
      readings: 991,
      highestRead: 345.15,
      loggerFiles: 1,
    });
  });
});
