import { describe, expect, it } from 'vitest';
import { chipsAround, expectedReading } from '#app/curing/oven/expected.ts';
import { judgeTime, readTemperature } from '#app/curing/oven/reading-check.ts';
import { readTimeOfDay } from '#app/curing/oven/reading-time.ts';
import { celsius, load, minutes } from './oven-loads.ts';

const expected = (minute: number, boom: readonly (readonly [number, number])[], off?: number) =>
  expectedReading(load({ boom }, off === undefined ? {} : { off }), 'boom', minutes(minute)) - 273.15;

describe('the expected reading', () => {
  it('is the schedule’s before the first reading', () => {
    expect(expected(0, [])).toBeCloseTo(23, 6);
    expect(expected(10, [])).toBeCloseTo(43, 6);
    expect(expected(60, [])).toBeCloseTo(66, 6);
  });

  it('is the last one while it holds', () => {
    expect(
      expected(100, [
        [60, 67],
        [90, 67],
      ]),
    ).toBeCloseTo(67, 6);
    expect(expected(100, [[90, 66]])).toBeCloseTo(66, 6);
  });

  it('follows the schedule up from the last one, and not past it', () => {
    expect(expected(10, [[5, 31]])).toBeCloseTo(41, 6);
    expect(expected(30, [[15, 53]])).toBeCloseTo(66, 6);
  });

  it('follows its own pace where it lags behind the schedule', () => {
    // A degree a minute, though the schedule asks for 66 by now.
    expect(
      expected(40, [
        [20, 40],
        [30, 50],
      ]),
    ).toBeCloseTo(60, 6);
    expect(
      expected(200, [
        [20, 40],
        [30, 50],
      ]),
    ).toBeCloseTo(50, 6);
  });

  it('falls at its own pace once the oven is off', () => {
    expect(
      expected(
        230,
        [
          [200, 66],
          [210, 60],
          [220, 54],
        ],
        201,
      ),
    ).toBeCloseTo(48, 6);
    expect(expected(220, [[200, 66]], 201)).toBeCloseTo(66, 6);
  });
});

describe('the chips', () => {
  it('are the five whole degrees around what is expected', () => {
    const chips = chipsAround(celsius(66.3), 'metric');
    expect(chips.map((c) => c.figure)).toEqual(['64', '65', '66', '67', '68']);
    expect(chips[2]).toMatchObject({ si: celsius(66), typed: '66 °C' });
    expect(chipsAround(celsius(66), 'inchPound').map((c) => c.figure)).toEqual([
      '149',
      '150',
      '151',
      '152',
      '153',
    ]);
  });

  it('reach below zero with a true minus', () => {
    const chips = chipsAround(celsius(0), 'metric');
    expect(chips.map((c) => c.figure)).toEqual(['−2', '−1', '0', '1', '2']);
    expect(chips[0]?.si).toBeCloseTo(celsius(-2), 9);
  });
});

describe('a typed temperature', () => {
  const read = (text: string, system: 'metric' | 'inchPound' = 'metric', at = 66) =>
    readTemperature(text, system, celsius(at));

  it('is read in the unit of the phone, or in the one it names', () => {
    expect(read('71')).toEqual({ kind: 'read', reading: { si: celsius(71), typed: '71 °C' } });
    expect(read('150 F')).toMatchObject({ kind: 'read', reading: { typed: '150 F' } });
    expect(read('-5')).toMatchObject({ kind: 'read' });
    expect(read('')).toEqual({ kind: 'nothing' });
  });

  it('is asked about when it fits what is expected in the other unit', () => {
    expect(read('150')).toMatchObject({
      kind: 'otherUnit',
      other: { typed: '150 °F' },
      asTyped: { typed: '150 °C' },
    });
    expect(read('66', 'inchPound')).toMatchObject({
      kind: 'otherUnit',
      other: { typed: '66 °C' },
      asTyped: { typed: '66 °F' },
    });
  });

  it('cannot be meant as typed where no oven gets that hot', () => {
    const asked = read('350', 'metric', 175);
    expect(asked).toMatchObject({ kind: 'otherUnit', other: { typed: '350 °F' } });
    expect(asked).not.toHaveProperty('asTyped');
  });

  it('is not asked about when it fits in its own unit, or in neither', () => {
    expect(read('85')).toMatchObject({ kind: 'read' });
    expect(read('110')).toMatchObject({ kind: 'read' });
    expect(read('150 C')).toMatchObject({ kind: 'read' });
  });

  it('over 300 °C and below −40 °C is refused in a sentence', () => {
    expect(read('660')).toMatchObject({ kind: 'wrong', says: expect.stringContaining('300\u00a0°C') });
    expect(read('-66')).toMatchObject({ kind: 'wrong', says: expect.stringContaining('−40\u00a0°C') });
    expect(read('6.6.6')).toMatchObject({ kind: 'wrong' });
  });
});

describe('the time of a reading', () => {
  it('may not be to come, and is asked about before the last one of its sensor', () => {
    expect(judgeTime(100, { now: 99 })).toBe('toCome');
    expect(judgeTime(100, { now: 100, last: 101 })).toBe('earlier');
    expect(judgeTime(100, { now: 100, last: 100 })).toBe('good');
    expect(judgeTime(100, { now: 200 })).toBe('good');
  });

  const now = new Date(2026, 4, 16, 14, 0).getTime();
  const local = (day: number, hours: number, minute: number) =>
    new Date(2026, 4, day, hours, minute).getTime();

  it.each([
    ['10:40', local(16, 10, 40)],
    ['1040', local(16, 10, 40)],
    ['10.40', local(16, 10, 40)],
    ['10:40 AM', local(16, 10, 40)],
    ['1:55', local(16, 13, 55)],
    ['1:55 p.m.', local(16, 13, 55)],
    ['13:55', local(16, 13, 55)],
    ['14:00', local(16, 14, 0)],
    ['2:30', local(16, 2, 30)],
    ['12:10', local(16, 12, 10)],
    ['12:10 am', local(16, 0, 10)],
    ['14:30', local(16, 14, 30)],
    ['2:30 pm', local(16, 14, 30)],
    ['23:50', local(16, 23, 50)],
  ])('typed %s at 2 PM is the last such time within half a day, else the one to come', (text, at) => {
    expect(readTimeOfDay(text, now)).toEqual({ ok: true, at });
  });

  it('just after midnight is of the evening before', () => {
    const late = new Date(2026, 4, 17, 0, 10).getTime();
    expect(readTimeOfDay('23:50', late)).toEqual({ ok: true, at: local(16, 23, 50) });
    expect(readTimeOfDay('11:50', late)).toEqual({ ok: true, at: local(16, 23, 50) });
  });

  it.each(['', 'noon', '25:00', '10:75', '13:10 pm', '7', '10:4', '0:10 am', '10:40:30'])(
    '%s is not one',
    (text) => {
      expect(readTimeOfDay(text, now)).toMatchObject({ ok: false });
    },
  );
});
