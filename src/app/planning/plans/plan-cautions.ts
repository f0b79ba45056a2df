import { rampCautions } from '#app/curing/cure/ramp-cautions.ts';
import { hottestOf } from '#app/curing/oven/oven-schedule.ts';
import { show } from '#app/state/show.ts';
import { glassTransitionReached, heatForTransition } from '#calc';
import type { Plan } from '#shared/record/plan.ts';
import { darkInSun, serviceMargin } from '#shared/reference/service-margin.ts';
import type { PlanMaterials } from './plan-estimate.ts';

export interface PlanCaution {
  title: string;
  says: string;
}

/** Where a plan's cure and service do not go together: what, why, and what would fit. */
export function planCautions(plan: Plan, { resin }: PlanMaterials): PlanCaution[] {
  const hottest = hottestOf(plan.schedule);
  const reaches = glassTransitionReached({ hottest, own: resin.glassTransition });
  const wants = plan.serviceTemperature + serviceMargin;
  const sun = plan.serviceTemperature === darkInSun ? ', here a dark tube in the sun' : '';
  const soft: PlanCaution[] =
    reaches >= wants
      ? []
      : [
          {
            title: `Soft at ${show(plan.serviceTemperature, 'temperature', 0)} in service`,
            says:
              resin.glassTransition !== undefined && resin.glassTransition < wants
                ? `This resin softens at about ${show(resin.glassTransition, 'temperature', 0)} at best, and it should stay ${show(serviceMargin, 'temperatureDifference', 0)} above the hottest service${sun}. Choose a resin for more heat, or, for a white tube, change the plan.`
                : `Cured at ${show(hottest, 'temperature', 0)} it softens at about ${show(reaches, 'temperature', 0)}, and it should stay ${show(serviceMargin, 'temperatureDifference', 0)} above the hottest service${sun}. Cure at ${show(heatForTransition({ wanted: wants }), 'temperature', 0)} or more, or postcure.`,
          },
        ];
  return [...soft, ...rampCautions(plan.schedule, resin)];
}
