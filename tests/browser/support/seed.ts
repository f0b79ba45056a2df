import type { Page } from '@playwright/test';

interface Seeded {
  id: string;
  record: string;
  subject?: string;
}

/**
 * Puts records into the app's database as if they had been written before, and opens the app on them.
 * The page has to be on the app already, since the database is made by its first opening.
 */
export async function seed(page: Page, records: readonly object[]): Promise<void> {
  await page.evaluate(async (all) => {
    const opened = indexedDB.open('tubewright');
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      opened.onsuccess = () => resolve(opened.result);
      opened.onerror = () => reject(opened.error);
    });
    const transaction = database.transaction(['headers', 'entries', 'revisions', 'meta'], 'readwrite');
    for (const one of all as Seeded[]) {
      if (one.record === 'revision') {
        transaction.objectStore('revisions').put(one);
        continue;
      }
      const isEntry = one.record === 'entry';
      transaction.objectStore(isEntry ? 'entries' : 'headers').put(one);
      const subject = isEntry ? one.subject : one.id;
      if (subject !== 'bench') transaction.objectStore('meta').put(1, ['dropped', subject as string]);
    }
    await new Promise((done) => (transaction.oncomplete = done));
    database.close();
  }, records);
  await page.reload();
}
