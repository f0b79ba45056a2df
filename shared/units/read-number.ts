/** A number as people write it: 12, 12.5, 12,5, .5, 1,500.5, 3/8, 1 3/8, 1-3/8. */
export const numberPattern = String.raw`\d+[ -]+\d+/\d+|\d+/\d+|[\d.,]+`;

export type ReadNumber = { value: number } | { reason: 'notANumber' | 'ambiguousComma' };

/**
 * Pasted text in plain characters: one kind of minus, quote, slash and space, no invisible marks, ASCII digits.
 * Raised digits and one-character fractions are taken apart first, since plain Unicode folding (NFKC) would make
 * 102 of 10² and 11/2 of 1½.
 */
export function tidy(text: string): string {
  return text
    .replace(/\p{Cf}/gu, '')
    .replace(/[º˚]/g, '°')
    .replace(/²/g, '^2')
    .replace(/³/g, '^3')
    .replace(/[⁰¹⁴-⁹₀-₉]/g, '^')
    .replace(/[¼-¾⅐-⅞]/g, ' $&')
    .replace(/[‘’‛′`´ʹ]/g, "'")
    .replace(/[“”‟″ʺ]|''/g, '"')
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐-―−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

const notANumber = { reason: 'notANumber' } as const;

function readFraction(text: string): ReadNumber {
  const parts = text.split(/[ /-]+/).map(Number);
  const bottom = parts.pop() ?? 0;
  const top = parts.pop() ?? 0;
  return bottom === 0 ? notANumber : { value: (parts.pop() ?? 0) + top / bottom };
}

/** A comma is a decimal comma unless it groups: 1,500 could be either, so it is asked, not guessed. */
export function readNumber(text: string): ReadNumber {
  if (text.includes('/')) return readFraction(text);
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return { reason: 'ambiguousComma' };
  if (/^\d{1,3}(,\d{3})+\.\d*$/.test(text) || /^\d{1,3}(,\d{3}){2,}$/.test(text)) {
    return { value: Number(text.replaceAll(',', '')) };
  }
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) {
    return { value: Number(text.replaceAll('.', '').replace(',', '.')) };
  }
  if (!/\d/.test(text) || !/^\d*[.,]?\d*$/.test(text)) return notANumber;
  return { value: Number(text.replace(',', '.')) };
}
