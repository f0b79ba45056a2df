import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState, ReadingAt } from '#shared/record/oven-state.ts';

/** While warming, readings are due at least this often, s (10 to 15 min: common practice, no source). */
const dueWhileWarming = 900;

/** The newest reading of all channels; each channel's stand in the order they were read. */
export function newestReading({ readings }: OvenState): ReadingAt | undefined {
  return readings
    .flatMap((r) => r.at.at(-1) ?? [])
    .sort((a, b) => a.at - b.at)
    .at(-1);
}

/** Until when a logger's files speak of it, ms; 0 without one */
export const loggedUntil = ({ loggerFiles }: OvenState): number =>
  Math.max(0, ...loggerFiles.map(({ entry }) => entry.until));

/** So often a reading is due while it ramps, s: as the schedule says, else as is usual */
export const readRampingOf = ({ readRamping, readEvery }: CureSchedule): number =>
  readRamping ?? Math.min(readEvery, dueWhileWarming);

/** When the oven wants its next reading, ms: oftener while it warms. */
export function nextReadingDue(state: OvenState, litAt: number, warming: boolean): number {
  const { schedule } = state.header;
  const every = warming ? readRampingOf(schedule) : schedule.readEvery;
  return Math.max(litAt, newestReading(state)?.at ?? 0, loggedUntil(state)) + every * 1000;
}
