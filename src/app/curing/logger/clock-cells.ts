import type { LoggerTime } from '#shared/record/logger-file.ts';

export type DateOrder = NonNullable<LoggerTime['order']>;

/** 10:40, 10:40:05, 10:40:05.250, 10:40 PM */
const clock = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?\s*(?:([ap])\.?\s*m\.?)?$/i;

const fraction = (digits: string | undefined) => (digits === undefined ? 0 : Number(`0.${digits}`));

/** A time of day, s since midnight; NaN when it is none. */
export function readClock(text: string): number {
  const parts = clock.exec(text.trim());
  if (!parts) return Number.NaN;
  const [, h = '', m = '', s = '0', decimals, half] = parts;
  const [hours, minutes, seconds] = [Number(h), Number(m), Number(s)];
  if (minutes > 59 || seconds > 59 || hours > (half ? 12 : 24) || (half && hours === 0)) return Number.NaN;
  const of24 = half ? (hours % 12) + (half.toLowerCase() === 'p' ? 12 : 0) : hours;
  return of24 * 3600 + minutes * 60 + seconds + fraction(decimals);
}

/** 1:02:03, 26:10:05.5, 1 02:03:04, 12:30 */
const lapse = /^(?:(\d+)\s*d?(?:ays?)?[\s.:,]\s*(?=\d+:\d+:))?(\d+):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?$/i;

/** Time gone by, s; of two figures alone `two` says what they are: h:mm or mm:ss. */
export function readLapse(text: string, two: 'h' | 'min'): number {
  const parts = lapse.exec(text.trim());
  if (!parts) return Number.NaN;
  const [, days = '0', a = '', b = '', c, decimals] = parts;
  if (Number(b) > 59 || Number(c ?? 0) > 59) return Number.NaN;
  if (c === undefined && two === 'min') return Number(a) * 60 + Number(b);
  return Number(days) * 86_400 + Number(a) * 3600 + Number(b) * 60 + Number(c ?? 0) + fraction(decimals);
}

const figures = /^(\d{1,4})([-/.])(\d{1,2})\2(\d{1,4})\.?$/;
const compact = /^(\d{4})(\d{2})(\d{2})$/;
const named = /^(\d{1,2})[-/. ]([a-z]{3,9})\.?[-/. ,]+(\d{2,4})$/i;
const namedFirst = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})$/i;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** The three figures of a date as they stand; undefined when it is none, or when a name says which is the month. */
export function dateFigures(text: string): [number, number, number] | undefined {
  const parts = figures.exec(text) ?? undefined;
  if (!parts) return undefined;
  return [Number(parts[1]), Number(parts[3]), Number(parts[4])];
}

function midnight(year: number, month: number, day: number): number {
  const full = year < 100 ? 2000 + year : year;
  const at = Date.UTC(full, month - 1, day);
  const made = new Date(at);
  const isReal = made.getUTCMonth() === month - 1 && made.getUTCDate() === day && full >= 1970 && full < 2200;
  return isReal ? at : Number.NaN;
}

/** A date as ms of its midnight, as if it were UTC; NaN when there is no such day. */
export function readDate(text: string, order: DateOrder | undefined): number {
  const date = dateFigures(text);
  if (date) {
    const [a, b, c] = date;
    if (a > 31 || order === 'ymd') return midnight(a, b, c);
    return order === 'mdy' ? midnight(c, a, b) : midnight(c, b, a);
  }
  const short = compact.exec(text);
  if (short) return midnight(Number(short[1]), Number(short[2]), Number(short[3]));
  const [, day, word, year] = named.exec(text) ?? [];
  if (word) return midnight(Number(year), months.indexOf(word.slice(0, 3).toLowerCase()) + 1, Number(day));
  const [, first, second, third] = namedFirst.exec(text) ?? [];
  if (!first) return Number.NaN;
  return midnight(Number(third), months.indexOf(first.slice(0, 3).toLowerCase()) + 1, Number(second));
}

const zoneSuffix = /\s*(?:(Z|UTC|GMT)|([+-])(\d{2}):?(\d{2}))$/;
const stampParts =
  /^(\S+?|\d{1,2} [A-Za-z]{3,9}\.? \d{4}|[A-Za-z]{3,9}\.? \d{1,2},? \d{4})(?:[T ]\s*|,\s*|_)(\d{1,2}:.*|\d{6})$/;

export interface StampParts {
  date: string;
  clock: string;
  /** Minutes east of UTC, when the stamp says so itself. */
  zone?: number;
}

/** '2026-05-16T10:00:00Z' as its parts; undefined when it is no date with a time of day. */
export function stampOf(text: string): StampParts | undefined {
  const [, date, rest] = stampParts.exec(text.trim()) ?? [];
  if (date === undefined || rest === undefined) return undefined;
  const suffix = zoneSuffix.exec(rest);
  const bare = suffix ? rest.slice(0, suffix.index) : rest;
  const clockText = /^\d{6}$/.test(bare) ? bare.replace(/(..)(..)(..)/, '$1:$2:$3') : bare;
  if (!suffix) return { date, clock: clockText };
  const size = Number(suffix[3] ?? 0) * 60 + Number(suffix[4] ?? 0);
  return { date, clock: clockText, zone: suffix[2] === '-' ? -size : size };
}
