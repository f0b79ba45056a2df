import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { holding } from '#shared/record/journal.ts';
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

/** When the oven wants its next reading, ms; nothing before it is lit and after it is off. */
export function readingDue(state: OvenState): number | undefined {
  if (state.litAt === undefined || state.offAt !== undefined) return undefined;
  const last = lastReading(state);
  const warming = last === undefined || last < state.header.schedule.holdLow;
  return nextReadingDue(state, state.litAt, warming);
}

/** The newest reading of all channels, K; nothing where a logger's file speaks of a later time */
export function lastReading(state: OvenState): number | undefined {
  const newest = newestReading(state);
  return newest && newest.at >= loggedUntil(state) ? newest.temperature : undefined;
}

/** A thumb puts a due reading off for so long, ms */
const putOffFor = 600_000;

/** What a press puts it off by. */
export const readingClock = 'reading';

/** A reading that is due now, ms; nothing while it is put off, and nothing before it is due, or it would keep the screen on through the cure. */
export function readingDueNow(state: OvenState, now: number): number | undefined {
  const due = readingDue(state);
  if (due === undefined || due > now) return undefined;
  const isPutOff = holding(state.facts).some(
    ({ entry: e }) =>
      e.kind === 'clockAnswered' &&
      e.clock === readingClock &&
      e.happenedAt >= due &&
      now < e.happenedAt + putOffFor,
  );
  return isPutOff ? undefined : due;
}
