import fc from 'fast-check';
import { derive } from '#app/curing/logger/derive.ts';
import { type Fault, repairsOf } from '#app/curing/logger/fault.ts';
import { faultsOf } from '#app/curing/logger/faults.ts';
import type { Look } from '#app/curing/logger/look.ts';
import { openFile } from '#app/curing/logger/open-file.ts';
import { readColumns } from '#app/curing/logger/read-columns.ts';
import type { LoggerDialect } from '#shared/record/logger-file.ts';

/** What an oven did, every so many seconds from a time on. */
export interface History {
  /** ms, a whole second */
  begins: number;
  /** s */
  step: number;
  /** °C, of the air and of a tube */
  air: readonly number[];
  tube: readonly number[];
}

/** How an invented logger writes. */
export interface Hand {
  delimiter: ',' | ';' | '\t';
  decimal: '.' | ',';
  unit: 'C' | 'F';
  unitIn: 'head' | 'line' | 'nowhere';
  preamble: number;
  time:
    | 'iso'
    | 'isoT'
    | 'dmy'
    | 'mdy'
    | 'apart'
    | 'amPm'
    | 'elapsed'
    | 's'
    | 'min'
    | 'day'
    | 'serial'
    | 'epoch';
  end: '\n' | '\r\n';
  index: boolean;
  mark: boolean;
}

export const lit = Date.UTC(2026, 4, 16, 14);
export const known = { near: lit, hottest: 339.15 };

const two = (n: number) => String(n).padStart(2, '0');

function clock(at: Date, half: boolean): string {
  const h = at.getUTCHours();
  const rest = `${two(at.getUTCMinutes())}:${two(at.getUTCSeconds())}`;
  return half ? `${h % 12 || 12}:${rest} ${h < 12 ? 'AM' : 'PM'}` : `${two(h)}:${rest}`;
}

function timeCells(hand: Hand, begins: number, seconds: number): string[] {
  const at = new Date(begins + seconds * 1000);
  const [y, m, d] = [at.getUTCFullYear(), two(at.getUTCMonth() + 1), two(at.getUTCDate())];
  const number = (value: number, digits: number) => value.toFixed(digits).replace('.', hand.decimal);
  switch (hand.time) {
    case 'iso':
      return [`${y}-${m}-${d} ${clock(at, false)}`];
    case 'isoT':
      return [`${y}-${m}-${d}T${clock(at, false)}Z`];
    case 'dmy':
      return [`${d}.${m}.${y} ${clock(at, false)}`];
    case 'mdy':
      return [`${Number(m)}/${Number(d)}/${y} ${clock(at, true)}`];
    case 'apart':
      return [`${d}/${m}/${y}`, clock(at, false)];
    case 'amPm':
      return [clock(at, true)];
    case 'elapsed':
      return [`${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`];
    case 's':
      return [String(seconds)];
    case 'min':
      return [number(seconds / 60, 4)];
    case 'day':
      return [number(seconds / 86_400, 8)];
    case 'serial':
      return [number((at.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000, 8)];
    case 'epoch':
      return [String(at.getTime() / 1000)];
  }
}

const timeHeads: Partial<Record<Hand['time'], string[]>> = {
  apart: ['Date', 'Time'],
  elapsed: ['Elapsed'],
  s: ['Time (s)'],
  min: ['Time (min)'],
  day: ['Elapsed days'],
};

/** The text of a file as that logger would write it. */
export function written(history: History, hand: Hand): string {
  const { delimiter, unit, unitIn, preamble, index } = hand;
  const quoted = (cell: string) => (cell.includes(delimiter) ? `"${cell}"` : cell);
  const heat = (celsius: number) =>
    (unit === 'F' ? celsius * 1.8 + 32 : celsius).toFixed(1).replace('.', hand.decimal);
  const withUnit = (name: string) => (unitIn === 'head' ? `${name} [°${unit}]` : name);
  const heads = [
    ...(index ? ['No.'] : []),
    ...(timeHeads[hand.time] ?? ['Time']),
    withUnit('Air'),
    withUnit('Boom'),
  ];
  const units = heads.map((head) => (head === 'Air' || head === 'Boom' ? `°${unit}` : ''));
  const rows = history.air.map((air, i) => [
    ...(index ? [String(i + 1)] : []),
    ...timeCells(hand, history.begins, i * history.step),
    heat(air),
    heat(history.tube[i] ?? air),
  ]);
  const lines = [
    ...['Shop logger, made in the shop', 'Serial no. 0042', `Rows${delimiter}${rows.length}`].slice(
      0,
      preamble,
    ),
    ...[heads, ...(unitIn === 'line' ? [units] : []), ...rows].map((row) => row.map(quoted).join(delimiter)),
  ];
  return `${hand.mark ? '\uFEFF' : ''}${lines.join(hand.end)}${hand.end}`;
}

const celsius = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);

