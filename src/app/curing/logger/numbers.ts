import type { LoggerDialect } from '#shared/record/logger-file.ts';

/** A number with its unit behind it, as some loggers write it in every cell. */
const withUnit = /^([-+]?[\d.]+(?:e[-+]?\d+)?)\s*(?:°|º|deg)?\s*[CFK]?$/i;

/** The number in a cell; NaN when there is none. */
export function readNumber(cell: string | undefined, decimal: LoggerDialect['decimal']): number {
  let text = cell?.trim().replace('−', '-') ?? '';
  if (text === '') return Number.NaN;
  if (decimal === ',') text = (text.includes(',') ? text.replaceAll('.', '') : text).replace(',', '.');
  const plain = Number(text);
  if (!Number.isNaN(plain)) return Number.isFinite(plain) ? plain : Number.NaN;
  const [, figure] = withUnit.exec(text) ?? [];
  return figure === undefined ? Number.NaN : Number(figure);
}
