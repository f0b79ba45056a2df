import { hottestOf } from '#app/plans/plan-cautions.ts';
import type { BuildHeader } from '#shared/record/build.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';

/** The cutoff is set this far above the lowest limit, K (common practice, no source). */
const cutoffAbove = 10;

const releaseWords: Record<ReleaseSystem['kind'], string> = {
  filmSleeve: 'release film',
  waxAndPva: 'PVA coat',
  semiPermanent: 'release',
  other: 'release',
};

function limitsOfBuild({ tape, release, resin }: BuildHeader): OvenLimit[] {
  const limits: OvenLimit[] = [];
  if (release) {
    limits.push({ name: releaseWords[release.kind], sees: 'part', highest: release.highestTemperature });
  }
  if (resin.highestTemperature !== undefined) {
    limits.push({ name: 'resin', sees: 'part', highest: resin.highestTemperature });
  }
  if (tape) limits.push({ name: 'tape', sees: 'air', highest: tape.highestTemperature });
  return limits;
}

/** What everything in the oven bears: of each kind the lowest, lowest first. */
export function limitsOf(builds: readonly BuildHeader[]): OvenLimit[] {
  const lowest = new Map<string, OvenLimit>();
  for (const limit of builds.flatMap(limitsOfBuild)) {
    const known = lowest.get(limit.name);
    if (!known || limit.highest < known.highest) lowest.set(limit.name, limit);
  }
  return [...lowest.values()].sort((a, b) => a.highest - b.highest);
}

/** Limits that the schedule itself goes over, and by how much, K */
export function brokenBy(
  schedule: CureSchedule,
  limits: readonly OvenLimit[],
): { limit: OvenLimit; by: number; hottest: number }[] {
  const hottest = hottestOf(schedule);
  return limits
    .filter((limit) => hottest > limit.highest)
    .map((limit) => ({ limit, by: hottest - limit.highest, hottest }));
}

/** Where the over-temperature cutoff belongs, K; undefined while no limit is known. */
export function cutoffOf(limits: readonly OvenLimit[]): number | undefined {
  const [first, ...rest] = limits.map((limit) => limit.highest);
  return first === undefined ? undefined : rest.reduce((a, b) => Math.min(a, b), first) + cutoffAbove;
}
