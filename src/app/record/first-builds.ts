import { theStore } from '#app/state/shop.ts';
import type { BuildSummary } from '#shared/record/summary.ts';

/** The newest ones, which are there before all of history has been read. */
export async function firstBuilds(limit: number): Promise<BuildSummary[]> {
  const { summaries } = await theStore().summaries({ of: 'build', limit });
  return summaries.filter((s) => s.of === 'build');
}
