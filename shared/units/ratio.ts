import type { Failed } from './parse.ts';
import { numberPattern, readNumber, tidy } from './read-number.ts';

export type ParsedRatio =
  | { ok: true; first: number; second: number; firstShare: number; typed: string }
  | Failed;

const longestTyped = 28;
const pair = new RegExp(`^(${numberPattern}) ?(?::|to|/) ?(${numberPattern})$`);

/** '55:45', '55 to 45', '100 / 28': two parts, resin before fabric or resin before hardener. */
export function parseRatio(text: string): ParsedRatio {
  const typed = text.replace(/\s+/g, ' ').trim();
  const plain = tidy(typed.slice(0, longestTyped));
  if (plain === '') return { ok: false, reason: 'empty' };
  if (typed.length > longestTyped)
    return { ok: false, reason: 'notANumber', detail: typed.slice(0, longestTyped) };
  if (plain.startsWith('-')) return { ok: false, reason: 'negative' };
  // A single slash is a ratio here, not a fraction.
  const [, one = '', two = ''] = pair.exec(plain.replace(/^([\d.,]+) ?\/ ?([\d.,]+)$/, '$1:$2')) ?? [];
  const first = readNumber(one);
  const second = readNumber(two);
  if (!('value' in first)) return { ok: false, reason: first.reason, detail: one || typed.slice(0, 28) };
  if (!('value' in second)) return { ok: false, reason: second.reason, detail: two };
  if (first.value === 0 || second.value === 0) return { ok: false, reason: 'zero' };
  const firstShare = first.value / (first.value + second.value);
  return { ok: true, first: first.value, second: second.value, firstShare, typed };
}

/** '55:45' from 0.55. Both parts are rounded so that they add up to 100. */
export function formatRatio(firstShare: number, digits = 0): string {
  if (!Number.isFinite(firstShare)) return '–';
  const first = Number((firstShare * 100).toFixed(digits));
  return `${first.toFixed(digits)}:${(100 - first).toFixed(digits)}`;
}
