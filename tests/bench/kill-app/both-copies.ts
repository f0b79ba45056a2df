import { decodeLines } from '#storage/lines-text.ts';
import { photoHash } from '#storage/photo-hash.ts';

const stores = ['headers', 'revisions', 'entries'] as const;

/** What lies on disk, by key: read past the app, before it opens and puts anything right, or after. */
export interface OnDisk {
  /** JSON of a record by 'store:id'. */
  records: Map<string, string>;
  /** Hashes of photos and logger's files whose bytes are whole. */
  whole: Set<string>;
  /** The same, of bytes that are not what their name says. */
  spoiled: string[];
}

function opened(name: string): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function all<T>(database: IDBDatabase, store: string): Promise<T[]> {
  return new Promise((resolve, reject) => {
    const request = database.transaction(store).objectStore(store).getAll();
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export async function inDatabase(name: string): Promise<OnDisk> {
  const onDisk: OnDisk = { records: new Map(), whole: new Set(), spoiled: [] };
  // Asking for a database that is not there would make an empty one, which the app would take for its own.
  if (!(await indexedDB.databases()).some((d) => d.name === name)) return onDisk;
  const database = await opened(name);
  if (database.objectStoreNames.length > 0) {
    for (const store of stores) {
      for (const record of await all<{ id: string }>(database, store)) {
        onDisk.records.set(`${store}:${record.id}`, JSON.stringify(record));
      }
    }
    for (const { hash, blob } of await all<{ hash: string; blob: Blob }>(database, 'photos')) {
      const bytes = await blob.arrayBuffer().catch(() => new ArrayBuffer(0));
      if ((await photoHash(bytes)) === hash) onDisk.whole.add(hash);
      else onDisk.spoiled.push(hash);
    }
  }
  database.close();
  return onDisk;
}

function storeOf(record: string): (typeof stores)[number] {
  if (record === 'entry') return 'entries';
  return record === 'revision' ? 'revisions' : 'headers';
}

async function namesIn(folder: FileSystemDirectoryHandle): Promise<string[]> {
  const names: string[] = [];
  for await (const name of (folder as unknown as { keys(): AsyncIterable<string> }).keys()) names.push(name);
  return names;
}

export interface InLines {
  records: Map<string, string>;
  /** Names of the files of photos; a name ends otherwise while its file is being written. */
  photos: string[];
  /** Lines whose checksum is wrong. */
  damaged: boolean;
}

/** The second copy: a file that is held can be read all the same. */
export async function inLines(name: string): Promise<InLines> {
  const folder = await navigator.storage.getDirectory();
  const found: InLines = { records: new Map(), photos: [], damaged: false };
  const entries = (
    folder as unknown as { entries(): AsyncIterable<[string, FileSystemFileHandle]> }
  ).entries();
  for await (const [file, handle] of entries) {
    if (file === `${name}-photos`)
      found.photos = await namesIn(handle as unknown as FileSystemDirectoryHandle);
    if (!file.startsWith(`${name}-`) || !file.endsWith('.lines')) continue;
    const lines = decodeLines(new Uint8Array(await (await handle.getFile()).arrayBuffer()));
    if (lines.damaged) found.damaged = true;
    for (const json of lines.records) {
      const { record, id } = JSON.parse(json) as { record: string; id: string };
      found.records.set(`${storeOf(record)}:${id}`, json);
    }
  }
  return found;
}
