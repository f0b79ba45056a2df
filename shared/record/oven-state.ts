import { closedSince, foldClocks, lastHappened } from './build-state.ts';
import type { ClockState } from './clock-state.ts';
import type { AnyEntry, Entry, EntryOf } from './entry.ts';
import { type Fact, holding, settle } from './journal.ts';
import type { Channel, OvenLoadHeader } from './oven-load.ts';

export interface ReadingAt {
  /** ms */
  at: number;
  /** K */
  temperature: number;
  root: string;
}

/** An oven load as it stands: its header and the pure fold of its entries. */
export interface OvenState {
  header: OvenLoadHeader;
  facts: Fact[];
  /** In the order they were read. */
  readings: { channel: Channel; at: ReadingAt[] }[];
  builds: { build: string; round: number; channel?: string }[];
  litAt?: number;
  offAt?: number;
  outAt?: number;
  clocks: ClockState[];
  notes: Fact<EntryOf<'note'>>[];
  /** Files of a logger in the order they were brought in, each file once. */
  loggerFiles: Fact<EntryOf<'loggerFile'>>[];
  closedAt?: number;
  lastAt: number;
}

/** Brought in on two phones it is one file still: what was said of it last holds. */
function loggerFilesOf(facts: readonly Fact<Entry>[]): OvenState['loggerFiles'] {
  const files = facts.filter((f): f is Fact<EntryOf<'loggerFile'>> => f.entry.kind === 'loggerFile');
  const byHash = new Map<string, Fact<EntryOf<'loggerFile'>>>();
  for (const file of files) {
    const known = byHash.get(file.entry.hash);
    const isLater =
      !known ||
      file.entry.recordedAt > known.entry.recordedAt ||
      (file.entry.recordedAt === known.entry.recordedAt && file.entry.id > known.entry.id);
    if (isLater) byHash.set(file.entry.hash, file);
  }
  return [...byHash.values()].sort((a, b) => (a.root < b.root ? -1 : 1));
}

function channelsOf(header: OvenLoadHeader, files: OvenState['loggerFiles']): Channel[] {
  const brought = files.flatMap((f) => f.entry.channels ?? []);
  return [...new Map([...brought, ...header.channels].map((c) => [c.id, c])).values()].sort(
    (a, b) => place(header, a) - place(header, b),
  );
}

const place = (header: OvenLoadHeader, channel: Channel): number => {
  const at = header.channels.findIndex((c) => c.id === channel.id);
  return at < 0 ? header.channels.length : at;
};

export function foldOvenLoad(header: OvenLoadHeader, entries: readonly AnyEntry[]): OvenState {
  const all = settle(entries);
  const facts = holding(all);
  const loggerFiles = loggerFilesOf(facts);
  const readings = channelsOf(header, loggerFiles).map((channel) => ({ channel, at: [] as ReadingAt[] }));
  const state: OvenState = {
    header,
    facts: all,
    readings,
    builds: [],
    clocks: foldClocks(facts, []),
    notes: facts.filter((f): f is Fact<EntryOf<'note'>> => f.entry.kind === 'note'),
    loggerFiles,
    lastAt: lastHappened(header, facts),
  };
  for (const { entry: e, root } of facts) {
    if (e.kind === 'reading') {
      const series = readings.find((r) => r.channel.id === e.channel);
      series?.at.push({ at: e.happenedAt, temperature: e.temperature, root });
    } else if (e.kind === 'joinedOvenLoad') {
      if (state.builds.some((b) => b.build === e.build && b.round === e.round)) continue;
      state.builds.push({
        build: e.build,
        round: e.round,
        ...(e.channel !== undefined && { channel: e.channel }),
      });
    } else if (e.kind === 'ovenStage') {
      if (e.stage === 'lit') state.litAt ??= e.happenedAt;
      else if (e.stage === 'off') state.offAt ??= e.happenedAt;
      else state.outAt ??= e.happenedAt;
    }
  }
  const closedAt = closedSince(facts);
  if (closedAt !== undefined) state.closedAt = closedAt;
  return state;
}
