import { stopWords, strengthPath } from '#app/planning/carry/carry-words.ts';
import { type TubeStop, tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { theShelf } from '#app/planning/wall/wall-model.ts';
import type { LoadCase, LoadPlan } from '#shared/record/load-plan.ts';
import type { Plan } from '#shared/record/plan.ts';
import { noLoads } from './loads-edits.ts';
import { loadTroublesOf, type Trouble } from './troubles.ts';

/** Why the wall itself cannot be reckoned, and where that is mended. */
function stopTrouble(doc: string, stop: TubeStop): Trouble {
  const { title, says, cloth } = stopWords(stop);
  const where = cloth
    ? { to: strengthPath(cloth), act: 'Put the cloth right' }
    : { to: `/plan/${doc}/wall`, act: 'Put the wall right' };
  return { says: `${title}. ${says}`, ...where };
}

function troublesWith(doc: string, plan: Plan, loads: LoadPlan, shelf = theShelf): Trouble[] {
  const home = `/plan/${doc}`;
  const own = loadTroublesOf(loads, plan.tubeLength).map((t) => ({ ...t, to: `${home}/loads${t.to}` }));
  const tube = tubeOfPlan(plan, shelf);
  return tube.ok ? own : [...own, ...tube.stops.map((stop) => stopTrouble(doc, stop))];
}

/** All that keeps a plan's tube from being checked under its loads, with addresses that lead to where it is mended. */
export const troublesOf = (doc: string, plan: Plan, shelf = theShelf): Trouble[] =>
  troublesWith(doc, plan, plan.loads ?? noLoads, shelf);

/** What keeps one case from being drawn: its lines need no safety factor, and no other case. */
export const caseTroublesOf = (doc: string, plan: Plan, one: LoadCase): Trouble[] =>
  troublesWith(doc, plan, { ...(plan.loads ?? noLoads), cases: [one], safetyFactor: 1 });
