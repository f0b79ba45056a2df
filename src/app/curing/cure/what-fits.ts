import type { Broken } from '#app/curing/oven/oven-limits.ts';
import { onMandrel, stretchesOf } from '#app/curing/oven/oven-schedule.ts';
import { activationEnergy, scheduleThatFits } from '#calc';
import type { CureSchedule, CureStage } from '#shared/record/cure-schedule.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { bandOf } from './bands.ts';
import { wholeDegrees } from './whole-degrees.ts';

/** Where a data sheet gives one cure time only, J/mol (common practice, no source). */
const assumedEnergy = 55_000;

/** A schedule under every limit that uses the same share of the data sheet's cure time. */
export interface Fit {
  schedule: CureSchedule;
  /** K, and s of all holds there */
  at: number;
  lasts: number;
  /** J/mol by which heat shortens the cure; `assumed` where the sheet gives one cure time or none */
  energy: number;
  assumed: boolean;
}

/** A hold longer than this is another resin's job, s */
const longest = 14 * 86_400;
/** Holds are written in these, rounded up, s */
const grain = 300;
/** With less room than this above its start a schedule cannot cure, K */
const leastRise = 5;

function energyOf({ curePoints }: ResinSystem): number | undefined {
  if (curePoints.length < 2) return undefined;
  try {
    const energy = activationEnergy(curePoints);
    return energy > 0 ? energy : undefined;
  } catch (error) {
    // Two times at one temperature say nothing about heat.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

const roundedUp = (stage: CureStage, index: number, before: readonly CureStage[]): CureStage => {
  const was = before[index];
  if (stage.kind !== 'hold' || (was?.kind === 'hold' && was.lasts === stage.lasts)) return stage;
  return { ...stage, lasts: Math.ceil(stage.lasts / grain - 1e-9) * grain };
};

/** What would fit: the same cure time used at the highest temperature that every broken limit allows. */
export function whatFits(
  schedule: CureSchedule,
  broken: readonly Broken[],
  resins: readonly ResinSystem[],
): Fit | undefined {
  const [first, ...others] = broken.map(({ limit, margin }) => limit.highest - margin);
  if (first === undefined) return undefined;
  const at = wholeDegrees(others.reduce((a, b) => Math.min(a, b), first));
  const { start } = schedule;
  if (at < start + leastRise) return undefined;
  const known = resins.map(energyOf);
  const assumed = resins.length === 0 || known.includes(undefined);
  const energies = [...known.filter((e) => e !== undefined), ...(assumed ? [assumedEnergy] : [])];
  const energy = energies.reduce((a, b) => Math.max(a, b), 0);
  const cure = onMandrel(schedule);
  const rest = schedule.stages.slice(cure.stages.length);
  const lies = broken.some(({ limit }) => limit.name === 'resin' || limit.name === 'core');
  const whole = lies ? schedule.stages : cure.stages;
  const fits = scheduleThatFits({ start, stages: whole, highest: at, activationEnergy: energy });
  const stages = [
    ...(fits.stages as CureStage[]).map((s, i) => roundedUp(s, i, whole)),
    ...(lies ? [] : rest),
  ];
  const made = { ...schedule, stages, ...bandOf({ start, stages }, schedule) };
  const lasts = stretchesOf(made)
    .filter((s) => s.kind === 'hold' && Math.abs(s.temperature - at) < 1e-6)
    .reduce((sum, s) => sum + s.to - s.from, 0);
  return lasts > longest ? undefined : { schedule: made, at, lasts, energy, assumed };
}
