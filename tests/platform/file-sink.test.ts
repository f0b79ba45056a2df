import { afterEach, describe, expect, test } from 'vitest';
import { dropExports, gathering, openSink } from '#app/platform/file-sink.ts';

const big = 500_000_000;
const pieces = Array.from({ length: 2500 }, (_, i) => `line ${i}, ünï\n`);

interface WithPicker {
  showSaveFilePicker?: unknown;
}
const browser = window as WithPicker;
const { showSaveFilePicker } = browser;

async function filesOnDisk(): Promise<string[]> {
  const found: string[] = [];
  const look = async (folder: FileSystemDirectoryHandle) => {
    const entries = folder as unknown as { values(): AsyncIterable<FileSystemHandle> };
    for await (const one of entries.values()) {
      if (one.kind === 'directory') await look(one as FileSystemDirectoryHandle);
      else found.push(one.name);
    }
  };
  await look(await navigator.storage.getDirectory());
  return found;
}

const written = async (expected: number) => {
  const sink = await openSink('backup.txt', expected);
  const { put, end } = gathering(sink);
  for (const piece of pieces) await put(piece);
  await end();
  return sink;
};

afterEach(async () => {
  browser.showSaveFilePicker = showSaveFilePicker;
  await dropExports();
});

describe('a file of many pieces', () => {
  test('is built in memory when it is small', async () => {
    const file = await (await written(1000)).close();
    expect([file?.name, file?.type]).toEqual(['backup.txt', 'text/plain']);
    expect(await file?.text()).toBe(pieces.join(''));
    expect(await filesOnDisk()).toEqual([]);
  });

  test('lies on the disk when it is big, and is taken away after it was handed over', async () => {
    browser.showSaveFilePicker = undefined;
    const file = await (await written(big)).close();
    expect([file?.name, file?.type]).toEqual(['backup.txt', 'text/plain']);
    expect(await file?.text()).toBe(pieces.join(''));
    expect(await filesOnDisk()).toEqual(['backup.txt']);
    await dropExports();
    expect(await filesOnDisk()).toEqual([]);
  });

  test('that is given up halfway leaves nothing behind', async () => {
    browser.showSaveFilePicker = undefined;
    await (await written(big)).discard();
    expect(await filesOnDisk()).toEqual([]);
  });

  test('left behind by an earlier page makes room for the next one', async () => {
    browser.showSaveFilePicker = undefined;
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('exports', {
      create: true,
    });
    await folder.getFileHandle('of last week.txt', { create: true });
    await (await written(big)).close();
    expect(await filesOnDisk()).toEqual(['backup.txt']);
  });

  test('goes straight to where the builder wants it when the browser can ask', async () => {
    const root = await navigator.storage.getDirectory();
    const asked: string[] = [];
    browser.showSaveFilePicker = ({ suggestedName }: { suggestedName: string }) => {
      asked.push(suggestedName);
      return root.getFileHandle('picked.txt', { create: true });
    };
    expect(await (await written(big)).close()).toBeUndefined();
    expect(asked).toEqual(['backup.txt']);
    expect(await (await (await root.getFileHandle('picked.txt')).getFile()).text()).toBe(pieces.join(''));
    await (await written(big)).discard();
    expect(await filesOnDisk()).toEqual([]);
  });
});
