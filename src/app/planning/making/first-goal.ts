import type { ResinGoal } from '#shared/record/plan.ts';

/** Where a builder without builds of their own starts (common practice, no source). */
export const firstGoal: ResinGoal = { fiberVolumeFraction: 0.35, lossPerCup: 0.015, squeezeOut: 0.1 };
