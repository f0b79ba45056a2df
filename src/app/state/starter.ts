import type { DocType } from '#shared/record/revision.ts';
import { docsOf, docTypes, loadDocuments, retiredOf } from './documents.ts';
import { writeThen } from './unsaved.ts';

/** Plans are the builder's own from the first; of the rest a kind has starters. */
const stocked = docTypes.filter((type) => type !== 'plan');

const isEmpty = (type: DocType) => docsOf(type).length + retiredOf(type).length === 0;

/**
 * Puts the starters of every kind there that has nothing yet: all of them on a first opening, later those of a kind
 * that is new. The same revisions on every phone, so that two phones merge.
 */
export async function putStarterShelf(): Promise<void> {
  const empty = new Set<DocType>(stocked.filter(isEmpty));
  if (empty.size === 0) return;
  const { starterRevisions } = await import('#shared/reference/starter-shelf.ts');
  const revisions = starterRevisions().filter((r) => empty.has(r.type));
  if (await writeThen({ revisions }, () => void loadDocuments())) await loadDocuments();
}
