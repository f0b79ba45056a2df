import type { LoggerDialect, LoggerTime } from '#shared/record/logger-file.ts';
import { readClock, readDate, readLapse, stampOf } from './clock-cells.ts';
import type { Table } from './layout.ts';
import { readNumber } from './numbers.ts';

export const secondsOf = { ms: 0.001, s: 1, min: 60, h: 3600, day: 86_400 } as const;
/** Spreadsheets count days from here, ms. */
const serialZero = Date.UTC(1899, 11, 30);
const day = 86_400_000;

export interface Clocked {
  /** Minutes east of UTC that the logger's clock shows. */
  zone: number;
  /** When a count began, or a time on the day of the first time of day, ms */
  startsAt: number;
  /** s by which its clock is put on */
  shift: number;
}

type ReadTime = (row: readonly string[]) => number;

/** A date is the same for thousands of rows: read once. */
function datesRead(order: LoggerTime['order']): (text: string) => number {
  let last = '';
  let at = Number.NaN;
  return (text) => {
    if (text !== last) {
      last = text;
      at = readDate(text, order);
    }
    return at;
  };
}

function stampReader({ columns, order }: LoggerTime, zone: number): ReadTime {
  const date = datesRead(order);
  const [first = 0, second] = columns;
  if (second !== undefined) {
    return (row) => date(row[first]?.trim() ?? '') + readClock(row[second] ?? '') * 1000 - zone * 60_000;
  }
  return (row) => {
    const parts = stampOf(row[first] ?? '');
    if (!parts) return Number.NaN;
    return date(parts.date) + readClock(parts.clock) * 1000 - (parts.zone ?? zone) * 60_000;
  };
}

/** Midnight begins another day; a clock that is set back a little does not. */
function timeOfDayReader(column: number, zone: number, startsAt: number): ReadTime {
  let midnight = Math.floor((startsAt + zone * 60_000) / day) * day;
  let before = Number.NaN;
  return (row) => {
    const clock = readClock(row[column] ?? '');
    if (clock < before - 43_200) midnight += day;
    if (!Number.isNaN(clock)) before = clock;
    return midnight + clock * 1000 - zone * 60_000;
  };
}

function readerOf({ time, decimal }: LoggerDialect, { zone, startsAt }: Clocked): ReadTime {
  const column = time.columns[0] ?? 0;
  const per = secondsOf[time.unit ?? 's'] * 1000;
  switch (time.form) {
    case 'stamp':
      return stampReader(time, zone);
    case 'timeOfDay':
      return timeOfDayReader(column, zone, startsAt);
    case 'elapsed':
      return (row) => startsAt + readLapse(row[column] ?? '', time.unit === 'min' ? 'min' : 'h') * 1000;
    case 'number':
      return (row) => startsAt + readNumber(row[column], decimal) * per;
    case 'epoch':
      return (row) => readNumber(row[column], decimal) * per;
    case 'serial':
      return (row) => serialZero + readNumber(row[column], decimal) * day - zone * 60_000;
  }
}

/** When each row was, ms; NaN where it does not say. A day in a figure of few decimals is true to a millisecond. */
export function readTimes(table: Table, dialect: LoggerDialect, clocked: Clocked): Float64Array {
  const read = readerOf(dialect, clocked);
  const at = new Float64Array(Math.max(0, table.length - dialect.firstRow));
  for (let i = 0; i < at.length; i++) {
    at[i] = Math.round(read(table[dialect.firstRow + i] ?? []) + clocked.shift * 1000);
  }
  return at;
}
