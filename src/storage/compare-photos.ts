import type { Connection } from './connection.ts';
import type { Lines } from './lines.ts';
import type { Writer } from './writer.ts';

interface Copies {
  connection: Connection;
  lines: Lines;
  writer: Writer;
}

/** Gives each copy the photos that only the other has; returns how many the database got back. */
export async function comparePhotos({ connection, lines, writer }: Copies): Promise<number> {
  // Another page has the first file, and compares.
  if (lines.slot !== 0) return 0;
  const inFiles = new Set(await lines.photoNames());
  const stored = await connection.transact(['photos'], 'readonly', (t) =>
    t.objectStore('photos').getAllKeys(),
  );
  const inDatabase = new Set(stored);
  let back = 0;
  for (const hash of inFiles) {
    if (inDatabase.has(hash)) continue;
    // One that does not come back now must not keep those after it away.
    const photo = await lines.readPhoto(hash).catch(() => undefined);
    if (!photo) continue;
    await writer.takeBack([], [photo]);
    back += 1;
  }
  for (const hash of stored) {
    if (inFiles.has(hash)) continue;
    const photo = await connection.transact(['photos'], 'readonly', (t) => t.objectStore('photos').get(hash));
    // No room for a second copy of this one, so neither for the next: the next opening tries again.
    if (photo && !(await lines.keepPhotos([photo]))) break;
  }
  return back;
}
