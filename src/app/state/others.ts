import type { Store } from '#storage/store.ts';
import { loadDocuments } from './documents.ts';
import { cameInWhole, journals, loadJournals } from './journals.ts';

/** Takes in what came into the database by another way: of what is shown here, and of what is on the bench by now. */
async function readAgain(store: Store, came: (subject: string) => boolean): Promise<void> {
  cameInWhole.value += 1;
  const open = await store.openSubjects();
  const shown = [...journals.value.keys(), ...open].filter(came);
  await Promise.all([loadDocuments(), loadJournals([...new Set(shown)], true)]);
}

/** From here on this tab shows what the others write, and what its second copy gives back. */
export function followOthers(store: Store): void {
  // A lost connection tells of itself; until then what stands here stays.
  store.onOthersWrote((ids) => {
    const written = new Set(ids);
    readAgain(store, (subject) => written.has(subject)).catch(() => {});
  });
  store.compared
    .then(({ database }) => (database > 0 ? readAgain(store, () => true) : undefined))
    .catch(() => {});
}
