import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { LoggedFile, LoggedResults } from '#app/curing/logger/protocol.ts';
import { theStore } from '#app/state/shop.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Tube } from './oven-cure.ts';
import { type OvenResults, ovenResults } from './oven-results.ts';

export interface WithFiles extends Partial<LoggedResults> {
  results: OvenResults;
  /** Names of files whose bytes are not on this phone. */
  missing: string[];
  /** Files are being read: what is shown is without them, or as it was a moment ago. */
  reading: boolean;
  failed: boolean;
}

async function filesOf(state: OvenState): Promise<{ files: LoggedFile[]; missing: string[] }> {
  const found = await Promise.all(
    state.loggerFiles.map(async ({ entry }) => ({ entry, blob: await theStore().photo(entry.hash) })),
  );
  const files = await Promise.all(
    found.flatMap(({ entry, blob }) =>
      blob ? [blob.arrayBuffer().then((bytes) => ({ entry, bytes }))] : [],
    ),
  );
  return { files, missing: found.flatMap(({ entry, blob }) => (blob ? [] : [entry.name])) };
}

type Read = LoggedResults & { missing: string[] };
const kept = new WeakMap<OvenState, Map<number, Promise<Read>>>();

/** A file whose bytes came back says more than before. */
export function forgetReadings(state: OvenState): void {
  kept.delete(state);
}

/** Tubes and what they had before come into memory one after the other; a key tells how many are there. */
const keyOf = (tubes: readonly Tube[]): number =>
  tubes.reduce((sum, { earlier }) => sum + (earlier?.length ?? 0), 1000 * tubes.length);

/** Once for every state of an oven load: the chart and the screen ask for the same. */
function readWith(state: OvenState, tubes: readonly Tube[]): Promise<Read> {
  const key = keyOf(tubes);
  const made = kept.get(state) ?? new Map<number, Promise<Read>>();
  kept.set(state, made);
  const reading =
    made.get(key) ??
    Promise.all([filesOf(state), import('#app/curing/logger/aside.ts')]).then(
      async ([{ files, missing }, { aside }]) => ({
        ...(await aside('results', { state, tubes: [...tubes], files })),
        missing,
      }),
    );
  made.set(key, reading);
  return reading;
}

/** The same for a page that waits for it; by hand alone where no file can be read. */
export async function resultsRead(state: OvenState, tubes: readonly Tube[]): Promise<OvenResults> {
  if (state.loggerFiles.length === 0) return ovenResults(state, tubes);
  const read = await readWith(state, tubes).catch(() => undefined);
  return read?.results ?? ovenResults(state, tubes);
}

/** What the readings of an oven load say; with a logger's file it is reckoned beside the page, and comes a moment later. */
export function useOvenResults(state: OvenState, tubes: readonly Tube[]): WithFiles {
  const isLogged = state.loggerFiles.length > 0;
  const read = useSignal<{ state: OvenState; with: Read } | undefined>(undefined);
  const failed = useSignal(false);
  useEffect(() => {
    if (!isLogged) return;
    let current = true;
    readWith(state, tubes)
      .then((found) => {
        if (current) read.value = { state, with: found };
      })
      .catch(() => {
        if (current) failed.value = true;
      });
    return () => {
      current = false;
    };
  }, [state, keyOf(tubes)]);
  const known = isLogged && read.value?.state.header.id === state.header.id ? read.value : undefined;
  const byHand = useMemo(
    () => (known ? undefined : ovenResults(state, tubes)),
    [known === undefined, state, keyOf(tubes)],
  );
  const rest = { reading: isLogged && !failed.value && known?.state !== state, failed: failed.value };
  if (known) return { ...known.with, ...rest };
  return { results: byHand ?? ovenResults(state, tubes), missing: [], ...rest };
}
