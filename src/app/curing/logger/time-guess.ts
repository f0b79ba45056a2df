import type { LoggerDialect, LoggerTime } from '#shared/record/logger-file.ts';
import { type DateOrder, dateFigures, readClock, readDate, readLapse, stampOf } from './clock-cells.ts';
import { isFigure } from './layout.ts';
import { readNumber } from './numbers.ts';

export interface TimeGuess {
  time: LoggerTime;
  /** More than one: the figures fit each of these orders, and only the builder knows. */
  orders: DateOrder[];
}

type Rows = readonly (readonly string[])[];

const most = 0.8;
const day = 86_400;
const indexHead = /^(?:#|no\.?|nr\.?|n|id|row|index|record|sample|scan|line|count|point|reading)$/i;
const lapseHead = /elapsed|since|run ?time|duration|lapsed/i;
const timeHead =
  /time|zeit|temps|tid|clock|stamp|date|elapsed|^t$|\[?\(?(?:s|sec|min|h|hr)\)?\]?$|seconds|minutes|hours|days/i;

const cells = (rows: Rows, column: number) =>
  rows.map((row) => row[column]?.trim() ?? '').filter((cell) => cell !== '');

const shareOf = (values: readonly string[], is: (cell: string) => boolean) =>
  values.length === 0 ? 0 : values.filter(is).length / values.length;

const isClock = (cell: string) => !Number.isNaN(readClock(cell));
const isDate = (cell: string) =>
  dateFigures(cell) !== undefined || (/[a-z]/i.test(cell) && !Number.isNaN(readDate(cell, undefined)));

/** How unevenly the days of a file follow each other when read in this order, days; a file rarely spans a month. */
function spanOf(dates: readonly string[], order: DateOrder): number {
  const days = dates.map((date) => readDate(date, order) / (day * 1000));
  if (days.some(Number.isNaN)) return Number.POSITIVE_INFINITY;
  return Math.max(...days) - Math.min(...days);
}

/**
 * In which order the figures of these dates stand. A figure over 12 tells, so does a run over midnight, so does the
 * day of the oven load; else there are two answers.
 */
export function ordersOf(dates: readonly string[], near: number | undefined): DateOrder[] {
  const unlike = [...new Set(dates)];
  const first = unlike.map(dateFigures).find((d) => d !== undefined);
  if (!first) return [];
  if (unlike.some((d) => (dateFigures(d)?.[0] ?? 0) > 31)) return ['ymd'];
  const spans = (['dmy', 'mdy'] as const).map((order) => ({ order, span: spanOf(unlike, order) }));
  const possible = spans.filter(({ span }) => span < Number.POSITIVE_INFINITY);
  const [a, b] = possible;
  if (!a || !b) return possible.map((p) => p.order);
  const sure = possible.filter(({ span }) => span <= 14);
  if (sure.length === 1) return sure.map((p) => p.order);
  const onTheDay = possible.filter(({ order }) => {
    const away = Math.abs(readDate(unlike[0] ?? '', order) - (near ?? Number.NaN));
    return away < 2 * day * 1000;
  });
  if (onTheDay.length === 1) return onTheDay.map((p) => p.order);
  const same = unlike.every((d) => dateFigures(d)?.[0] === dateFigures(d)?.[1]);
  return same ? ['dmy'] : ['dmy', 'mdy'];
}

function stampGuess(columns: number[], dates: readonly string[], near: number | undefined): TimeGuess {
  const orders = ordersOf(dates, near);
  const order = orders[0];
  return { time: { columns, form: 'stamp', ...(order && { order }) }, orders };
}

/** s from a first to a last value and between two of them, when a count is in this unit. */
const fits = (span: number, step: number) => span >= 600 && span <= 14 * day && step >= 0.2 && step <= 1800;

const unitHeads: readonly (readonly [RegExp, NonNullable<LoggerTime['unit']>])[] = [
  [/\bms\b|millis/i, 'ms'],
  [/\bmin(?:ute)?s?\b/i, 'min'],
  [/\bh(?:ou)?rs?\b|\bh\b/i, 'h'],
  [/\bdays?\b|\bd\b/i, 'day'],
  [/\bs(?:ec(?:ond)?s?)?\b/i, 's'],
];

function numberGuess(column: number, head: string, values: readonly number[]): TimeGuess {
  const sorted = values.filter((v) => !Number.isNaN(v));
  const [first = 0, last = 0] = [sorted[0], sorted.at(-1)];
  const steps = sorted
    .slice(1)
    .map((v, i) => v - (sorted[i] ?? v))
    .filter((s) => s > 0)
    .sort((a, b) => a - b);
  const step = steps[Math.floor(steps.length / 2)] ?? 1;
  const as = (form: LoggerTime['form'], unit: LoggerTime['unit']): TimeGuess => ({
    time: { columns: [column], form, ...(unit && { unit }) },
    orders: [],
  });
  if (first > 1e12 && first < 5e12) return as('epoch', 'ms');
  if (first > 8e8 && first < 5e9) return as('epoch', 's');
  if (first > 25_000 && first < 80_000 && step < 0.05) return as('serial', undefined);
  const said = unitHeads.find(([words]) => words.test(head))?.[1];
  if (said) return as('number', said);
  const span = last - first;
  const guess = (['s', 'min', 'h', 'day', 'ms'] as const).find((unit) => {
    const per = { ms: 0.001, s: 1, min: 60, h: 3600, day }[unit];
    return fits(span * per, step * per);
  });
  return as('number', guess ?? 's');
}

function lapseGuess(column: number, values: readonly string[]): TimeGuess {
  const spanAsHours = Math.max(...values.map((v) => readLapse(v, 'h')).filter((s) => !Number.isNaN(s)));
  const isTwo = values.every((v) => v.split(':').length === 2);
  const unit = isTwo && spanAsHours > 4 * day ? 'min' : 'h';
  return { time: { columns: [column], form: 'elapsed', unit }, orders: [] };
}

/** What begins at nothing, or passes a day, is time gone by and no time of day. */
function clockGuess(column: number, head: string, values: readonly string[]): TimeGuess {
  const first = readLapse(values[0] ?? '', 'h');
  const isLapse =
    lapseHead.test(head) ||
    (!/[ap]\.?m/i.test(values[0] ?? '') && first < 120) ||
    values.some((v) => Number.isNaN(readClock(v)) && !Number.isNaN(readLapse(v, 'h')));
  if (isLapse) return lapseGuess(column, values);
  return { time: { columns: [column], form: 'timeOfDay' }, orders: [] };
}

function countsUp(values: readonly number[]): boolean {
  const good = values.filter((v) => !Number.isNaN(v));
  const up = good.slice(1).filter((v, i) => v >= (good[i] ?? v)).length;
  return good.length > 2 && up >= 0.97 * (good.length - 1) && (good.at(-1) ?? 0) > (good[0] ?? 0);
}

interface Sample {
  rows: Rows;
  heads: readonly string[];
  decimal: LoggerDialect['decimal'];
  /** When the oven was lit, ms, to tell dates apart by. */
  near?: number | undefined;
  /** The column that the builder says is time. */
  only?: number | undefined;
}

/** Which column says when, and how; undefined when none does. */
export function guessTime({ rows, heads, decimal, near, only }: Sample): TimeGuess | undefined {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const all = Array.from({ length: width }, (_, column) => ({
    column,
    head: heads[column] ?? '',
    values: cells(rows, column),
  })).filter(({ column }) => only === undefined || column === only);
  const stamped = all.find(({ values }) => shareOf(values, (c) => stampOf(c) !== undefined) >= most);
  if (stamped) {
    return stampGuess(
      [stamped.column],
      stamped.values.flatMap((v) => stampOf(v)?.date ?? []),
      near,
    );
  }
  const dated = all.find(({ values }) => shareOf(values, isDate) >= most);
  const clocked = all.find(
    ({ column, values }) => column !== dated?.column && shareOf(values, isClock) >= most,
  );
  if (dated && clocked) return stampGuess([dated.column, clocked.column], dated.values, near);
  const lapsed = all.find(({ values }) => shareOf(values, (c) => !Number.isNaN(readLapse(c, 'h'))) >= most);
  const byClock = clocked ?? lapsed;
  if (byClock) return clockGuess(byClock.column, byClock.head, byClock.values);
  const counted = all
    .filter(({ values }) => shareOf(values, isFigure) >= most)
    .map((c) => ({ ...c, numbers: c.values.map((v) => readNumber(v, decimal)) }))
    .filter(({ numbers }) => countsUp(numbers));
  const named = counted.find(({ head }) => timeHead.test(head) && !indexHead.test(head));
  const chosen = named ?? counted.find(({ head }) => !indexHead.test(head)) ?? counted[0];
  return chosen && numberGuess(chosen.column, chosen.head, chosen.numbers);
}
