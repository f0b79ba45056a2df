import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoRecords } from '#app/phone/data/demo.ts';
import { readRecord } from '#shared/record/read.ts';

let text = '';
const now = Date.UTC(2027, 0, 9, 20, 15);
const zone = 330;

beforeAll(async () => {
  text = await readFile(new URL('../../demo/shop.txt', import.meta.url), 'utf8');
});

const entries = async () => (await demoRecords(text, now, zone)).filter((r) => r.record === 'entry');

describe('the demo shop on this phone', () => {
  it('stands at the moment it is opened: nothing in it is still to come, and its newest line is minutes old', async () => {
    const newest = Math.max(...(await entries()).map((e) => Number(e.happenedAt)));
    expect(newest).toBeLessThanOrEqual(now);
    expect(now - newest).toBeLessThan(60 * 60_000);
  });

  it('is lived in the zone of the phone', async () => {
    expect(new Set((await entries()).map((e) => e.zone))).toEqual(new Set([zone]));
  });

  it('keeps every record readable, and every id', async () => {
    const moved = await demoRecords(text, now, zone);
    const lines = text.trim().split('\n').slice(1, -1);
    expect(moved.map((m) => m.id)).toEqual(lines.map((line) => JSON.parse(line).id));
    expect(moved.filter((m) => m.record !== 'photo' && !readRecord(m).ok)).toEqual([]);
  });

  it('leaves the starter shelf as it is on every phone, so that it cannot come in twice', async () => {
    const starters = (await demoRecords(text, now, zone)).filter((r) => r.device === 'starter');
    expect(starters.length).toBeGreaterThan(10);
    expect(new Set(starters.map((s) => s.at))).toEqual(new Set([0]));
  });

  it('is refused whole when the file is damaged', async () => {
    const damaged = text.replace('"Boom"', '"Bomm"');
    await expect(demoRecords(damaged, now, zone)).rejects.toThrow('damaged in line');
  });
});
