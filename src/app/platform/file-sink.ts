/** Where a file is written to, piece by piece. */
export interface FileSink {
  write(text: string): Promise<void>;
  /** The whole file to hand on; undefined when it is already where the builder wanted it. */
  close(): Promise<File | undefined>;
  /** Leaves nothing of it behind. */
  discard(): Promise<void>;
}

type Writable = Awaited<ReturnType<FileSystemFileHandle['createWritable']>>;
interface Removable extends FileSystemFileHandle {
  remove?(): Promise<void>;
}
interface Picker {
  showSaveFilePicker?(options: {
    suggestedName: string;
    types: { description: string; accept: Record<string, string[]> }[];
  }): Promise<Removable>;
}

/** Up to here a file is built in memory, as it always worked everywhere, bytes. */
const fitsInMemory = 16_000_000;
/** Pieces are gathered to this size: each one is a message to another process, characters. */
const gathered = 1_000_000;
/** Text, since share sheets refuse JSON. */
const type = 'text/plain';
const folderName = 'exports';
const lockName = 'tubewright-exports';

/** Opens a place for a file of about so many bytes. Only from a tap, since it may ask where to. Throws AbortError. */
export async function openSink(name: string, expected: number): Promise<FileSink> {
  if (expected <= fitsInMemory) return inMemory(name);
  const picker = window as Picker;
  if (picker.showSaveFilePicker) {
    const types = [{ description: 'Text', accept: { [type]: ['.txt'] } }];
    const file = await picker.showSaveFilePicker({ suggestedName: name, types });
    return asPicked(file);
  }
  return (await onDisk(name).catch(() => undefined)) ?? inMemory(name);
}

/** Straight to where the builder keeps it: nothing is written twice. */
async function asPicked(file: Removable): Promise<FileSink> {
  const writable = await file.createWritable();
  return {
    ...writingTo(writable),
    async close() {
      await writable.close();
      return undefined;
    },
    async discard() {
      await writable.abort();
      // The picker made an empty file of that name.
      await file.remove?.();
    },
  };
}

/** In the origin's private file system: the file that is handed over lies on the disk. */
async function onDisk(name: string): Promise<FileSink> {
  await dropExports();
  release = await holdExports();
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(folderName, { create: true });
  const handle = await folder.getFileHandle(name, { create: true });
  const writable = await handle.createWritable();
  return {
    ...writingTo(writable),
    async close() {
      await writable.close();
      return new File([await handle.getFile()], name, { type });
    },
    async discard() {
      await writable.abort().catch(() => {});
      await dropExports();
    },
  };
}

function writingTo(writable: Writable) {
  return { write: (text: string) => writable.write(text) };
}

/** The browser takes the pieces over and may put them on the disk; the page does not hold them. */
function inMemory(name: string): FileSink {
  let parts: Blob[] = [];
  return {
    async write(text) {
      parts.push(new Blob([text], { type }));
    },
    close: async () => new File(parts, name, { type }),
    async discard() {
      parts = [];
    },
  };
}

/** Gathers small pieces into messages of one size; `end` lets the last one out. */
export function gathering(sink: FileSink): { put(text: string): Promise<void>; end(): Promise<void> } {
  let held: string[] = [];
  let length = 0;
  const end = async () => {
    if (length === 0) return;
    const text = held.join('');
    held = [];
    length = 0;
    await sink.write(text);
  };
  return {
    async put(text) {
      held.push(text);
      length += text.length;
      if (length >= gathered) await end();
    },
    end,
  };
}

/** Ends the hold below, and resolves when the browser has taken it back. */
let release = async (): Promise<void> => {};

/** Keeps the file of this page from being swept by another one, until it is dropped or the page is closed. */
function holdExports(): Promise<() => Promise<void>> {
  return new Promise((held, failed) => {
    const over = navigator.locks.request(lockName, { mode: 'shared' }, () => {
      return new Promise<void>((end) => {
        held(() => {
          end();
          return over;
        });
      });
    });
    over.catch(failed);
  });
}

/** Takes away what was exported here and handed over, and what earlier pages left, unless one still hands it over. */
export async function dropExports(): Promise<void> {
  await release();
  release = async () => {};
  if (!navigator.storage?.getDirectory || !navigator.locks) return;
  await navigator.locks.request(lockName, { ifAvailable: true }, async (free) => {
    if (!free) return;
    const root = await navigator.storage.getDirectory();
    await root.removeEntry(folderName, { recursive: true }).catch((error: unknown) => {
      if (!(error instanceof DOMException) || error.name !== 'NotFoundError') throw error;
    });
  });
}
