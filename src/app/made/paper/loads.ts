import { insideOf, tubesOf } from '#app/curing/oven/earlier-cures.ts';
import type { OvenResults } from '#app/curing/oven/oven-results.ts';
import { resultsRead } from '#app/curing/oven/use-oven-results.ts';
import { ovenState } from '#app/state/journals.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { OvenState } from '#shared/record/oven-state.ts';

export interface LoadOnPaper {
  state: OvenState;
  results: OvenResults;
}

export const loadIds = ({ ovenLoads }: BuildState): string[] => [
  ...new Set(ovenLoads.map((f) => f.entry.ovenLoad)),
];

/** The firings that this tube was in, as far as they are on this phone, with what loggers read. */
export function loadsOf(build: BuildState): Promise<LoadOnPaper[]> {
  const states = loadIds(build).flatMap((id) => ovenState(id) ?? []);
  return Promise.all(
    states.map(async (state) => {
      const inside = tubesOf(state, insideOf(state));
      return { state, results: await resultsRead(state, inside.length > 0 ? inside : [build.header]) };
    }),
  );
}
