import { squeezeTest, type WallSection } from '#calc';
import type { PlannedOfBuild } from './planned-of-build.ts';

/** A squeeze being set up: where, and over how much of its length, m */
export interface Squeezing {
  station: number;
  length: number;
  /** N, and as typed */
  force?: { si: number; typed: string };
}

/** The end whose ring is softer, a jaw's width in. */
export function thinEnd({ tube }: PlannedOfBuild, length = 1): number {
  const [first, last] = [tube?.stations[0]?.section, tube?.stations.at(-1)?.section];
  const near = Math.min(0.02, length / 20);
  const softer = first && last && last.ringStiffness < first.ringStiffness;
  return softer ? Math.round((length - near) * 1000) / 1000 : near;
}

export function sectionAt({ tube }: PlannedOfBuild, station: number): WallSection | undefined {
  return tube?.stations.reduce<(typeof tube.stations)[number] | undefined>(
    (best, one) => (!best || Math.abs(one.at - station) < Math.abs(best.at - station) ? one : best),
    undefined,
  )?.section;
}

/** How much narrower it should get, m */
export function expectedNarrower(section: WallSection, { length }: Squeezing, force: number): number {
  return force / length / section.ringStiffness;
}

/** The force that gives a hundredth of the diameter: enough to read, far from what hurts, N */
export function gentleForce(section: WallSection, { length }: Squeezing): number {
  return (section.outsideDiameter / 100) * length * section.ringStiffness;
}

/** Why it cannot be right; undefined when it can. */
export function whyNot(section: WallSection | undefined, squeezing: Squeezing, narrower: number) {
  if (!section || !squeezing.force) return undefined;
  try {
    const { length: width, force } = squeezing;
    squeezeTest({ force: force.si, deflection: narrower, width, radius: section.radius });
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) {
      return 'More than a tenth of the diameter: a ring is no longer straight in its ways there. Squeeze less.';
    }
    throw error;
  }
}
