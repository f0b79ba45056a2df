import { hottestOf } from '#app/oven/oven-schedule.ts';
import { show } from '#app/state/show.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { PlanMaterials } from './plan-estimate.ts';

/** A glass transition ends 5 to 25 K above the hottest cure; this is counted on (common practice, no source). */
const aboveCure = 15;
/** And has to stay this far above the hottest service, K (common practice, no source). */
const serviceMargin = 15;

export interface PlanCaution {
  title: string;
  says: string;
}

function limitCaution(what: string, limit: number | undefined, hottest: number): PlanCaution[] {
  if (limit === undefined || hottest <= limit) return [];
  return [
    {
      title: `${show(hottest - limit, 'temperatureDifference', 0)} over what the ${what} stands`,
      says: `The schedule goes to ${show(hottest, 'temperature', 0)}, the ${what} is good for ${show(limit, 'temperature', 0)}. Cure cooler and longer, or choose another ${what}.`,
    },
  ];
}

/** What gives way first, for the picture of the cure. */
export function lowestLimit({ resin, release, tape }: PlanMaterials) {
  const limits = [
    { limitName: 'resin limit', limit: resin.highestTemperature },
    { limitName: 'release limit', limit: release?.highestTemperature },
    { limitName: 'tape limit', limit: tape?.highestTemperature },
  ];
  return limits
    .filter((l): l is { limitName: string; limit: number } => l.limit !== undefined)
    .sort((a, b) => a.limit - b.limit)[0];
}

/** Where a plan's cure, materials and service do not go together: what, why, and what would fit. */
export function planCautions(plan: Plan, { resin, release, tape }: PlanMaterials): PlanCaution[] {
  const hottest = hottestOf(plan.schedule);
  const reaches = Math.min(resin.glassTransition ?? Number.POSITIVE_INFINITY, hottest + aboveCure);
  const wants = plan.serviceTemperature + serviceMargin;
  const soft: PlanCaution[] =
    reaches >= wants
      ? []
      : [
          {
            title: `Soft at ${show(plan.serviceTemperature, 'temperature', 0)} in service`,
            says:
              resin.glassTransition !== undefined && resin.glassTransition < wants
                ? `This resin softens at about ${show(resin.glassTransition, 'temperature', 0)} at best, and it should stay ${show(serviceMargin, 'temperatureDifference', 0)} above the hottest service. Choose a resin for more heat.`
                : `Cured at ${show(hottest, 'temperature', 0)} it softens at about ${show(reaches, 'temperature', 0)}, and it should stay ${show(serviceMargin, 'temperatureDifference', 0)} above the hottest service. Cure at ${show(wants - aboveCure, 'temperature', 0)} or more, or postcure.`,
          },
        ];
  return [
    ...limitCaution('release', release?.highestTemperature, hottest),
    ...limitCaution('tape', tape?.highestTemperature, hottest),
    ...limitCaution('resin', resin.highestTemperature, hottest),
    ...soft,
  ];
}
