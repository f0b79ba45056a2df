import { useMemo } from 'preact/hooks';
import { type Factor, factorsOf } from '#app/learned/factors.ts';
import { madeOfAll } from '#app/learned/made-facts.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { settings } from '#app/state/settings.ts';
import { words } from './factor-words.ts';

/** What this shop's builds say; undefined until they are read. */
export function useFactors(): Factor[] | undefined {
  const all = useAllSummaries();
  const { units } = settings.value;
  return useMemo(() => all && factorsOf(madeOfAll(all), all.ovens, words), [all, units]);
}
