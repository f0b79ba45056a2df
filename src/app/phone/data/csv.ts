import { settings } from '#app/state/settings.ts';
import { inUnits } from '#shared/units/format.ts';
import { type Quantity, unitFor } from '#shared/units/quantity.ts';

export type Cell = string | number | undefined;

/** One column: its head, with the unit of every figure under it. */
export interface Column<R> {
  head: string;
  cell: (row: R) => Cell;
}

/** A value in the builder's unit, with the decimals it is shown with and one more: a plain number, never a text. */
function figure(si: number | undefined, quantity: Quantity): number | undefined {
  if (si === undefined) return undefined;
  const { value, decimals } = inUnits(si, { quantity, system: settings.value.units, bare: true });
  return Number(value.toFixed(decimals + 1));
}

export function measured<R>(head: string, quantity: Quantity, si: (row: R) => number | undefined): Column<R> {
  return {
    head: `${head} [${unitFor(quantity, settings.value.units)}]`,
    cell: (row) => figure(si(row), quantity),
  };
}

/** A spreadsheet runs what begins like a formula, blanks before it or not: a note must stay a note. */
const formula = /^\s*[=+\-@＝＋－＠]/;

// Without it a spreadsheet reads ° and ² as something else.
const byteOrderMark = '\uFEFF';

/** Comma-separated text with decimal points, whatever the phone's language. */
export async function csvText<R>(columns: readonly Column<R>[], rows: readonly R[]): Promise<string> {
  const { default: papa } = await import('papaparse');
  const cells = rows.map((row) => columns.map(({ cell }) => cell(row) ?? ''));
  const text = papa.unparse({ fields: columns.map((c) => c.head), data: cells }, { escapeFormulae: formula });
  return byteOrderMark + text;
}
