import type { BuildHeader } from '#shared/record/build.ts';
import type { WallPlan } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';

/** The plan that a build was started from, as it was then. */
export function planOfBuild({ plan }: BuildHeader): Plan | undefined {
  return plan?.type === 'plan' ? plan.body : undefined;
}

/** Its wall, where the plan was drawn piece by piece. */
export const wallOfBuild = (header: BuildHeader): WallPlan | undefined => planOfBuild(header)?.wall;
