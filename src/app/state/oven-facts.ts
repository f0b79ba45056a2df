import type { Reading } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState, ReadingAt } from '#shared/record/oven-state.ts';
import type { OvenSummary } from '#shared/record/summary.ts';

// Folded at the first screen for every open oven load, so it does without the whole of calc's results.

const asReadings = (at: readonly ReadingAt[]): Reading[] =>
  at.map((r) => ({ time: r.at / 1000, temperature: r.temperature }));

function highestOf(readings: readonly Reading[]): number | undefined {
  return readings.reduce<number | undefined>(
    (most, r) => (most === undefined || r.temperature > most ? r.temperature : most),
    undefined,
  );
}

function steepestOf(readings: readonly Reading[]): number {
  return readings.reduce((most, r, i) => {
    const before = readings[i - 1];
    return before && r.time > before.time
      ? Math.max(most, (r.temperature - before.temperature) / (r.time - before.time))
      : most;
  }, 0);
}

/** Mean of what was read between the first and the last reading in the hold band, K */
function heldAt(readings: readonly Reading[], { holdLow }: CureSchedule): number | undefined {
  const inBand = readings.flatMap((r, i) => (r.temperature >= holdLow ? [i] : []));
  const [from = 0, to = -1] = [inBand[0], inBand.at(-1)];
  const held = readings.slice(from, to + 1);
  let [area, lasted] = [0, 0];
  held.forEach((r, i) => {
    const before = held[i - 1];
    if (!before) return;
    area += ((r.temperature + before.temperature) / 2) * (r.time - before.time);
    lasted += r.time - before.time;
  });
  return lasted > 0 ? area / lasted : held[0]?.temperature;
}

/** What each tube's own sensor read; the air's where it had none. */
export function tubesOf({ builds, readings, header }: OvenState): OvenSummary['tubes'] {
  return builds.map(({ build, round, channel }) => {
    const own = readings.find((r) => r.channel.id === channel)?.at ?? [];
    const air = readings.find((r) => r.channel.sees === 'air')?.at ?? [];
    const read = asReadings(own.length > 0 ? own : air);
    const highest = highestOf(read);
    const held = heldAt(read, header.schedule);
    return {
      build,
      round,
      ...(highest !== undefined && { highest }),
      ...(read.length > 1 && { steepest: steepestOf(read) }),
      ...(held !== undefined && { held }),
    };
  });
}

export function highestAir({ readings }: OvenState): number | undefined {
  const air = readings.filter((r) => r.channel.sees === 'air').flatMap((r) => asReadings(r.at));
  return highestOf(air);
}

/** Where the schedule holds hottest, K */
export function wantedHold({ start, stages }: CureSchedule): number | undefined {
  let at = start;
  let hottest: number | undefined;
  for (const stage of stages) {
    if (stage.kind !== 'hold') at = stage.to;
    else if (hottest === undefined || at > hottest) hottest = at;
  }
  return hottest;
}
