import { loggedOf } from '#app/curing/logger/logged-results.ts';
import { zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import { foldBuild } from '#shared/record/build-state.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import type { Summary } from '#shared/record/summary.ts';
import { buildColumns, buildRow } from './builds-table.ts';
import { csvText } from './csv.ts';
import { fileStamp } from './file-words.ts';
import { type FileRead, type ReadingRow, readingColumns, readingRows } from './readings-table.ts';

const pageSize = 200;

/** All subjects of a kind with their entries, newest first. */
async function* journalsOf(of: Summary['of']) {
  const store = theStore();
  let after: string | undefined;
  do {
    const page = await store.summaries({ of, limit: pageSize, ...(after !== undefined && { after }) });
    for (const { subject } of page.summaries) {
      const [header, gated] = await Promise.all([store.header(subject), store.entries(subject)]);
      if (header?.ok) yield { header: header.value, entries: gated.flatMap((g) => (g.ok ? [g.value] : [])) };
    }
    after = page.next;
  } while (after !== undefined);
}

function csvFile(text: string, name: string): File {
  const at = Date.now();
  return new File([text], `tubewright-${name}-${fileStamp(at, zoneAt(at))}.csv`, { type: 'text/csv' });
}

function filesOf({ loggerFiles }: OvenState): Promise<FileRead[]> {
  return Promise.all(
    loggerFiles.map(async ({ entry }) => {
      const blob = await theStore().photo(entry.hash);
      return {
        name: entry.name,
        at: entry.happenedAt,
        ...(blob && { logged: loggedOf({ entry, bytes: await blob.arrayBuffer() }) }),
      };
    }),
  );
}

export async function readingsFile(): Promise<File> {
  const rows: ReadingRow[] = [];
  for await (const { header, entries } of journalsOf('ovenLoad')) {
    if (header.record !== 'ovenLoad') continue;
    const state = foldOvenLoad(header, entries);
    // A file has a hundred thousand of them: more than a call takes as its arguments.
    for (const row of readingRows(state, await filesOf(state))) rows.push(row);
  }
  return csvFile(await csvText(readingColumns(), rows), 'readings');
}

export async function buildsFile(): Promise<File> {
  const rows = [];
  for await (const { header, entries } of journalsOf('build')) {
    if (header.record === 'build') rows.push(buildRow(foldBuild(header, entries)));
  }
  return csvFile(await csvText(buildColumns(), rows), 'builds');
}
