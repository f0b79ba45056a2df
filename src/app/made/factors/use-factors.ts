import { type Factor, factorsOf } from '#app/made/learned/factors.ts';
import { madeOfAll } from '#app/made/learned/made-facts.ts';
import { type AllSummaries, useAllSummaries } from '#app/state/all-summaries.ts';
import { settings } from '#app/state/settings.ts';
import { words } from './factor-words.ts';

let last: { all: AllSummaries; units: string; factors: Factor[] } | undefined;

/** What this shop's builds say; undefined until they are read. Reckoned once for both of its screens. */
export function useFactors(): Factor[] | undefined {
  const all = useAllSummaries();
  const { units } = settings.value;
  if (!all) return undefined;
  if (last?.all !== all || last.units !== units) {
    last = { all, units, factors: factorsOf(madeOfAll(all), all.ovens, words) };
  }
  return last.factors;
}
