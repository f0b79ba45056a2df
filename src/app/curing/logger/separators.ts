import { delimiters, type LoggerDialect } from '#shared/record/logger-file.ts';

type Delimiter = LoggerDialect['delimiter'];

const sampleLines = 300;

/** Lines from the head and from further on, where the preamble is over. */
export function sampleOf(text: string): string[] {
  const head = text.slice(0, 60_000).split(/\r\n|\r|\n/, sampleLines);
  return head.filter((line) => line.trim() !== '');
}

function countOutsideQuotes(line: string, delimiter: Delimiter): number {
  let count = 0;
  let isQuoted = false;
  for (const character of line) {
    if (character === '"') isQuoted = !isQuoted;
    else if (character === delimiter && !isQuoted) count += 1;
  }
  return count;
}

/** How many lines have the count that most lines have. */
function agreeing(lines: readonly string[], delimiter: Delimiter): number {
  const counts = new Map<number, number>();
  for (const line of lines) {
    const n = countOutsideQuotes(line, delimiter);
    if (n > 0) counts.set(n, (counts.get(n) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}

/** A comma may be a decimal comma, so what else separates as well goes before it. */
const preferred: readonly Delimiter[] = ['\t', ';', '|', ','];

/** What separates the cells; undefined when nothing does in most lines. */
export function delimiterOf(text: string): Delimiter | undefined {
  const lines = sampleOf(text);
  const enough = lines.length / 2;
  const found = preferred.find((d) => agreeing(lines, d) > enough);
  if (found) return found;
  const best = delimiters.map((d) => ({ d, n: agreeing(lines, d) })).sort((a, b) => b.n - a.n)[0];
  return best && best.n > 1 ? best.d : undefined;
}

const withComma = /^[-+−]?\d+,\d+$/;
const withPoint = /^[-+−]?\d+\.\d+$/;

/** What most numbers of these rows have before their decimals. */
export function decimalOf(rows: readonly (readonly string[])[]): LoggerDialect['decimal'] {
  let commas = 0;
  let points = 0;
  for (const cell of rows.flat()) {
    const text = cell.trim();
    if (withComma.test(text)) commas += 1;
    else if (withPoint.test(text)) points += 1;
  }
  return commas > points ? ',' : '.';
}
