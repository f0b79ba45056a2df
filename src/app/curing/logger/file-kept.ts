import type { Signal } from '@preact/signals';
import { forgetReadings } from '#app/curing/oven/use-oven-results.ts';
import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { loggerFileType } from '#shared/record/logger-file.ts';
import type { PhotoRecord } from '#shared/record/photo.ts';
import { photoHash } from '#storage/photo-hash.ts';
import { broughtBy, notUsed } from './channel-choices.ts';
import { type Draft, lookThrough, type Preview } from './logger-draft.ts';
import type { Subject } from './subject.ts';

/** Bytes of a file with the name by which they are kept. */
export interface Retained {
  name: string;
  hash: string;
  bytes: ArrayBuffer;
}

/** Bigger ones are no record of an oven, and would not fit a backup, bytes. */
const biggest = 40_000_000;
const longestName = 200;

const bytesRecord = ({ hash, bytes }: Retained): { record: PhotoRecord; blob: Blob } => ({
  record: {
    record: 'photo',
    v: 1,
    hash,
    type: loggerFileType,
    bytes: bytes.byteLength,
    addedAt: Date.now(),
  },
  blob: new Blob([bytes], { type: loggerFileType }),
});

/** A file that is in already adds nothing; one whose bytes were lost gets them back. */
async function takenAlready(draft: Signal<Draft>, file: Retained, { state }: Subject): Promise<boolean> {
  const known = state.loggerFiles.find((f) => f.entry.hash === file.hash);
  if (!known) return false;
  const isHere = (await theStore().photo(file.hash)) !== undefined;
  if (!isHere) {
    if (!(await record([], { photos: [bytesRecord(file)] }))) return true;
    forgetReadings(state);
  }
  draft.value = { step: 'again', name: file.name, root: known.root, broughtBack: !isHere };
  return true;
}

export async function takeFile(draft: Signal<Draft>, picked: File, subject: Subject): Promise<void> {
  const name = picked.name.slice(-longestName) || 'logger.csv';
  draft.value = { step: 'reading', name };
  try {
    if (picked.size > biggest || picked.size === 0) {
      draft.value = { step: 'refused', name, why: picked.size === 0 ? 'empty' : 'tooBig' };
      return;
    }
    const bytes = await picked.arrayBuffer();
    const file = { name, bytes, hash: await photoHash(bytes) };
    if (await takenAlready(draft, file, subject)) return;
    await lookThrough(draft, file, subject);
  } catch {
    draft.value = { step: 'refused', name, why: 'failed' };
  }
}

/** Writes the file and what was said of it; true once it is on disk. */
export function keep(preview: Preview, { state, fact }: Subject): Promise<boolean> {
  const { file, look, columns, clocked, tried } = preview;
  if (tried?.from === undefined || tried.until === undefined) return Promise.resolve(false);
  const used = columns.filter((c) => c.to !== notUsed);
  const { channels, to } = broughtBy(used, () => theStore().newId());
  const before = fact?.entry.channels?.filter((c) => used.some((u) => u.to === c.id)) ?? [];
  const channelOf = (column: number) => to.get(column) ?? notUsed;
  const draft: EntryDraft = {
    kind: 'loggerFile',
    subject: state.header.id,
    hash: file.hash,
    name: file.name,
    bytes: file.bytes.byteLength,
    dialect: look.dialect,
    columns: used.map(({ column, unit }) => ({ column, unit, channel: channelOf(column) })),
    ...(channels.length + before.length > 0 && { channels: [...before, ...channels] }),
    startsAt: clocked.startsAt,
    shift: clocked.shift,
    clockZone: clocked.zone,
    repairs: tried.repairs,
    series: tried.series.map(({ column, readings, highest }) => ({
      channel: channelOf(column),
      readings,
      ...(highest !== undefined && { highest }),
    })),
    from: tried.from,
    until: tried.until,
    ...(fact && { corrects: fact.root, happenedAt: fact.entry.happenedAt }),
  };
  return record(draft, fact ? {} : { photos: [bytesRecord(file)] });
}
