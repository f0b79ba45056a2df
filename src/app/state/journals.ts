import { computed, signal } from '@preact/signals';
import { type BuildState, foldBuild, foldClocks } from '#shared/record/build-state.ts';
import type { ClockState } from '#shared/record/clock-state.ts';
import { type AnyEntry, benchSubject } from '#shared/record/entry.ts';
import { holding, settle } from '#shared/record/journal.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import type { Header } from '#shared/record/read.ts';
import type { ReadSubject } from '#storage/first-read.ts';
import { demoChosen } from './chosen-shop.ts';
import { theStore } from './shop.ts';

/** One subject's header and entries. A new object for every change, so that folds can be kept by it. */
export interface Journal {
  subject: string;
  header: Header | undefined;
  entries: readonly AnyEntry[];
}

/** Free timers older than this are history, s */
const benchReachesBack = 7 * 24 * 3600;

export const journals = signal<ReadonlyMap<string, Journal>>(new Map());

/** How often subjects came in whole, from a backup or another tab: they need not be among the journals. */
export const cameInWhole = signal(0);

/** Records that could not be read, set aside; the raw record stays where it is. */
export const setAside = signal(0);

const folds = new WeakMap<Journal, BuildState | OvenState>();

function fold(journal: Journal): BuildState | OvenState | undefined {
  const known = folds.get(journal);
  if (known || !journal.header) return known;
  const made =
    journal.header.record === 'build'
      ? foldBuild(journal.header, journal.entries)
      : foldOvenLoad(journal.header, journal.entries);
  folds.set(journal, made);
  return made;
}

const isBuild = (state: BuildState | OvenState | undefined): state is BuildState =>
  state?.header.record === 'build';
const isOven = (state: BuildState | OvenState | undefined): state is OvenState =>
  state?.header.record === 'ovenLoad';

/** The build as it stands, when its journal is loaded. */
export function buildState(id: string): BuildState | undefined {
  const journal = journals.value.get(id);
  const state = journal && fold(journal);
  return isBuild(state) ? state : undefined;
}

export function ovenState(id: string): OvenState | undefined {
  const journal = journals.value.get(id);
  const state = journal && fold(journal);
  return isOven(state) ? state : undefined;
}

const states = computed(() => [...journals.value.values()].map(fold));
const lastFirst = (a: { lastAt: number }, b: { lastAt: number }) => b.lastAt - a.lastAt;

export const openBuilds = computed(() =>
  states.value
    .filter(isBuild)
    .filter((s) => s.closedAt === undefined)
    .sort(lastFirst),
);
export const openOvenLoads = computed(() =>
  states.value
    .filter(isOven)
    .filter((s) => s.closedAt === undefined)
    .sort(lastFirst),
);
export const benchClocks = computed<ClockState[]>(() => {
  const bench = journals.value.get(benchSubject);
  return bench ? foldClocks(holding(settle(bench.entries)), []) : [];
});

/** From when on the bench's own entries are read, ms. The demo's ids are older than what they tell, which was moved to now. */
export const benchSince = () => (demoChosen() ? undefined : Date.now() - benchReachesBack * 1000);

async function read(subject: string): Promise<Journal> {
  const store = theStore();
  const since = subject === benchSubject ? benchSince() : undefined;
  const [header, entries] = await Promise.all([store.header(subject), store.entries(subject, since)]);
  return asJournal({ subject, header, entries });
}

function asJournal({ subject, header, entries: gated }: ReadSubject): Journal {
  const entries = gated.flatMap((g) => (g.ok ? [g.value] : []));
  setAside.value += gated.length - entries.length + (header && !header.ok ? 1 : 0);
  return { subject, header: header?.ok ? header.value : undefined, entries };
}

/** An entry written while its journal was read from disk must not vanish from the screen. */
function joined(read: Journal, known: Journal | undefined): Journal {
  const onDisk = new Set(read.entries.map((e) => e.id));
  const later = known?.entries.filter((e) => !onDisk.has(e.id)) ?? [];
  return { ...read, header: read.header ?? known?.header, entries: [...read.entries, ...later] };
}

/** Brings subjects into memory; those already there are left alone unless `again`. */
export async function loadJournals(subjects: readonly string[], again = false): Promise<void> {
  const wanted = subjects.filter((s) => again || !journals.value.has(s));
  takeJournals(await Promise.all(wanted.map(read)));
}

function takeJournals(read: readonly Journal[]): void {
  if (read.length === 0) return;
  const next = new Map(journals.value);
  for (const journal of read) next.set(journal.subject, joined(journal, next.get(journal.subject)));
  journals.value = next;
}

/** Takes in what was read at the opening. */
export const takeRead = (read: readonly ReadSubject[]): void => takeJournals(read.map(asJournal));

/** Takes in what has just been written. */
export function takeIn(headers: readonly Header[], entries: readonly AnyEntry[]): void {
  const next = new Map(journals.value);
  for (const header of headers) next.set(header.id, { subject: header.id, header, entries: [] });
  for (const entry of entries) {
    const journal = next.get(entry.subject);
    if (journal) next.set(entry.subject, { ...journal, entries: [...journal.entries, entry] });
    else if (entry.subject === benchSubject) {
      next.set(benchSubject, { subject: benchSubject, header: undefined, entries: [entry] });
    }
  }
  journals.value = next;
}
