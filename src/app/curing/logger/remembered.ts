import { theStore } from '#app/state/shop.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import { holding, settle } from '#shared/record/journal.ts';
import type { Channel } from '#shared/record/oven-load.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import { type ColumnChoice, notUsed } from './channel-choices.ts';
import type { Look } from './look.ts';

/** Oven loads looked through for a file of the same look, newest first */
const lookedThrough = 60;

export interface Remembered {
  entry: EntryOf<'loggerFile'>;
  channels: Channel[];
}

const isSameLook = (entry: EntryOf<'loggerFile'>, { dialect }: Look): boolean =>
  dialect.heads.length > 0 && JSON.stringify(entry.dialect.heads) === JSON.stringify(dialect.heads);

/** How the newest file of the same look was read: it is in the record, so a restored phone knows it too. */
export async function rememberedFor(look: Look): Promise<Remembered | undefined> {
  const store = theStore();
  const { summaries } = await store.summaries({ of: 'ovenLoad', limit: lookedThrough });
  for (const summary of summaries) {
    if (summary.of !== 'ovenLoad' || !summary.loggerFiles) continue;
    const [header, gated] = await Promise.all([
      store.header(summary.subject),
      store.entries(summary.subject),
    ]);
    if (!header?.ok || header.value.record !== 'ovenLoad') continue;
    const entries = gated.flatMap((g) => (g.ok ? [g.value] : []));
    const found = holding(settle(entries))
      .flatMap(({ entry }) => (entry.kind === 'loggerFile' && isSameLook(entry, look) ? [entry] : []))
      .at(-1);
    if (!found) continue;
    return { entry: found, channels: foldOvenLoad(header.value, entries).readings.map((r) => r.channel) };
  }
  return undefined;
}

/** The third part sensor there is the third part sensor here. */
function sameHere(channel: Channel, there: readonly Channel[], here: readonly Channel[]): string {
  const alike = (all: readonly Channel[]) => all.filter((c) => c.sees === channel.sees);
  const place = alike(there).findIndex((c) => c.id === channel.id);
  return alike(here)[place]?.id ?? `new ${channel.sees}`;
}

/** Columns as they were taken last time; what was left out then is left out now. */
export function asBefore(
  columns: readonly ColumnChoice[],
  { entry, channels }: Remembered,
  state: OvenState,
): ColumnChoice[] {
  const here = state.readings.map((r) => r.channel);
  return columns.map((column) => {
    const before = entry.columns.find((c) => c.column === column.column);
    const channel = channels.find((c) => c.id === before?.channel);
    if (!before || !channel) return { ...column, to: notUsed };
    const known = here.find((c) => c.id === channel.id)?.id;
    return { ...column, unit: before.unit, to: known ?? sameHere(channel, channels, here) };
  });
}
