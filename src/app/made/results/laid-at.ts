import { buildShelf, walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { sampleNear } from '#app/planning/wall/pictures/angles.ts';
import { rollOf } from '#app/planning/wall/wall-model.ts';
import type { Roll } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';

/** What was laid at a station of a tube. */
export interface LaidAt {
  /** What the first ply lay on: the mandrel and its release, m */
  inner: number;
  /** Turns of cloth, laps and all. */
  plies: number;
  /** Of the cloths there together, kg/m2 a ply and kg/m3 */
  arealWeight: number;
  fiberDensity: number;
  /** Core and film in the wall, m */
  between: number;
}

function rollOfBuild(header: BuildHeader): Roll | undefined {
  const plan = walledPlanOf(header);
  if (!plan) return undefined;
  try {
    return rollOf(plan, buildShelf(header, plan));
  } catch (error) {
    // A cloth that is gone from the shelf: the wall is told as for a tube that was not drawn.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function rolledAt(roll: Roll, station: number): LaidAt | undefined {
  const i = sampleNear(roll, station);
  let [plies, mass, volume, between] = [0, 0, 0, 0];
  for (const { spec, wraps } of roll.pieces) {
    const turns = wraps[i] ?? 0;
    const { kind, arealWeight = 0, density = 1, thickness } = spec;
    if (kind === 'cloth') {
      plies += turns;
      mass += turns * arealWeight;
      volume += (turns * arealWeight) / density;
    } else between += turns * thickness;
  }
  if (volume <= 0) return undefined;
  const inner = roll.diameter[i] ?? 0;
  return { inner, plies, arealWeight: mass / plies, fiberDensity: mass / volume, between };
}

/** As its drawn wall has it at that station, else the same all along; undefined where nobody wrote it down. */
export function laidAt(header: BuildHeader, station: number): LaidAt | undefined {
  const roll = rollOfBuild(header);
  const rolled = roll && rolledAt(roll, station);
  if (rolled) return rolled;
  const { mandrelDiameter, plies, cloth, release } = header;
  if (mandrelDiameter === undefined || plies === undefined) return undefined;
  const { arealWeight, fiberDensity } = cloth;
  return { inner: mandrelDiameter + (release?.buildUp ?? 0), plies, arealWeight, fiberDensity, between: 0 };
}
