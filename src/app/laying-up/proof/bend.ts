import {
  type BeamSolution,
  type BeamStation,
  beamLine,
  proofLoad,
  tubeSection,
  type WallSection,
} from '#calc';
import { type Setup, supportsOf } from './setup.ts';

/** Standard gravity, m/s2, by definition (3rd CGPM 1901). */
const gravity = 9.80665;

/** A tube as its plan says it should be. */
export interface PlannedTube {
  /** m */
  length: number;
  stations: readonly { readonly at: number; readonly section: WallSection }[];
}

/** It is turned so that it bends as it does most easily. */
export const beamStations = ({ stations }: PlannedTube): BeamStation[] =>
  stations.map(({ at, section }) => ({ at, ei: section.eiLeast, gj: section.gj }));

/** What one kilogram does to the tube; `places` are in the answer besides its stations. */
export function underOneKilogram(
  tube: PlannedTube,
  setup: Setup,
  places: readonly number[] = [],
): BeamSolution {
  return beamLine({
    stations: beamStations(tube),
    supports: supportsOf(setup),
    loads: [
      { kind: 'point', at: setup.hangAt, force: gravity },
      ...places.map((at) => ({ kind: 'point', at, force: 0 }) as const),
    ],
    loadFactor: 1,
  });
}

/** How far it should go down there for each kilogram, m. */
export function expectedEach(tube: PlannedTube, setup: Setup, at: number): number {
  const solution = underOneKilogram(tube, setup, [at]);
  const i = solution.at.findIndex((place) => Math.abs(place - at) < 1e-9);
  return solution.deflection[i] ?? 0;
}

/** Where it is bent most, m, and how much there, N m. */
export function mostBent({ at, moment }: BeamSolution): { at: number; moment: number } {
  let most = 0;
  moment.forEach((m, i) => {
    if (Math.abs(m) > Math.abs(moment[most] ?? 0)) most = i;
  });
  return { at: at[most] ?? 0, moment: Math.abs(moment[most] ?? 0) };
}

/** Modulus along the tube where the test bends it most, Pa: its bending stiffness over that of its ring alone. */
export function plannedModulus(tube: PlannedTube, setup: Setup): number | undefined {
  const place = mostBent(underOneKilogram(tube, setup)).at;
  const nearest = tube.stations.reduce<PlannedTube['stations'][number] | undefined>(
    (best, one) => (!best || Math.abs(one.at - place) < Math.abs(best.at - place) ? one : best),
    undefined,
  );
  if (!nearest) return undefined;
  const { innerDiameter, wallMean: wall, eiLeast } = nearest.section;
  return eiLeast / tubeSection({ innerDiameter, wall }).i;
}

/** What to hang so that it bends as its loads would, once; undefined where such a weight says nothing. */
export function asItsLoads(tube: PlannedTube, setup: Setup, design: BeamSolution) {
  try {
    return proofLoad({
      stations: beamStations(tube),
      supports: supportsOf(setup),
      hangAt: setup.hangAt,
      design,
      proofFactor: 1,
    });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The weight that bends it by a hundredth of its free length, to start with where no loads are known, kg */
export function gentleMass(tube: PlannedTube, setup: Setup): number {
  const most = Math.max(...underOneKilogram(tube, setup).deflection.map(Math.abs));
  return most > 0 ? tube.length / 100 / most : 5;
}
