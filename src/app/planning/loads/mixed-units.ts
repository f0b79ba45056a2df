import type { LoadCase } from '#shared/record/load-plan.ts';
import { loadFigure, loadTitle, sameWords } from './load-words.ts';

const pounds = /lb|#/i;
const newtons = /N/;

/** Which of two kinds of unit a load was written in; undefined where it says none. */
export function unitsOf(typed: string | undefined): 'pounds' | 'newtons' | undefined {
  if (typed === undefined) return undefined;
  if (pounds.test(typed)) return 'pounds';
  return newtons.test(typed) ? 'newtons' : undefined;
}

/** Loads of one case that were written in pounds beside others in newtons: said once, since either may be a slip. */
export function mixedUnits({ loads, name }: LoadCase): string | undefined {
  const inPounds = loads.find((l) => unitsOf(l.typed) === 'pounds');
  const inNewtons = loads.find((l) => unitsOf(l.typed) === 'newtons');
  if (!inPounds || !inNewtons) return undefined;
  const said = [inPounds, inNewtons].map((l) => {
    const is = sameWords(l.typed ?? '', loadFigure(l)) ? '' : `, which is ${loadFigure(l)}`;
    return `${loadTitle(l).toLowerCase()} was written as ${l.typed}${is}`;
  });
  return `In ${name} the ${said.join('; the ')}: check that both are meant.`;
}
