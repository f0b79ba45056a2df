import { buildState, ovenState } from '#app/state/journals.ts';
import type { Reading } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Inside } from './done-three.ts';
import type { Tube } from './oven-cure.ts';
import { partRuns } from './oven-results.ts';
import { litOf } from './oven-series.ts';

/** The tubes of a load, as far as they are on this phone. */
export function insideOf(load: OvenState): Inside[] {
  return load.builds.flatMap(({ build, round }) => {
    const found = buildState(build);
    return found ? [{ state: found, round }] : [];
  });
}

/** Oven loads that a tube was in before, in the same round. */
const earlierLoads = ({ ovenLoads }: BuildState, round: number, load: string): string[] => [
  ...new Set(
    ovenLoads
      .map((f) => f.entry)
      .flatMap((e) => (e.round === round && e.ovenLoad !== load ? [e.ovenLoad] : [])),
  ),
];

/** The journals that a load's cure is counted from, beside its own. */
export const journalsBefore = (load: string, inside: readonly Inside[]): string[] =>
  inside.flatMap(({ state, round }) => earlierLoads(state, round, load));

function earlierOf({ state, round }: Inside, load: OvenState): Reading[][] {
  return earlierLoads(state, round, load.header.id)
    .flatMap((id) => ovenState(id) ?? [])
    .filter((other) => litOf(other) < litOf(load))
    .sort((a, b) => litOf(a) - litOf(b))
    .flatMap((other) => partRuns(other, [state.header]));
}

/** The tubes of a load with what they were cured by before. */
export const tubesOf = (load: OvenState, inside: readonly Inside[]): Tube[] =>
  inside.map((one) => {
    const { resin, serviceTemperature, mandrel } = one.state.header;
    return {
      resin,
      ...(serviceTemperature !== undefined && { serviceTemperature }),
      ...(mandrel && { mandrel }),
      earlier: earlierOf(one, load),
    };
  });
