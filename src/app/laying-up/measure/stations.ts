import type { BuildState } from '#shared/record/build-state.ts';

/** Both ends, a hand in from the edge, and three between: enough to see a taper or a thick end. */
export function stationsFor(tubeLength: number | undefined): number[] {
  if (tubeLength === undefined) return [];
  return [0.05, 0.25, 0.5, 0.75, 0.95].map((share) => Math.round(share * tubeLength * 1000) / 1000);
}

/** The usual stations that nobody has measured yet. */
export function stationsOpen({ header, measurements }: BuildState): number[] {
  const done = new Set(measurements.map((m) => m.entry.station));
  return stationsFor(header.tubeLength).filter((station) => !done.has(station));
}

/** Every usual station has a reading; without a length there are none, and the builder says when it is enough. */
export const allMeasured = (state: BuildState): boolean =>
  state.header.tubeLength !== undefined && stationsOpen(state).length === 0;
