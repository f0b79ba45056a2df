import type { LoggerDialect } from '#shared/record/logger-file.ts';
import { type DateOrder, readClock, readDate, stampOf } from './clock-cells.ts';
import { type HeatColumn, heatColumns } from './columns.ts';
import { encodingOf } from './decode.ts';
import { firstDataRow, headsAbove, type Table } from './layout.ts';
import { decimalOf } from './separators.ts';
import { guessTime } from './time-guess.ts';

export interface Look {
  dialect: LoggerDialect;
  /** More than one: dates fit each of these orders, and the builder is asked. */
  orders: DateOrder[];
  heat: HeatColumn[];
  /** A start that the preamble tells, as if it were UTC, ms */
  startSaid?: number;
  /** First rows with readings, as they stand. */
  sample: string[][];
  rows: number;
}

export type Looked =
  | { ok: true; look: Look }
  | { ok: false; why: 'noColumns' | 'noReadings' | 'noTime' | 'noHeat' };

const sampled = 600;

/** So many rows spread over the file, the first ones among them. */
function spread(table: Table, firstRow: number): Table {
  const rows = table.slice(firstRow).filter((row) => row.some((cell) => cell.trim() !== ''));
  if (rows.length <= sampled) return rows;
  const step = rows.length / sampled;
  return Array.from({ length: sampled }, (_, i) => rows[i < 5 ? i : Math.floor(i * step)] ?? []);
}

/** 'Start: 2026-05-16 09:58:00' above the heads. */
function startSaid(table: Table, firstRow: number): number | undefined {
  for (const cell of table.slice(0, firstRow).flat()) {
    const parts = stampOf(cell.replace(/^[^\d]*(?=\d)/, ''));
    const at = parts ? readDate(parts.date, 'ymd') + readClock(parts.clock) * 1000 : Number.NaN;
    if (!Number.isNaN(at)) return at;
  }
  return undefined;
}

interface Context {
  bytes: Uint8Array;
  table: Table;
  delimiter: LoggerDialect['delimiter'];
  /** When the oven was lit, ms, and the hottest its schedule asks for, K */
  near: number;
  hottest: number;
  timeColumn?: number | undefined;
}

/** What kind of file this is, found out from the file alone. */
export function lookAt({ bytes, table, delimiter, near, hottest, timeColumn }: Context): Looked {
  const firstRow = firstDataRow(table);
  if (firstRow < 0) return { ok: false, why: 'noReadings' };
  const heads = headsAbove(table, firstRow);
  const rows = spread(table, firstRow);
  const decimal = decimalOf(rows);
  const guess = guessTime({ rows, heads, decimal, near, only: timeColumn });
  if (!guess) return { ok: false, why: 'noTime' };
  const heat = heatColumns({ rows, heads, decimal, time: guess.time.columns, hottest });
  if (heat.length === 0) return { ok: false, why: 'noHeat' };
  const start = startSaid(table, firstRow);
  return {
    ok: true,
    look: {
      dialect: { encoding: encodingOf(bytes), delimiter, decimal, heads, firstRow, time: guess.time },
      orders: guess.orders,
      heat,
      ...(start !== undefined && { startSaid: start }),
      sample: table.slice(firstRow, firstRow + 4).map((row) => [...row]),
      rows: table.length - firstRow,
    },
  };
}
