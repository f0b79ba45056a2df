import papa from 'papaparse';
import type { LoggerDialect } from '#shared/record/logger-file.ts';
import type { Table } from './layout.ts';

/** The cells of a text, blank lines at its end left off. */
export function tableOf(text: string, delimiter: LoggerDialect['delimiter']): Table {
  // A file edited by hand may end its lines in two ways, and the parser knows one.
  const lines = text.replace(/\r\n?/g, '\n');
  const { data } = papa.parse<string[]>(lines, { delimiter, newline: '\n' });
  while (data.length > 0 && data.at(-1)?.every((cell) => cell.trim() === '')) data.pop();
  return data;
}
