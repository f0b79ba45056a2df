import { closedSince, foldClocks, lastHappened } from './build-state.ts';
import type { ClockState } from './clock-state.ts';
import type { AnyEntry, EntryOf } from './entry.ts';
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
  closedAt?: number;
  lastAt: number;
}

export function foldOvenLoad(header: OvenLoadHeader, entries: readonly AnyEntry[]): OvenState {
  const all = settle(entries);
  const facts = holding(all);
  const readings = header.channels.map((channel) => ({ channel, at: [] as ReadingAt[] }));
  const state: OvenState = {
    header,
    facts: all,
    readings,
    builds: [],
    clocks: foldClocks(facts, []),
    notes: facts.filter((f): f is Fact<EntryOf<'note'>> => f.entry.kind === 'note'),
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
