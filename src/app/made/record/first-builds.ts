import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { theStore } from '#app/state/shop.ts';
import type { BuildSummary } from '#shared/record/summary.ts';

/** A few screens of a list */
const firstPage = 40;

async function firstBuilds(limit: number): Promise<BuildSummary[]> {
  const { summaries } = await theStore().summaries({ of: 'build', limit });
  return summaries.filter((s) => s.of === 'build');
}

/** All builds, newest first; until they have been read, the newest of them. */
export function useBuildsSoon(): readonly BuildSummary[] | undefined {
  const all = useAllSummaries()?.builds;
  const first = useSignal<readonly BuildSummary[] | undefined>(undefined);
  useEffect(() => {
    firstBuilds(firstPage).then((builds) => {
      first.value = builds;
    });
  }, []);
  return all ?? first.value;
}
