import { limitsBeside } from '#app/curing/oven/limits-beside.ts';
import { limitsOf } from '#app/curing/oven/oven-limits.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { PlanMaterials } from './plan-estimate.ts';

/** What everything that a plan puts into the oven bears, lowest first. */
export function planLimits(
  plan: Pick<Plan, 'wall' | 'mandrel'>,
  { resin, release, tape }: Pick<PlanMaterials, 'resin' | 'release' | 'tape'>,
): OvenLimit[] {
  const limits = limitsBeside(plan.wall?.pieces, plan.mandrel);
  return limitsOf([{ resin, limits, ...(release && { release }), ...(tape && { tape }) }]);
}
