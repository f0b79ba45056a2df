import { definitionOf, type Quantity, type UnitSystem, unitFor } from './quantity.ts';
import { numberPattern, readNumber, tidy } from './read-number.ts';
import { type Dimension, findUnit, isUnitOfAnything, type Unit, unitKey } from './unit-table.ts';

export type ParseFailure =
  | 'empty'
  | 'notANumber'
  | 'unknownUnit'
  | 'wrongKind'
  | 'ambiguousComma'
  | 'ambiguousPercent'
  | 'notWhole'
  | 'twoNumbers'
  | 'negative'
  | 'zero'
  | 'tooBig'
  | 'tooSmall';

export type Failed = { ok: false; reason: ParseFailure; detail?: string };
export type Parsed = { ok: true; si: number; typed: string } | Failed;

export interface ParseOptions {
  quantity: Quantity;
  system: UnitSystem;
  /** Bounds in SI, inclusive. A negative `min` lets a minus in where the quantity has none of its own. */
  min?: number | undefined;
  max?: number | undefined;
  /** Refuses zero and below. */
  positive?: boolean | undefined;
}

const longestTyped = 120;
const longestQuoted = 28;
/** In any SI unit; beyond it figures are no longer shown digit by digit. */
const absurd = 1e15;
const start = new RegExp(`^([+-]?) ?(${numberPattern}) ?`);
/** '1 h 08', '6 ft 3' and '2 lb 3' leave the last unit to the reader. */
const unitBelow: Record<string, string> = { h: 'min', min: 's', ft: 'in', lb: 'oz' };

function quote(text: string): string {
  return text.length > longestQuoted ? `${text.slice(0, longestQuoted)}…` : text;
}

/** '0:30' is half an hour and '1:08:05' has seconds; '0:30 min' is half a minute. */
function readClock(body: string): number | undefined {
  const parts = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))? ?(h|min)?$/.exec(body);
  if (!parts) return undefined;
  const [, first = '', second = '', third, unit] = parts;
  if (third !== undefined) return Number(first) * 3600 + Number(second) * 60 + Number(third);
  return (Number(first) * 60 + Number(second)) * (unit === 'min' ? 1 : 60);
}

/** '6 ft 3 1/2 in', '1 h 20 min 5 s': two terms or more, each unit smaller than the one before. */
function readTerms(body: string, dimension: Dimension): number | undefined {
  const term = new RegExp(`(${numberPattern}) ?([a-z'"#]*)[ ,-]*`, 'y');
  let total = 0;
  let before: Unit | undefined;
  let count = 0;
  while (term.lastIndex < body.length) {
    const [, figure = '', name = ''] = term.exec(body) ?? [];
    const read = readNumber(figure);
    const left = before ? unitBelow[before.label] : undefined;
    const unit = name === '' && left ? findUnit(dimension, left) : findUnit(dimension, unitKey(name));
    const isLast = term.lastIndex === body.length;
    if (!('value' in read) || !unit || (name === '' && !isLast)) return undefined;
    if (before && unit.factor >= before.factor) return undefined;
    total += read.value * unit.factor;
    before = unit;
    count += 1;
  }
  return count > 1 ? total : undefined;
}

/** In a share, 35 is 35 % and so is 0.35: above one is percent. A bare 1 is asked, not guessed. */
function readShare(value: number, figure: string, sign: string): Parsed {
  if (value === 1) return { ok: false, reason: 'ambiguousPercent', detail: figure };
  const si = value > 1 ? value / 100 : value;
  return { ok: true, si: sign === '-' ? -si : si, typed: `${sign}${figure}${value > 1 ? ' %' : ''}` };
}

function whyNotUnit(rest: string, text: string): Failed {
  if (/^[.,/]/.test(rest)) return { ok: false, reason: 'notANumber', detail: quote(text) };
  if (isUnitOfAnything(unitKey(rest))) return { ok: false, reason: 'wrongKind', detail: quote(text) };
  if (/(?:^|[^a-z^])\d/.test(rest)) return { ok: false, reason: 'twoNumbers', detail: quote(text) };
  return { ok: false, reason: 'unknownUnit', detail: quote(text) };
}

function readSize(plain: string, text: string, quantity: Quantity, system: UnitSystem): Parsed {
  const { dimension } = definitionOf(quantity);
  const [found = '', sign = '', figure = ''] = start.exec(plain) ?? [];
  const read = readNumber(figure);
  if (!('value' in read)) {
    return {
      ok: false,
      reason: read.reason,
      detail: read.reason === 'ambiguousComma' ? figure : quote(text),
    };
  }
  const rest = plain.slice(found.length);
  const key = unitKey(rest);
  if (key === '' && dimension === 'fraction') return readShare(read.value, figure, sign);
  const isBare = key === '' || (key === '°' && dimension.startsWith('temperature'));
  const unit = findUnit(dimension, isBare ? unitKey(unitFor(quantity, system)) : key);
  if (unit) {
    const typed = isBare ? `${sign}${figure} ${unit.label}`.trim() : text;
    const value = sign === '-' ? -read.value : read.value;
    return { ok: true, si: value * unit.factor + unit.zero, typed };
  }
  const body = plain.slice(sign.length).trim();
  const total = isUnitOfAnything(key)
    ? undefined
    : ((dimension === 'duration' ? readClock(body) : undefined) ?? readTerms(body, dimension));
  if (total === undefined) return whyNotUnit(rest, text);
  return { ok: true, si: sign === '-' ? -total : total, typed: text };
}

/** How far a converted bound may miss by rounding alone: 122 °F is 50 °C. */
function slackAt(bound: number): number {
  return Math.abs(bound) * 1e-12;
}

function withinBounds(parsed: Parsed & { ok: true }, options: ParseOptions): Parsed {
  const { quantity, min, max, positive } = options;
  const { dimension, mayBeNegative } = definitionOf(quantity);
  // Fifteen digits: 3/8 in is 0.009525 m and not a hair less. Adding zero makes -0 plain.
  const si = Number(parsed.si.toPrecision(15)) + 0;
  if (si < 0 && dimension === 'temperature') return { ok: false, reason: 'tooSmall' };
  if (si < 0 && (positive || !(mayBeNegative || (min ?? 0) < 0))) return { ok: false, reason: 'negative' };
  if (si === 0 && positive) return { ok: false, reason: 'zero' };
  if (quantity === 'count' && !Number.isInteger(si)) {
    return { ok: false, reason: 'notWhole', detail: parsed.typed };
  }
  if (si > absurd || (max !== undefined && si > max + slackAt(max))) return { ok: false, reason: 'tooBig' };
  if (si < -absurd || (min !== undefined && si < min - slackAt(min)))
    return { ok: false, reason: 'tooSmall' };
  return { ...parsed, si: Math.min(Math.max(si, min ?? si), max ?? si) };
}

/**
 * Reads what was typed or pasted into a field. `si` is always finite. `typed` is the text to keep with the record:
 * as written, with the field's unit added where none was, so that it says the same in either system.
 */
export function parseQuantity(text: string, options: ParseOptions): Parsed {
  const { quantity, system } = options;
  const written = text.replace(/\s+/g, ' ').trim();
  const plain = tidy(written.slice(0, longestTyped));
  if (plain === '') return { ok: false, reason: 'empty' };
  if (written.length > longestTyped) return { ok: false, reason: 'notANumber', detail: quote(written) };
  const parsed = readSize(plain, written, quantity, system);
  return parsed.ok ? withinBounds(parsed, options) : parsed;
}
