import { hottestOf, onMandrel } from '#app/curing/oven/oven-schedule.ts';
import { show } from '#app/state/show.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { Tape } from '#shared/record/tape.ts';

/** What the tape does at the hottest of a schedule: a fact worth a note, never an error. */
export function tapeSays(schedule: CureSchedule, { shrinksFrom, pullsFrom }: Tape): string {
  const hottest = hottestOf(onMandrel(schedule));
  const [from, pulls, at] = [shrinksFrom, pullsFrom, hottest].map((k) => show(k, 'temperature', 0));
  if (hottest < shrinksFrom)
    return `Tape: winding tension only. It begins to shrink at ${from}, this goes to ${at}.`;
  if (hottest < pullsFrom) return `Tape: shrinks a little from ${from}. It pulls hardest from ${pulls}.`;
  return `Tape: shrinks from ${from}, pulls hardest from ${pulls}.`;
}
