import { recipe } from '#app/laying-up/mix/recipe.ts';
import { show } from '#app/state/show.ts';
import type { ResinGoal } from '#shared/record/plan.ts';
import {
  type Answer,
  clothMassOf,
  learnedInputs,
  type MakingDraft,
  materialsOf,
  resinGoalOf,
} from './draft.ts';
import { firstGoal } from './first-goal.ts';
import { standing } from './origins.ts';
import { madeOf } from './wall-cloth.ts';

/** Less than this no scale and no cup tells, kg */
const tells = 0.0005;

/** The same goal without what is the shop's own. */
export function bookGoal(goal: ResinGoal, shops: ReadonlySet<string>): ResinGoal {
  const { workingRate, ...rest } = goal;
  return {
    ...rest,
    fiberVolumeFraction: shops.has('fiberVolume') ? firstGoal.fiberVolumeFraction : goal.fiberVolumeFraction,
    lossPerCup: shops.has('lossPerCup') ? firstGoal.lossPerCup : goal.lossPerCup,
    squeezeOut: shops.has('squeezeOut') ? firstGoal.squeezeOut : goal.squeezeOut,
    ...(workingRate !== undefined && !shops.has('workingRate') && { workingRate }),
  };
}

/** What would be mixed by the book, kg; undefined where nothing is the shop's, or the book cannot do it. */
function totalByTheBook(draft: MakingDraft, shops: ReadonlySet<string>): number | undefined {
  const resin = materialsOf(draft)?.resin.body;
  const made = madeOf(draft);
  const clothMass = clothMassOf(draft);
  const goal = resinGoalOf(draft);
  if (!resin || !made || clothMass === undefined || !goal || shops.size === 0) return undefined;
  try {
    const { cloth, coreResin } = made;
    return recipe({ clothMass, cloth, resin, goal: bookGoal(goal, shops), extraKept: coreResin }).total;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** 'Mix 12 g less than by the book' */
export function ByTheBook({ draft, answer }: { draft: MakingDraft; answer: Answer }) {
  if (!answer.ok) return null;
  const taken = Object.entries(standing(draft.from.value, learnedInputs(draft)));
  const shops = new Set(taken.filter(([, t]) => t.of === 'shop').map(([key]) => key));
  const book = totalByTheBook(draft, shops);
  if (book === undefined) return null;
  const more = answer.recipe.total - book;
  if (Math.abs(more) < tells) return <p>By the shop’s figures it is as much as by the book.</p>;
  return (
    <p>
      Mix{' '}
      <strong>
        {show(Math.abs(more), 'mass', 0)} {more < 0 ? 'less' : 'more'}
      </strong>{' '}
      than by the book: these are this shop’s own figures.
    </p>
  );
}
