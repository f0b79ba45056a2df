import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { ovenNow } from '#app/curing/oven/oven-now.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { nextReadingDue } from '#app/curing/oven/reading-due.ts';
import { calendarFile, folded } from '#app/curing/reminders/ics.ts';
import { ovenReminders } from '#app/curing/reminders/oven-reminders.ts';
import { lit, load, minutes, schedule } from './oven-loads.ts';

const remindersOf = (state: ReturnType<typeof load>, now: number) =>
  ovenReminders(state, ovenNow(state, ovenResults(state, []), now), now);

describe('reminders to read the oven', () => {
  it('come every quarter of an hour while it ramps, every half hour while it holds, and at the end of the hold', () => {
    const reminders = remindersOf(load({}), minutes(1));
    const gaps = reminders.slice(1, -1).map((r, i) => ((r.at - (reminders[i]?.at ?? 0)) / 60_000).toFixed(0));
    expect(reminders[0]?.at).toBe(minutes(15));
    expect(gaps[0]).toBe('15');
    expect(new Set(gaps.slice(1))).toEqual(new Set(['30']));
    expect(reminders.at(-1)?.what).toBe('Oven load 12: hold done');
    // 21.5 min up at 2 a minute, 3 h held.
    expect(reminders.at(-1)?.at).toBe(minutes(201.5));
  });

  it('go by what the stages say', () => {
    const own = { ...schedule, readEvery: 3600, readRamping: 600 };
    const state = load({}, { header: { schedule: own } });
    expect(nextReadingDue(state, lit, true)).toBe(minutes(10));
    expect(nextReadingDue(state, lit, false)).toBe(minutes(60));
    expect(remindersOf(state, minutes(1))[0]?.at).toBe(minutes(10));
  });

  it('are few enough for a calendar, and none once the oven is off', () => {
    const long = { ...schedule, stages: [{ kind: 'hold', lasts: 20 * 86_400 } as const], readEvery: 1800 };
    const reminders = remindersOf(load({}, { header: { schedule: long } }), minutes(1));
    expect(reminders).toHaveLength(48);
    expect(reminders.at(-1)?.what).toContain('hold done');
    expect(remindersOf(load({}, { off: 30 }), minutes(31))).toEqual([]);
  });
});

describe('the calendar file', () => {
  const at = Date.UTC(2026, 4, 16, 23, 30);
  const nasty =
    'Read it; air, part \\ boom: 66 °C held, 日本 and a long tail that has to be folded, more than once.\nThen go.';
  const text = calendarFile({
    reminders: [
      { uid: 'a-read-1@tubewright', at, what: 'Read oven load 12', says: nasty },
      { uid: 'a-off@tubewright', at: at + 3_600_000, what: 'Oven load 12: hold done', says: 'Off.' },
    ],
    madeAt: at - 60_000,
    sequence: 3,
  });

  it('is read by another calendar library: times in UTC, alarms, escaped text', () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toContain('Tubewright');
    const events = calendar.getAllSubcomponents('vevent');
    expect(events).toHaveLength(2);
    const [component] = events;
    if (!component) throw new Error('no event');
    const event = new ICAL.Event(component);
    expect(event.uid).toBe('a-read-1@tubewright');
    expect(event.sequence).toBe(3);
    expect(event.startDate.toJSDate().getTime()).toBe(at);
    expect(event.startDate.zone?.tzid).toBe('UTC');
    expect(event.duration.toSeconds()).toBe(300);
    expect(event.summary).toBe('Read oven load 12');
    expect(event.description).toBe(nasty);
    expect(String(component.getFirstPropertyValue('dtstamp'))).toBe('2026-05-16T23:29:00Z');
    const alarm = component.getFirstSubcomponent('valarm');
    expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('PT0S');
  });

  it('ends every line with CR LF and folds it at 75 octets, never inside a character (RFC 5545, 3.1)', () => {
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n'))
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(text).not.toContain('\ufffd');
    expect(folded('x'.repeat(75))).toBe('x'.repeat(75));
    expect(folded('x'.repeat(76))).toBe(`${'x'.repeat(75)}\r\n x`);
  });
});
