import { lastReading, readingDue } from '#app/curing/oven/reading-due.ts';
import { buildName, ovenName } from '#app/laying-up/clocks/clock-list.ts';
import { shortFigure } from '#app/laying-up/clocks/clock-words.ts';
import { runningClocks } from '#app/laying-up/clocks/running.ts';
import { Row } from '#app/parts/rows.tsx';
import { now } from '#app/state/now.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatAgo, formatClockTime } from '#shared/units/time.ts';
import { nextOf } from './bench-now.ts';

/** A build on the bench: its next step, and its most urgent clock. */
export function BuildRow({ state }: { state: BuildState }) {
  const clock = runningClocks.value.find((c) => c.subject === state.header.id);
  return (
    <Row
      to={`/build/${state.header.id}`}
      title={buildName(state)}
      about={nextOf(state)}
      value={clock && `${clock.name}: ${shortFigure(clock)}`}
    />
  );
}

function ovenSays(state: OvenState): string {
  const due = readingDue(state);
  if (due !== undefined) {
    const late = now.value - due;
    if (late > 0) return `Reading was due ${formatAgo(late / 1000)}`;
    return `Next reading due ${formatClockTime(due)}`;
  }
  if (state.offAt !== undefined) return `Off since ${formatClockTime(state.offAt)}, cooling`;
  return 'Not lit yet';
}

export function OvenRow({ state }: { state: OvenState }) {
  const last = lastReading(state);
  return (
    <Row
      to={`/oven/${state.header.id}`}
      title={ovenName(state)}
      about={ovenSays(state)}
      value={last !== undefined && show(last, 'temperature')}
    />
  );
}

/** Timers of the bench, and whatever else runs without a build or an oven load. */
export function TimerRows() {
  return runningClocks.value
    .filter((c) => c.of === undefined)
    .map((c) => <Row key={c.clock} to="/clocks" title={c.name} value={shortFigure(c)} />);
}
