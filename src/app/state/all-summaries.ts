import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { BuildSummary, OvenSummary, Summary } from '#shared/record/summary.ts';
import type { Store } from '#storage/store.ts';
import { cameInWhole, type Journal, journals } from './journals.ts';
import { theStore } from './shop.ts';

/** Every build and oven load, newest first. */
export interface AllSummaries {
  builds: readonly BuildSummary[];
  ovens: readonly OvenSummary[];
}

const known = signal<AllSummaries | undefined>(undefined);

let readFrom: Store | undefined;
let reading: Promise<void> | undefined;
/** The journals as they stood when what is known was read. */
let seen: ReadonlyMap<string, Journal> = new Map();
let seenWhole = 0;

const newestFirst = (a: Summary, b: Summary) =>
  b.startedAt - a.startedAt || (a.subject < b.subject ? 1 : a.subject > b.subject ? -1 : 0);

function sorted(all: readonly Summary[]): AllSummaries {
  const inOrder = [...all].sort(newestFirst);
  return {
    builds: inOrder.filter((s) => s.of === 'build'),
    ovens: inOrder.filter((s) => s.of === 'ovenLoad'),
  };
}

async function readAll(store: Store): Promise<void> {
  seen = journals.peek();
  seenWhole = cameInWhole.peek();
  const all: Summary[] = [];
  await store.eachSummary((slice) => {
    for (const one of slice) all.push(one);
  });
  readFrom = store;
  known.value = sorted(all);
}

/** What was written to since: its journal is another object. */
async function readChanged(store: Store, before: AllSummaries): Promise<void> {
  const now = journals.peek();
  const changed = [...now].filter(([subject, journal]) => seen.get(subject) !== journal).map(([s]) => s);
  seen = now;
  if (changed.length === 0) return;
  const fresh = await Promise.all(changed.map((subject) => store.summary(subject)));
  const kept = [...before.builds, ...before.ovens].filter((s) => !changed.includes(s.subject));
  known.value = sorted([...kept, ...fresh.filter((s) => s !== undefined)]);
}

/** Reads everything once, and later only what was written to since. */
export async function refreshSummaries(): Promise<void> {
  // One after the other: two readings at once could let the older one win.
  while (reading) await reading;
  const store = theStore();
  const before = readFrom === store && seenWhole === cameInWhole.peek() ? known.peek() : undefined;
  reading = (before ? readChanged(store, before) : readAll(store)).finally(() => {
    reading = undefined;
  });
  await reading;
}

export const allSummaries: ReadonlySignal<AllSummaries | undefined> = known;

/** All of them, kept up with what is written; undefined until they were read for the first time. */
export function useAllSummaries(): AllSummaries | undefined {
  const written = journals.value;
  const whole = cameInWhole.value;
  useEffect(() => {
    refreshSummaries();
  }, [written, whole]);
  const all = known.value;
  return readFrom === theStore() ? all : undefined;
}
