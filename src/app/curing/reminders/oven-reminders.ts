import type { OvenNow } from '#app/curing/oven/oven-now.ts';
import { readRampingOf } from '#app/curing/oven/reading-due.ts';
import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Reminder } from './ics.ts';

/** More than these nobody wants in a calendar; the last, when the hold is done, is always among them. */
const most = 48;

/**
 * When to read the oven from now on, and when its hold is done, as things stand: so often while it ramps, so often
 * while it holds. Nothing once it is off.
 */
export function ovenReminders(state: OvenState, at: OvenNow, now: number): Reminder[] {
  const { id, number, schedule } = state.header;
  if (!at.burning || at.dueAt === undefined) return [];
  const holdBegins = at.offAt - at.holdLeft * 1000;
  const load = `oven load ${number}`;
  const reminders: Reminder[] = [];
  let due = Math.max(at.dueAt, now + 60_000);
  while (due < at.offAt - 60_000 && reminders.length < most - 1) {
    const ramping = due < holdBegins;
    reminders.push({
      uid: `${id}-read-${reminders.length + 1}@tubewright`,
      at: due,
      what: `Read ${load}`,
      says: ramping
        ? 'It is ramping: read the air and every part, and log it.'
        : `It holds at ${show(at.at, 'temperature', 0)}: read the air and every part, and log it.`,
    });
    due += (ramping ? readRampingOf(schedule) : schedule.readEvery) * 1000;
  }
  if (at.offAt > now) {
    reminders.push({
      uid: `${id}-off@tubewright`,
      at: at.offAt,
      what: `${load.replace('o', 'O')}: hold done`,
      says: 'Read it once more. When the app says the hold is done, turn the oven off.',
    });
  }
  return reminders;
}
