import { afterEach, beforeEach, expect, it } from 'vitest';
import { loggerFileType } from '#shared/record/logger-file.ts';
import { deleteStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';
import { backupText, check, cleanUp, name, open, photo } from './samples.ts';

let store: Store;
beforeEach(async () => {
  store = await open();
});
afterEach(cleanUp);

const text = 'Zeit;Luft\r\n16.05.2026 10:00:00;23,5\r\n16.05.2026 10:00:10;24,1\r\n';

async function loggerFile() {
  const picture = await photo(text);
  const record = { ...picture.record, type: loggerFileType };
  return { record, blob: new Blob([text], { type: loggerFileType }) };
}

it('the bytes of a logger’s file go into a backup without photos, and come back byte for byte', async () => {
  const file = await loggerFile();
  await store.write({ photos: [file, await photo('gelled cup')] });
  const backup = await backupText(store, false);
  await store.close();
  await deleteStore(name);
  const fresh = await open();
  const checked = await check(backup);
  if (!checked.ok) throw new Error(checked.detail);
  expect(checked.counts.photos).toBe(1);
  expect(await fresh.restore(checked)).toMatchObject({ ok: true, added: { photos: 1 } });
  const kept = await fresh.photo(file.record.hash);
  expect(await kept?.text()).toBe(text);
  expect(kept?.type).toBe(loggerFileType);
});

it('files and photos are counted apart', async () => {
  await store.write({ photos: [await loggerFile(), await photo('gelled cup')] });
  expect(await store.counts()).toMatchObject({
    files: 1,
    fileBytes: new TextEncoder().encode(text).length,
    photos: 1,
    photoBytes: 10,
  });
});

it('a backup whose logger’s file is cut short or changed is refused, and nothing is stored', async () => {
  const { record } = await loggerFile();
  await store.write({ photos: [await loggerFile()] });
  const lines = (await backupText(store, false)).split('\n');
  const at = lines.findIndex((line) => line.includes(record.hash));
  const line = JSON.parse(lines[at] ?? '');
  const withData = (data: string) =>
    lines.map((l, i) => (i === at ? JSON.stringify({ ...line, data }) : l)).join('\n');
  const short = withData(line.data.slice(4));
  expect(await check(short)).toMatchObject({ ok: false, reason: 'photo', line: at + 1 });

  const other = btoa(text.replace('23,5', '99,5'));
  const changed = withData(other);
  expect(await check(changed)).toMatchObject({ ok: false, reason: 'checksum' });
});

it('a file under a name that is not its own is not kept', async () => {
  const { record, blob } = await loggerFile();
  const forged = {
    record: { ...record, hash: record.hash.replace(/^./, (c) => (c === 'a' ? 'b' : 'a')) },
    blob,
  };
  await expect(store.write({ photos: [forged] })).rejects.toThrow('refused');
  expect(await store.counts()).toMatchObject({ files: 0 });
});
