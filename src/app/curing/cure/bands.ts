import { hottestOf, onMandrel, stretchesOf } from '#app/curing/oven/oven-schedule.ts';
import type { CureSchedule, CureStage } from '#shared/record/cure-schedule.ts';

/** A hold counts from so much below its temperature, and is too hot so much above it, K (common practice, no source). */
const below = 3;
const above = 6;

type Band = Pick<CureSchedule, 'holdLow' | 'holdHigh'>;
type Shape = Pick<CureSchedule, 'start' | 'stages'>;

const asSchedule = (shape: Shape): CureSchedule => ({ ...shape, holdLow: shape.start, readEvery: 1800 });

/** Where the hottest hold lies, K; the hottest of all where nothing is held */
export function holdAt(shape: Shape): number {
  const whole = asSchedule(shape);
  const tube = onMandrel(whole);
  const holds = (of: CureSchedule) =>
    stretchesOf(of)
      .filter((s) => s.kind === 'hold')
      .map((s) => s.temperature);
  const [first, ...others] = holds(tube).length > 0 ? holds(tube) : holds(whole);
  return first === undefined ? hottestOf(whole) : others.reduce((a, b) => Math.max(a, b), first);
}

/** The band in which its hold counts. As long as the hold stays where it was, its own band stays. */
export function bandOf(shape: Shape, before?: CureSchedule): Band {
  const at = holdAt(shape);
  if (before && Math.abs(holdAt(before) - at) < 1e-6) {
    const { holdLow, holdHigh } = before;
    return { holdLow, ...(holdHigh !== undefined && { holdHigh }) };
  }
  const room = shape.stages.every((s) => s.kind === 'hold');
  return { holdLow: at - below, ...(!room && { holdHigh: at + above }) };
}

/** The cure on the mandrel, and the free-standing postcure that is an oven load of its own. */
export function splitPostcure(schedule: CureSchedule): { cure: CureSchedule; postcure?: CureSchedule } {
  const cure = onMandrel(schedule);
  const rest: CureStage[] = schedule.stages.slice(cure.stages.length);
  if (rest.length === 0) return { cure };
  const { holdLow: _low, holdHigh: _high, ...kept } = schedule;
  const postcure = { ...kept, stages: rest, ...bandOf({ start: schedule.start, stages: rest }) };
  return cure.stages.length === 0 ? { cure: postcure } : { cure, postcure };
}
