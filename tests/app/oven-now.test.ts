import { describe, expect, it } from 'vitest';
import { ovenNow } from '#app/curing/oven/oven-now.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { coolsTo, holdOf } from '#app/curing/oven/oven-schedule.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { celsius, load, minutes, type Read, type Stages, schedule, slow } from './oven-loads.ts';

const at = (minute: number, read: Read, stages: Stages = {}) => {
  const state = load(read, stages);
  return ovenNow(state, ovenResults(state, [{ resin: slow }]), minutes(minute));
};
/** Three hours in the band from minute 22 on, read every half hour. */
const through = (to: number): Read => ({
  boom: [
    [0, 23],
    [21.5, 63],
    [22, 66],
    ...Array.from({ length: 30 }, (_, k) => [52 + 30 * k, 66] as const),
  ].filter((pair) => (pair[0] ?? 0) <= to) as [number, number][],
});

describe('an oven load at a time of day', () => {
  it('warms until a reading is in the band, whatever the schedule says', () => {
    expect(at(5, {})).toMatchObject({ phase: 'warming', at: celsius(66), burning: true });
    expect(at(60, { boom: [[50, 55]] })).toMatchObject({ phase: 'warming', holdLeft: 3 * 3600 });
  });

  it('holds from then on and counts down between readings while they are fresh', () => {
    const now = at(67, through(52));
    expect(now).toMatchObject({ phase: 'holding', at: celsius(66) });
    expect(now.holdLeft).toBeCloseTo((180 - 45.5) * 60, 3);
    expect(now.offAt).toBeCloseTo(minutes(201.5), -1);
  });

  it('stops counting when nobody read it for too long, and says since when', () => {
    const now = at(120, through(52));
    expect(now.holdLeft).toBeCloseTo((180 - 30.5) * 60, 3);
    expect(now.unreadSince).toBe(minutes(52));
    expect(at(112, through(52)).unreadSince).toBeUndefined();
  });

  it('has held when the time is full, and cools once it reads less', () => {
    expect(at(205, through(202)).phase).toBe('held');
    expect(at(203, through(202)).holdLeft).toBe(0);
    const cooler = through(202);
    expect(at(240, { boom: [...(cooler.boom ?? []), [205, 66], [230, 50]] }).phase).toBe('cooling');
  });

  it('cools to the foot of the schedule when it is off, then is off, then out', () => {
    const read = through(202);
    expect(at(210, read, { off: 205 })).toMatchObject({
      phase: 'cooling',
      at: coolsTo(schedule),
      burning: false,
    });
    const cold: Read = { boom: [...(read.boom ?? []), [260, 33]] };
    expect(at(262, cold, { off: 205 })).toMatchObject({ phase: 'off', offAt: minutes(205) });
    expect(at(300, cold, { off: 205, out: 290 }).phase).toBe('out');
  });

  it('counts the hold up to the moment it was off', () => {
    // Off 20 minutes after the last reading, which was in the band.
    expect(at(400, through(52), { off: 72 }).held).toBeCloseTo(50.5 * 60, 3);
  });

  it('wants a reading at least every quarter of an hour while it warms, and by the schedule while it holds', () => {
    expect(at(5, {}).dueAt).toBe(minutes(15));
    expect(at(12, { boom: [[10, 40]] }).dueAt).toBe(minutes(25));
    expect(at(60, through(52)).dueAt).toBe(minutes(82));
    expect(at(210, through(202), { off: 205 }).dueAt).toBeUndefined();
  });

  it('expects to be off when the hold is done by the pace of the schedule', () => {
    expect(at(5, {}).offAt).toBeCloseTo(minutes(201.5), -1);
    // 20 degrees below the foot at 2 a minute: 10 minutes, then 3 hours.
    expect(at(30, { boom: [[30, 43]] }).offAt).toBeCloseTo(minutes(220), -1);
  });

  it('does not let the clock of a phone set back make it negative', () => {
    const now = at(-30, through(52));
    expect(now.holdLeft).toBeGreaterThan(0);
    expect(now.held).toBeCloseTo(30.5 * 60, 3);
  });
});

describe('a schedule', () => {
  it('holds for all its holds in the band, and not for a dwell below it', () => {
    const stepped = {
      ...schedule,
      stages: [
        { kind: 'ramp', to: celsius(45), rate: 2 / 60 },
        { kind: 'hold', lasts: 3600 },
        { kind: 'ramp', to: celsius(66), rate: 2 / 60 },
        { kind: 'hold', lasts: 7200 },
        { kind: 'hold', lasts: 1800 },
      ] as typeof schedule.stages,
    };
    expect(holdOf(stepped)).toMatchObject({ temperature: celsius(66), lasts: 9000 });
    expect(coolsTo(stepped)).toBeUndefined();
  });

  it('at the shop’s temperature holds from the start', () => {
    const room = starterSchedules['starter-schedule-room-24'].schedule;
    expect(holdOf(room)).toMatchObject({ begins: 0, lasts: 86_400 });
    expect(at(5, {}, { header: { schedule: room } }).phase).toBe('holding');
    expect(at(5, {}, { header: { schedule: room }, off: 3 }).phase).toBe('off');
  });
});
