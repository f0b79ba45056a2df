import { docsOf, loadDocuments } from './documents.ts';
import { theStore } from './shop.ts';

/** On a first opening, puts the starter shelf there: the same revisions on every phone, so that two phones merge. */
export async function putStarterShelf(): Promise<void> {
  if (docsOf('resin').length > 0 || docsOf('checklist').length > 0) return;
  const { starterRevisions } = await import('#shared/reference/starter-shelf.ts');
  await theStore().write({ revisions: starterRevisions() });
  await loadDocuments();
}
