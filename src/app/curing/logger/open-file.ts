import type { LoggerDialect } from '#shared/record/logger-file.ts';
import { decoded, encodingOf } from './decode.ts';
import type { Table } from './layout.ts';
import { type Looked, lookAt } from './look.ts';
import { delimiterOf } from './separators.ts';
import { tableOf } from './table.ts';

export interface Known {
  /** When the oven was lit, ms */
  near: number;
  /** The hottest that its schedule asks for, K */
  hottest: number;
  /** The column that the builder says is time. */
  timeColumn?: number | undefined;
}

export type Opened = { table: Table; looked: Looked };

/** A file of any logger, its look found out. */
export function openFile(bytes: Uint8Array, known: Known): Opened {
  const text = decoded(bytes, encodingOf(bytes));
  const delimiter = delimiterOf(text);
  if (!delimiter) return { table: [], looked: { ok: false, why: 'noColumns' } };
  const table = tableOf(text, delimiter);
  return { table, looked: lookAt({ bytes, table, delimiter, ...known }) };
}

/** A file whose dialect is in the record. */
export function openKnown(bytes: Uint8Array, dialect: LoggerDialect): Table {
  return tableOf(decoded(bytes, dialect.encoding), dialect.delimiter);
}
