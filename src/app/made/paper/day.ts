import { formatClockTime } from '#shared/units/time.ts';

/** '2026-11-04': on paper the year is missed soonest, and no order of day and month can be mistaken. */
export const paperDay = (at: number, zone: number): string =>
  new Date(at + zone * 60_000).toISOString().slice(0, 10);

/** '2026-11-04, 8:23 PM', as it was lived. */
export const paperTime = (at: number, zone: number): string =>
  `${paperDay(at, zone)}, ${formatClockTime(at, zone)}`;
