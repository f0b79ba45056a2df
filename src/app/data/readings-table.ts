import type { EntryOf } from '#shared/record/entry.ts';
import { holding } from '#shared/record/journal.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type Column, measured } from './csv.ts';
import { isoWithOffset } from './file-words.ts';

export interface ReadingRow {
  load: number;
  channel: string;
  sees: string;
  entry: EntryOf<'reading'>;
  /** s since the oven was lit, where that is known */
  since: number | undefined;
}

/** Every reading of an oven load that holds, in the order they were read. */
export function readingRows({ header, facts, litAt }: OvenState): ReadingRow[] {
  return holding(facts).flatMap(({ entry }) => {
    if (entry.kind !== 'reading') return [];
    const channel = header.channels.find((c) => c.id === entry.channel);
    return [
      {
        load: header.number,
        channel: channel?.name ?? entry.channel,
        sees: channel?.sees ?? '',
        entry,
        since: litAt === undefined ? undefined : (entry.happenedAt - litAt) / 1000,
      },
    ];
  });
}

export const readingColumns = (): Column<ReadingRow>[] => [
  { head: 'Oven load', cell: (r) => r.load },
  { head: 'Time', cell: (r) => isoWithOffset(r.entry.happenedAt, r.entry.zone) },
  measured('Since lit', 'duration', (r) => r.since),
  { head: 'Channel', cell: (r) => r.channel },
  { head: 'Sees', cell: (r) => r.sees },
  measured('Temperature', 'temperature', (r) => r.entry.temperature),
];