/** A cure that warms from a shop's temperature to about 66 °C, the tube behind the air. */
export const histories: fc.Arbitrary<History> = fc
  .record({
    startsAfter: fc.integer({ min: -20, max: 30 }),
    step: fc.constantFrom(5, 10, 30, 60),
    count: fc.integer({ min: 120, max: 260 }),
    shop: celsius(15, 28),
    flicker: fc.array(celsius(-1, 1), { minLength: 8, maxLength: 8 }),
  })
  .map(({ startsAfter, step, count, shop, flicker }) => {
    const at = (i: number, slow: number) =>
      Math.round(10 * (66 - (66 - shop) * Math.exp(-i / slow) + (flicker[i % 8] ?? 0))) / 10;
    return {
      begins: lit + startsAfter * 60_000,
      step,
      air: Array.from({ length: count }, (_, i) => at(i, 15)),
      tube: Array.from({ length: count }, (_, i) => at(i, 35)),
    };
  });

export const hands: fc.Arbitrary<Hand> = fc.record({
  delimiter: fc.constantFrom(',' as const, ';' as const, '\t' as const),
  decimal: fc.constantFrom('.' as const, ',' as const),
  unit: fc.constantFrom('C' as const, 'F' as const),
  unitIn: fc.constantFrom('head' as const, 'line' as const, 'nowhere' as const),
  preamble: fc.integer({ min: 0, max: 3 }),
  time: fc.constantFrom(
    ...([
      'iso',
      'isoT',
      'dmy',
      'mdy',
      'apart',
      'amPm',
      'elapsed',
      's',
      'min',
      'day',
      'serial',
      'epoch',
    ] as const),
  ),
  end: fc.constantFrom('\n' as const, '\r\n' as const),
  index: fc.boolean(),
  mark: fc.boolean(),
});

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export function lookOf(text: string): Look {
  const { looked } = openFile(bytesOf(text), known);
  if (!looked.ok) throw new Error(looked.why);
  return looked.look;
}

interface Choices {
  startsAt?: number;
  zone?: number;
  dialect?: Partial<LoggerDialect>;
  /** Repairs that are made; those advised when left out. */
  repaired?: (fault: Fault) => boolean;
  out?: number;
}

/** A text read as the app reads it: what it looks like, its faults, and the readings of each column. */
export function readBack(text: string, { startsAt = lit, zone = 0, dialect, repaired, out }: Choices = {}) {
  const { table, looked } = openFile(bytesOf(text), known);
  if (!looked.ok) throw new Error(looked.why);
  const { look } = looked;
  const columns = look.heat.map(({ column, name, unit }) => ({ column, channel: name, unit }));
  const raw = readColumns(table, { ...look.dialect, ...dialect }, columns, { zone, startsAt, shift: 0 });
  const faults = faultsOf(raw, { lit, out }, zone);
  const chosen = faults.filter(repaired ?? ((f) => f.advised));
  return { look, raw, faults, series: derive(raw, repairsOf(chosen)) };
}
