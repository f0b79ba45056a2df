import { allSummaries, refreshSummaries, useAllSummaries } from '#app/state/all-summaries.ts';
import { docsOf } from '#app/state/documents.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import type { LotOnShelf } from './choose-lot.ts';
import { drawsByLot, type LotDraw, leftIn } from './lot-left.ts';

export interface ShelfLots {
  lots: LotOnShelf[];
  /** Of the lots that anything was drawn from. */
  draws: ReadonlyMap<string, readonly LotDraw[]>;
  builds: readonly BuildSummary[];
}

function lotsOf(builds: readonly BuildSummary[]): ShelfLots {
  const draws = drawsByLot(builds);
  const lots = docsOf('lot').map(({ doc, body }) => ({
    doc,
    lot: body,
    left: leftIn(body, draws.get(doc) ?? []),
  }));
  return { lots, draws, builds };
}

/** The lots in use and what is left of each; undefined until the builds are read. */
export function useLots(): ShelfLots | undefined {
  const all = useAllSummaries();
  return all && lotsOf(all.builds);
}

export async function readLots(): Promise<ShelfLots> {
  await refreshSummaries();
  return lotsOf(allSummaries.value?.builds ?? []);
}
