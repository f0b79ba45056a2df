import type { Logged } from '#app/curing/oven/merged.ts';
import { zoneAt } from '#app/state/now.ts';
import { holding } from '#shared/record/journal.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type Column, measured } from './csv.ts';
import { isoWithOffset } from './file-words.ts';

export interface ReadingRow {
  load: number;
  channel: string;
  sees: string;
  /** ms, and minutes east of UTC where it was read */
  at: number;
  zone: number;
  /** K; absent where a file's bytes are not here */
  temperature?: number;
  /** 'by hand', or the name of a logger's file */
  source: string;
  /** s since the oven was lit, where that is known */
  since?: number;
}

/** What a logger's file says; without its bytes nobody knows. */
export interface FileRead {
  name: string;
  at: number;
  logged?: readonly Logged[];
}

type Rows = (channel: string, at: number, zone: number) => Omit<ReadingRow, 'source' | 'temperature'>;

function rowsOf({ header, litAt }: OvenState): Rows {
  return (id, at, zone) => {
    const channel = header.channels.find((c) => c.id === id);
    return {
      load: header.number,
      channel: channel?.name ?? id,
      sees: channel?.sees ?? '',
      at,
      zone,
      ...(litAt !== undefined && { since: (at - litAt) / 1000 }),
    };
  };
}

function rowsOfFile({ name, at, logged }: FileRead, row: Rows): ReadingRow[] {
  if (!logged) return [{ ...row('', at, zoneAt(at)), source: `${name}, which is not on this phone` }];
  return logged.flatMap((one) =>
    Array.from(one.at, (time, i) => ({
      ...row(one.channel, time, zoneAt(time)),
      source: name,
      temperature: one.temperature[i] ?? Number.NaN,
    })),
  );
}

/** Every reading of an oven load that holds: by hand in the order they were read, then file by file. */
export function readingRows(state: OvenState, files: readonly FileRead[] = []): ReadingRow[] {
  const row = rowsOf(state);
  const byHand = holding(state.facts).flatMap(({ entry }): ReadingRow[] => {
    if (entry.kind !== 'reading') return [];
    const { channel, happenedAt, zone, temperature } = entry;
    return [{ ...row(channel, happenedAt, zone), source: 'by hand', temperature }];
  });
  return [...byHand, ...files.flatMap((file) => rowsOfFile(file, row))];
}

export const readingColumns = (): Column<ReadingRow>[] => [
  { head: 'Oven load', cell: (r) => r.load },
  { head: 'Time', cell: (r) => isoWithOffset(r.at, r.zone) },
  measured('Since lit', 'duration', (r) => r.since),
  { head: 'Channel', cell: (r) => r.channel },
  { head: 'Sees', cell: (r) => r.sees },
  measured('Temperature', 'temperature', (r) => r.temperature),
  { head: 'Read', cell: (r) => r.source },
];
