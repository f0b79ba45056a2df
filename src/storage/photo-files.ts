import type { PhotoRecord } from '#shared/record/photo.ts';
import { photoFolder } from './lines-protocol.ts';
import { photoHash } from './photo-hash.ts';
import type { StoredPhoto } from './schema.ts';
import { syncHandle } from './sync-handle.ts';

/** A file being written ends so until it is whole: a kill must not leave half a photo under a whole one's name. */
const unfinished = '.part';
const newline = 10;

type Movable = FileSystemFileHandle & { move?(name: string): Promise<void> };

/**
 * The second copy of photos and of loggers' files, in the worker: one file each, named by the hash of its bytes, with
 * its record as the first line. The database alone would lose them whenever it comes back empty.
 */
export class PhotoFiles {
  private folder: Promise<FileSystemDirectoryHandle> | undefined;

  constructor(
    private readonly root: FileSystemDirectoryHandle,
    private readonly database: string,
  ) {}

  private open(): Promise<FileSystemDirectoryHandle> {
    this.folder ??= this.root.getDirectoryHandle(photoFolder(this.database), { create: true });
    return this.folder;
  }

  async names(): Promise<string[]> {
    const names: string[] = [];
    const folder = (await this.open()) as unknown as { keys(): AsyncIterable<string> };
    for await (const name of folder.keys()) if (!name.endsWith(unfinished)) names.push(name);
    return names;
  }

  /** False when there is no room for it: then the database has it alone until a later opening. */
  async keep({ hash, record, blob }: StoredPhoto): Promise<boolean> {
    const folder = await this.open();
    const before = await bytesOf(folder, hash).catch(() => new Uint8Array());
    if (before.length > blob.size) return true;
    await folder.removeEntry(hash, { recursive: true }).catch(() => {});
    const file: Movable = await folder.getFileHandle(hash + unfinished, { create: true });
    try {
      const head = new TextEncoder().encode(`${JSON.stringify(record)}\n`);
      const bytes = new Uint8Array(await new Blob([head, blob]).arrayBuffer());
      if (!(await written(file, bytes))) throw new Error('it took only a part');
      if (file.move) await file.move(hash);
      // Without a way to rename, written again under its own name: reading it back checks its bytes.
      else await written(await folder.getFileHandle(hash, { create: true }), bytes);
      return true;
    } catch {
      return false;
    } finally {
      await folder.removeEntry(hash + unfinished).catch(() => {});
    }
  }

  /** Undefined, and gone, when it cannot be read or its bytes are not what its name says. */
  async read(hash: string): Promise<StoredPhoto | undefined> {
    const folder = await this.open();
    // A kill may leave a name in the folder with nothing behind it: it must not keep the others from coming back.
    const bytes = await bytesOf(folder, hash).catch(() => new Uint8Array());
    const body = bytes.slice(bytes.indexOf(newline) + 1);
    if (bytes.length === 0 || (await photoHash(body.buffer)) !== hash) {
      await folder.removeEntry(hash, { recursive: true }).catch(() => {});
      return undefined;
    }
    const record = JSON.parse(new TextDecoder().decode(bytes.subarray(0, -body.length - 1))) as PhotoRecord;
    return { hash, record, blob: new Blob([body], { type: record.type }) };
  }
}

async function bytesOf(folder: FileSystemDirectoryHandle, name: string): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await (await (await folder.getFileHandle(name)).getFile()).arrayBuffer());
}

async function written(file: FileSystemFileHandle, bytes: Uint8Array): Promise<boolean> {
  const handle = await syncHandle(file);
  try {
    handle.truncate(0);
    const whole = handle.write(bytes, { at: 0 }) === bytes.length;
    handle.flush();
    return whole;
  } finally {
    handle.close();
  }
}
