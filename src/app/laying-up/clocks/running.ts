import { computed } from '@preact/signals';
import { benchClocks, openBuilds, openOvenLoads } from '#app/state/journals.ts';
import { now } from '#app/state/now.ts';
import { isStale, listClocks } from './clock-list.ts';
import { wetCups } from './tape-deadline.ts';

/** All clocks of the shop that are not answered, the most urgent first; read anew at every tick. */
export const runningClocks = computed(() =>
  listClocks(
    { builds: openBuilds.value, ovenLoads: openOvenLoads.value, clocks: benchClocks.value },
    now.value,
  ),
);

/** A route left unticked must not hold back updates and reminders for ever, ms */
const wetFor = 24 * 3600_000;

/** Resin lies wet on some cloth: no moment for reminders, updates or anything else. */
export const resinIsWet = computed(() =>
  openBuilds.value.some((build) => wetCups(build).some((c) => now.value - c.hardenerAt < wetFor)),
);

export const anyClockRuns = computed(() => runningClocks.value.some((c) => !isStale(c)));
