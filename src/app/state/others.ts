import type { Store } from '#storage/store.ts';
import { loadDocuments } from './documents.ts';
import { cameInWhole, journals, loadJournals } from './journals.ts';

/** Takes in what another tab wrote: what is shown here, and what it has put on the bench. */
async function readWritten(store: Store, ids: readonly string[]): Promise<void> {
  const written = new Set(ids);
  cameInWhole.value += 1;
  const open = await store.openSubjects();
  const shown = [...journals.value.keys(), ...open].filter((subject) => written.has(subject));
  await Promise.all([loadDocuments(), loadJournals([...new Set(shown)], true)]);
}

/** From here on this tab shows what the others write. */
export function followOthers(store: Store): void {
  // A lost connection tells of itself; until then what stands here stays.
  store.onOthersWrote((ids) => void readWritten(store, ids).catch(() => {}));
}
