import { tubeOfPlan } from '#app/carry/tube-of-plan.ts';
import type { LoadCase, LoadPlan } from '#shared/record/load-plan.ts';
import type { Plan } from '#shared/record/plan.ts';
import { noLoads } from './loads-edits.ts';
import { stopTrouble } from './stop-words.ts';
import { loadTroublesOf, type Trouble } from './troubles.ts';

function troublesWith(doc: string, plan: Plan, loads: LoadPlan): Trouble[] {
  const home = `/plan/${doc}`;
  const own = loadTroublesOf(loads, plan.tubeLength).map((t) => ({ ...t, to: `${home}/loads${t.to}` }));
  const tube = tubeOfPlan(plan);
  return tube.ok ? own : [...own, ...tube.stops.map((stop) => stopTrouble(doc, stop))];
}

/** All that keeps a plan's tube from being checked under its loads, with addresses that lead to where it is mended. */
export const troublesOf = (doc: string, plan: Plan): Trouble[] =>
  troublesWith(doc, plan, plan.loads ?? noLoads);

/** What keeps one case from being drawn: its lines need no safety factor, and no other case. */
export const caseTroublesOf = (doc: string, plan: Plan, one: LoadCase): Trouble[] =>
  troublesWith(doc, plan, { ...(plan.loads ?? noLoads), cases: [one], safetyFactor: 1 });
