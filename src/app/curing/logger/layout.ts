import { dateFigures, readClock, readDate, readLapse, stampOf } from './clock-cells.ts';

export type Table = readonly (readonly string[])[];

/** Rows looked at to find where readings begin */
const looked = 400;

const number = /^[-+−]?\d*[.,]?\d+(?:e[-+]?\d+)?\s*(?:°|º|deg)?\s*[CFK]?$/i;
/** What loggers write where they read nothing. */
const nothing = /^(?:-+|\*+|#+|nan|n\/?a|null|ol|open|err(?:or)?|o\.?c\.?|fault|---.*|under|over|inf)$/i;

export const isTime = (cell: string): boolean =>
  stampOf(cell) !== undefined ||
  !Number.isNaN(readClock(cell)) ||
  !Number.isNaN(readLapse(cell, 'h')) ||
  dateFigures(cell.trim()) !== undefined ||
  (/[a-z]/i.test(cell) && !Number.isNaN(readDate(cell.trim(), undefined)));

export const isFigure = (cell: string): boolean => number.test(cell.trim());

/** A row of readings: a time or a number in most of its cells, and no words. */
export function isData(row: readonly string[]): boolean {
  const full = row.map((cell) => cell.trim()).filter((cell) => cell !== '');
  const said = full.filter((cell) => isFigure(cell) || isTime(cell)).length;
  const other = full.filter((cell) => !isFigure(cell) && !isTime(cell) && !nothing.test(cell)).length;
  return (
    said >= 1 &&
    full.length >= 2 &&
    said + full.filter((cell) => nothing.test(cell)).length >= 0.6 * full.length &&
    other <= 0.4 * full.length
  );
}

const isBlank = (row: readonly string[]): boolean => row.every((cell) => cell.trim() === '');

function commonest(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
}

/** First row of readings: of the usual width, and the next one is like it. */
export function firstDataRow(table: Table): number {
  const rows = table.slice(0, looked);
  const width = commonest(rows.filter((row) => !isBlank(row) && isData(row)).map((row) => row.length));
  const isOne = (row: readonly string[] | undefined) =>
    row !== undefined && row.length === width && isData(row);
  return rows.findIndex((row, i) => {
    const next = table.slice(i + 1, i + 4).find((r) => !isBlank(r));
    return isOne(row) && (next === undefined || isOne(next));
  });
}

const unitCell =
  /^[[(]?(?:°?\s*[CFK]|º[CF]|deg\.?\s*[CFK]|s|sec|min|h|hr|hh?:mm(?::ss)?|%|%\s*rh|v|mv|a|[dmy]{1,4}[-/.][dmy]{1,4}[-/.][dmy]{1,4}.*)[\])]?$/i;

/** The heads of the columns above a row; a line of units under them is taken along. */
export function headsAbove(table: Table, firstRow: number): string[] {
  const width = table[firstRow]?.length ?? 0;
  const above: (readonly string[])[] = [];
  for (let i = firstRow - 1; i >= 0 && above.length < 2; i--) {
    const row = table[i];
    if (row && !isBlank(row)) above.push(row);
  }
  const [near, far] = above;
  const isHead = (row: readonly string[] | undefined): row is readonly string[] =>
    row !== undefined && row.length >= Math.max(2, width - 1) && row.length <= width + 1 && !isData(row);
  const full = near?.map((c) => c.trim()).filter(Boolean) ?? [];
  const isUnits = full.length > 0 && full.every((cell) => unitCell.test(cell));
  const cellsOf = (row: readonly string[]) => Array.from({ length: width }, (_, i) => row[i]?.trim() ?? '');
  if (isHead(near) && isUnits && isHead(far)) {
    return cellsOf(far).map((head, i) => [head, near[i]?.trim() ?? ''].filter(Boolean).join(' '));
  }
  return isHead(near) ? cellsOf(near) : [];
}
