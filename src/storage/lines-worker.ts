import { type Answer, type Ask, type Chunk, linesFileName, slotOf, type Tail } from './lines-protocol.ts';
import { decodeLines, encodeLines, firstLineStart, lastLineEnd } from './lines-text.ts';
import { PhotoFiles } from './photo-files.ts';
import { type SyncHandle, syncHandle } from './sync-handle.ts';

/** The part of a file that holds its newest records; enough to see whether both copies agree. */
const tailBytes = 64 * 1024;
const chunkBytes = 1024 * 1024;
/** Every open page keeps a file of its own, since a handle is exclusive. */
const mostSlots = 32;

let folder: FileSystemDirectoryHandle;
let photos: PhotoFiles;
let database = '';
let own: { slot: number; handle: SyncHandle; size: number } | undefined;

async function takeFreeFile(): Promise<{ slot: number; handle: SyncHandle }> {
  for (let slot = 0; slot < mostSlots; slot++) {
    const file = await folder.getFileHandle(linesFileName(database, slot), { create: true });
    try {
      return { slot, handle: await syncHandle(file) };
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'NoModificationAllowedError') throw error;
    }
  }
  throw new Error('every lines file is in use');
}

/** Cuts off a line that was being written when the power went; appending to it would spoil the next one. */
function cutTornLine(handle: SyncHandle): number {
  let end = handle.getSize();
  while (end > 0) {
    const start = Math.max(0, end - tailBytes);
    const bytes = new Uint8Array(end - start);
    handle.read(bytes, { at: start });
    const whole = lastLineEnd(bytes);
    if (whole > 0) {
      end = start + whole;
      break;
    }
    end = start;
  }
  if (end !== handle.getSize()) {
    handle.truncate(end);
    handle.flush();
  }
  return end;
}

async function bytesOf(slot: number, from: number, length: number): Promise<Uint8Array> {
  if (slot === own?.slot) {
    const bytes = new Uint8Array(length);
    return bytes.subarray(0, own.handle.read(bytes, { at: from }));
  }
  const file = await (await folder.getFileHandle(linesFileName(database, slot))).getFile();
  return new Uint8Array(await file.slice(from, from + length).arrayBuffer());
}

async function sizeOf(slot: number): Promise<number> {
  if (slot === own?.slot) return own.size;
  return (await (await folder.getFileHandle(linesFileName(database, slot))).getFile()).size;
}

async function tailOf(slot: number): Promise<Tail> {
  const size = await sizeOf(slot);
  const start = Math.max(0, size - tailBytes);
  const bytes = await bytesOf(slot, start, size - start);
  const { records, damaged } = decodeLines(start > 0 ? bytes.subarray(firstLineStart(bytes)) : bytes);
  return { slot, size, records, more: start > 0, damaged };
}

async function open(name: string): Promise<{ slot: number; tails: Tail[] }> {
  database = name;
  folder = await navigator.storage.getDirectory();
  photos = new PhotoFiles(folder, name);
  const { slot, handle } = await takeFreeFile();
  own = { slot, handle, size: cutTornLine(handle) };
  const tails: Tail[] = [];
  for await (const file of (folder as unknown as { keys(): AsyncIterable<string> }).keys()) {
    const found = slotOf(name, file);
    if (found === undefined) continue;
    // Another tab may hold a file so that it cannot be read; that must not cost this page its own.
    const tail = await tailOf(found).catch(() => undefined);
    if (tail) tails.push(tail);
  }
  return { slot, tails };
}

/** Short of space a file takes a part and says so, or nothing. */
class NoRoom extends Error {}

const isNoRoom = (error: unknown) =>
  error instanceof NoRoom || (error instanceof DOMException && error.name === 'QuotaExceededError');

function append(records: readonly string[]): void {
  if (!own) throw new Error('no lines file is open');
  const bytes = encodeLines(records);
  // The part is cut off, so that the file still ends in a whole line.
  if (own.handle.write(bytes, { at: own.size }) !== bytes.length) {
    own.handle.truncate(own.size);
    throw new NoRoom('the lines file took only a part');
  }
  own.handle.flush();
  own.size += bytes.length;
}

async function read(slot: number, offset: number): Promise<Chunk> {
  const size = await sizeOf(slot);
  for (let length = chunkBytes; ; length *= 2) {
    const { records, used } = decodeLines(await bytesOf(slot, offset, Math.min(length, size - offset)));
    const end = offset + length >= size;
    if (used > 0 && !end) return { records, next: offset + used };
    if (end) return { records };
  }
}

function close(): void {
  own?.handle.close();
  own = undefined;
}

async function answer(ask: Ask): Promise<unknown> {
  switch (ask.call) {
    case 'open':
      return open(ask.name);
    case 'append':
      return append(ask.records);
    case 'read':
      return read(ask.slot, ask.offset);
    case 'keepPhoto':
      return photos.keep(ask.photo);
    case 'photoNames':
      return photos.names();
    case 'readPhoto':
      return photos.read(ask.hash);
    case 'close':
      return close();
  }
}

// One at a time: 'append' must not overtake 'open', nor 'close' an 'append'.
let queue: Promise<unknown> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  queue = queue.then(async () => {
    let reply: Answer;
    try {
      reply = { ticket: data.ticket, ok: true, answer: await answer(data) };
    } catch (error) {
      reply = { ticket: data.ticket, ok: false, why: String(error), full: isNoRoom(error) };
    }
    postMessage(reply);
  });
});
