// A backup of ten years: the demo's closed builds and their oven loads over and over, under ids and times of their own.
import { createWriteStream } from 'node:fs';
import { join, resolve } from 'node:path';
import { finished } from 'node:stream/promises';
import { crc32 } from 'node:zlib';
import { runnerImport } from 'vite';

const root = resolve(import.meta.dirname, '../..');
const load = async (file) => (await runnerImport(join(root, file), { configFile: false, root })).module;
/** Between two builds, ms: 5,000 of them in ten years */
const apart = 17.5 * 3_600_000;
/** Entries of one build and its oven load together */
const entriesEach = 200;

/** One build with its oven load, entries first padded with notes to a round number. */
function templates(records) {
  const of = (subject) => records.filter((r) => r.subject === subject);
  return records
    .filter((r) => r.record === 'build' && of(r.id).some((e) => e.kind === 'closed'))
    .map((build) => {
      const joined = of(build.id).find((e) => e.kind === 'joinedOvenLoad');
      const oven = records.find((r) => r.id === joined.ovenLoad);
      const own = [...of(build.id), ...of(oven.id)].filter((e) => e.kind !== 'retracted' && !e.corrects);
      const note = own.find((e) => e.kind === 'note' && e.subject === build.id);
      const pad = Array.from({ length: Math.max(0, entriesEach - own.length) }, (_, i) => ({
        ...note,
        id: `${note.id.slice(0, 24)}${(0xf000_0000 + i).toString(16).padStart(12, '0')}`,
      }));
      const closes = own.filter((e) => e.kind === 'closed');
      const rest = [...own.filter((e) => e.kind !== 'closed'), ...pad];
      return { headers: [build, oven], entries: [...rest.slice(0, entriesEach - closes.length), ...closes] };
    });
}

function idAt(ms, number) {
  const time = Math.floor(ms).toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${number.toString(16).padStart(12, '0')}`;
}

const uuid = /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g;
const timeOf = (id) => Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);

/** Order of lines does not matter to it. */
export const sumOf = (sum, line) => (sum + crc32(line)) % 0x1_0000_0000;

/** Writes the file, and says what is in it. */
export async function writeBigShop(path, builds) {
  const { demoShop } = await load('demo/make-shop.ts');
  const { moveTimes } = await load('shared/record/move-times.ts');
  const { backupFormat, backupVersion } = await load('src/storage/backup-format.ts');
  const now = Date.now() - 86_400_000;
  const shops = templates(demoShop(now));
  const file = createWriteStream(path);
  const told = { headers: 0, entries: 0, bytes: 0, sum: 0 };
  let crc = 0;
  const put = async (text) => {
    crc = crc32(text, crc);
    told.bytes += Buffer.byteLength(text);
    if (!file.write(text)) await new Promise((ready) => file.once('drain', ready));
  };
  await put(
    `${JSON.stringify({ format: backupFormat, version: backupVersion, app: 'big shop', at: Date.now() })}\n`,
  );
  for (const store of ['headers', 'entries']) {
    for (let i = builds - 1; i >= 0; i--) {
      const template = shops[i % shops.length];
      const lines = template[store].map((record) => {
        const moved = moveTimes(record, -i * apart, record.zone);
        if (store === 'headers') moved.number = builds - i;
        return JSON.stringify(moved).replace(uuid, (id) =>
          idAt(timeOf(id) - i * apart, i * 0x1_0000_0000 + Number.parseInt(id.slice(-8), 16)),
        );
      });
      for (const line of lines) told.sum = sumOf(told.sum, line);
      told[store] += lines.length;
      await put(lines.map((line) => `${line}\n`).join(''));
    }
  }
  const counts = { headers: told.headers, revisions: 0, entries: told.entries, photos: 0, setAside: 0 };
  const last = `${JSON.stringify({ end: backupFormat, counts, crc32: crc.toString(16).padStart(8, '0') })}\n`;
  told.bytes += last.length;
  file.end(last);
  await finished(file);
  return told;
}
