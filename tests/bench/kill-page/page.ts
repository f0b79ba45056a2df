import { type AnyEntry, entryVersion } from '#shared/record/entry.ts';
import type { Gated } from '#shared/record/read.ts';
import { decodeLines } from '#storage/lines-text.ts';
import { openStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';

const name = 'tubewright';
const filler = 'even wet-out, no dry spots. ';

interface Numbered {
  id: string;
  text: string;
}

/** Batch n of a run holds 1 to 4 entries; each says its batch, its place and how many there are. */
function entriesOf(store: Store, run: string, batch: number): AnyEntry[] {
  const size = 1 + (batch % 4);
  return Array.from({ length: size }, (_, place) => ({
    record: 'entry',
    v: entryVersion,
    kind: 'note',
    id: store.newId(),
    subject: run,
    happenedAt: Date.now(),
    recordedAt: Date.now(),
    zone: 0,
    device: store.device,
    text: `${batch}/${place}/${size} ${filler.repeat(batch % 7)}`,
  }));
}

async function open() {
  const started = performance.now();
  const result = await openStore({
    name,
    summarize: () => {
      throw new Error('there is nothing to summarize');
    },
  });
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return { store: result.store, refilled: result.refilled, took: performance.now() - started };
}

/** Writes one batch after the other, and calls out each id once its write is acknowledged. */
async function writeOn(run: string, acknowledged: (ids: string[]) => void, most = Number.POSITIVE_INFINITY) {
  const { store } = await open();
  const times: number[] = [];
  for (let batch = 0; batch < most; batch++) {
    const entries = entriesOf(store, run, batch);
    const started = performance.now();
    await store.write({ entries });
    times.push(performance.now() - started);
    acknowledged(entries.map((entry) => entry.id));
  }
  return { times, linesKept: store.linesKept() };
}

/** Ids of a run that stand in the second copy, read before anything opens and repairs it. */
async function idsInLines(run: string): Promise<string[]> {
  const folder = await navigator.storage.getDirectory();
  const ids: string[] = [];
  for await (const file of (
    folder as unknown as { values(): AsyncIterable<FileSystemFileHandle> }
  ).values()) {
    const bytes = new Uint8Array(await (await file.getFile()).arrayBuffer());
    for (const json of decodeLines(bytes).records) {
      const record = JSON.parse(json) as { id: string; subject?: string };
      if (record.subject === run) ids.push(record.id);
    }
  }
  return ids;
}

function idsOf(gated: readonly Gated<AnyEntry>[]): string[] {
  return gated.flatMap((one) => (one.ok ? [one.value.id] : []));
}

/** What is left of a run after the kill. */
async function look(run: string) {
  const inLines = await idsInLines(run);
  const { store, refilled, took } = await open();
  const gated = await store.entries(run);
  const compared = await store.compared;
  const after = await store.entries(run);
  const batches = new Map<string, { found: number; size: number }>();
  for (const one of after) {
    if (!one.ok) continue;
    const [batch = '', , size = ''] = (one.value as unknown as Numbered).text.split(/[/ ]/);
    const known = batches.get(batch) ?? { found: 0, size: Number(size) };
    batches.set(batch, { ...known, found: known.found + 1 });
  }
  const torn = [...batches.values()].filter(({ found, size }) => found !== size).length;
  return {
    ids: idsOf(after),
    inLines,
    atOpening: idsOf(gated),
    unreadable: after.filter((one) => !one.ok).length,
    torn,
    refilled,
    compared,
    took,
    linesKept: store.linesKept(),
    counts: await store.counts(),
  };
}

/** A history of many builds' entries, as restoring a backup would write it. */
async function fill(entries: number) {
  const { store } = await open();
  for (let written = 0; written < entries; written += 5000) {
    const subject = `filled-${written / 5000}`;
    const chunk = Array.from({ length: 1250 }, (_, i) => entriesOf(store, subject, 4 * i + 3)).flat();
    await store.write({ entries: chunk });
  }
  await store.close();
}

/** How long opening takes, and the comparison after it. */
async function start() {
  const { store, refilled, took } = await open();
  const started = performance.now();
  const compared = await store.compared;
  return { took, compare: performance.now() - started, refilled, compared, counts: await store.counts() };
}

Object.assign(window, { bench: { writeOn, look, fill, start } });
