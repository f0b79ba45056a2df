import type { LoggerColumn, LoggerDialect } from '#shared/record/logger-file.ts';
import { kelvinOf } from './columns.ts';
import type { Table } from './layout.ts';
import { readNumber } from './numbers.ts';
import { type Clocked, readTimes } from './time-column.ts';

/** A file as it stands, row by row: nothing left out yet. */
export interface RawFile {
  /** ms; NaN where a row does not say when it was */
  at: Float64Array;
  /** K; NaN where there is no number */
  columns: { column: number; channel: string; temperature: Float64Array }[];
}

/** Some loggers write the newest row first. */
function isBackward(at: Float64Array): boolean {
  let back = 0;
  let on = 0;
  for (let i = 1; i < at.length; i++) {
    const step = (at[i] ?? 0) - (at[i - 1] ?? 0);
    if (step < 0) back += 1;
    else if (step > 0) on += 1;
  }
  return back > on;
}

export function readColumns(
  table: Table,
  dialect: LoggerDialect,
  columns: readonly LoggerColumn[],
  clocked: Clocked,
): RawFile {
  const at = readTimes(table, dialect, clocked);
  const backward = isBackward(at);
  if (backward) at.reverse();
  return {
    at,
    columns: columns.map(({ column, channel, unit }) => {
      const temperature = new Float64Array(at.length);
      const toKelvin = kelvinOf[unit];
      for (let i = 0; i < at.length; i++) {
        const cell = table[dialect.firstRow + i]?.[column];
        temperature[i] = toKelvin(readNumber(cell, dialect.decimal));
      }
      if (backward) temperature.reverse();
      return { column, channel, temperature };
    }),
  };
}
