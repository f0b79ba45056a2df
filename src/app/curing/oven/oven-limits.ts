import { limitBreaks } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import { limitSource } from '#shared/reference/limit-sources.ts';
import { corners, hottestOf, onMandrel } from './oven-schedule.ts';

/** The cutoff is set this far above the lowest limit, K (common practice, no source). */
const cutoffAbove = 10;

const releaseWords: Record<ReleaseSystem['kind'], string> = {
  filmSleeve: 'release film',
  waxAndPva: 'PVA coat',
  semiPermanent: 'release',
  other: 'release',
};

/** What of a tube a limit can be of. */
export type Bearing = Pick<BuildHeader, 'tape' | 'release' | 'resin' | 'limits'>;

/** Still there when the tube is off its mandrel. */
const stays = (limit: OvenLimit) => limit.name === 'resin' || limit.name === 'core';

function limitsOfOne({ tape, release, resin, limits }: Bearing): OvenLimit[] {
  const found: OvenLimit[] = [...(limits ?? [])];
  const add = (
    name: string,
    sees: OvenLimit['sees'],
    of: { name: string; highestTemperature?: number | undefined; typical?: boolean | undefined },
  ) => {
    const highest = of.highestTemperature;
    if (highest !== undefined) found.push({ name, sees, highest, source: limitSource(of) });
  };
  if (release) add(releaseWords[release.kind], 'part', release);
  add('resin', 'part', resin);
  if (tape) add('tape', 'air', tape);
  return found;
}

/** What everything in the oven bears: of each kind the lowest, lowest first. */
export function limitsOf(tubes: readonly Bearing[], offMandrel = false): OvenLimit[] {
  const lowest = new Map<string, OvenLimit>();
  for (const limit of tubes.flatMap(limitsOfOne)) {
    const known = lowest.get(limit.name);
    if (offMandrel && !stays(limit)) continue;
    if (!known || limit.highest < known.highest) lowest.set(limit.name, limit);
  }
  return [...lowest.values()].sort((a, b) => a.highest - b.highest);
}

/** Kept from a limit, K: what its sensor reads too low, and the hottest corner of the oven. */
export type Margins = Partial<Record<OvenLimit['sees'], number>>;

export interface Broken {
  limit: OvenLimit;
  /** K at the most, and s over it in all */
  by: number;
  seconds: number;
  /** s from lighting the oven */
  from: number;
  until: number;
  /** The hottest that the schedule asks for while it is in there, K */
  hottest: number;
  /** K that was kept from the limit */
  margin: number;
}

/** Limits that the schedule itself goes over: by how much, for how long. */
export function brokenBy(
  schedule: CureSchedule,
  limits: readonly OvenLimit[],
  margins: Margins = {},
): Broken[] {
  return limits.flatMap((limit) => {
    const feels = stays(limit) ? schedule : onMandrel(schedule);
    const margin = margins[limit.sees] ?? 0;
    const broken = limitBreaks({ readings: corners(feels), highest: limit.highest, margin });
    const { over, seconds, from, until } = broken;
    if (from === undefined || until === undefined) return [];
    return [{ limit, by: over, seconds, from, until, hottest: hottestOf(feels), margin }];
  });
}

/** Where the over-temperature cutoff belongs, K; undefined while no limit is known. */
export function cutoffOf(limits: readonly OvenLimit[]): number | undefined {
  const [first, ...rest] = limits.map((limit) => limit.highest);
  return first === undefined ? undefined : rest.reduce((a, b) => Math.min(a, b), first) + cutoffAbove;
}
