import type { LoggerColumn, LoggerDialect } from '#shared/record/logger-file.ts';
import type { Channel } from '#shared/record/oven-load.ts';
import { readNumber } from './numbers.ts';

export type Degrees = LoggerColumn['unit'];
export type Sees = Channel['sees'];

export const kelvinOf: Record<Degrees, (value: number) => number> = {
  C: (value) => value + 273.15,
  F: (value) => (value - 32) / 1.8 + 273.15,
  K: (value) => value,
};

/** A column with temperatures. */
export interface HeatColumn {
  column: number;
  /** As its head says; 'Column 3' when it has none. */
  name: string;
  unit: Degrees;
  /** The head says the unit. */
  unitSaid: boolean;
  /** Guessed from its head, or from which warms first; undefined: not of this oven load. */
  sees: Sees | undefined;
}

const unitWords: readonly (readonly [RegExp, Degrees])[] = [
  [/(?:°|º|deg\.?|degrees)\s*F\b|[[(_ ]F[\])]?$|fahrenheit/i, 'F'],
  [/(?:°|º|deg\.?|degrees)\s*C\b|[[(_ ]C[\])]?$|celsius/i, 'C'],
  [/(?:°|deg)\s*K\b|[[(_ ]K[\])]$|kelvin/i, 'K'],
];
const notHeat =
  /humid|%|\brh\b|volt|\bmv\b|\bamp|current|batt|power|duty|output|pressure|\bbar\b|\bpsi\b|set ?point|\bsp\b|target|\bsoll\b|sample|record|index|^#|^no\.?$|^nr\.?$|dew/i;
const seesWords: readonly (readonly [RegExp, Sees | undefined])[] = [
  [/ambient|outside|room|shop|cold ?junction|\bcj/i, undefined],
  [/element|heater|coil/i, 'element'],
  [/part|tube|mandrel|tool|mold|core|surface|laminate|spar|mast|boom|\bskin/i, 'part'],
  [/air|oven|chamber|inlet|box/i, 'air'],
];

interface Sample {
  rows: readonly (readonly string[])[];
  heads: readonly string[];
  decimal: LoggerDialect['decimal'];
  /** Columns that say when. */
  time: readonly number[];
  /** The hottest that the schedule asks for, K */
  hottest: number;
}

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);
const middle = (values: readonly number[]) => sorted(values)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Plausible in an oven for tubes, in whatever unit. */
const isHeat = (value: number) => value > -60 && value < 1000 && !Number.isNaN(value);

/** The unit in which this run began in a shop and got about as hot as it was to. */
function unitBySense(values: readonly number[], hottest: number): Degrees {
  const start = middle(values.slice(0, 20));
  const peak = sorted(values)[Math.floor(values.length * 0.98)] ?? start;
  const cost = (unit: Degrees) => {
    const [from, to] = [kelvinOf[unit](start), kelvinOf[unit](peak)];
    return Math.abs(to - hottest) + (from < 263 ? 4 * (263 - from) : 0);
  };
  return (['C', 'F', 'K'] as const).reduce((best, unit) => (cost(unit) < cost(best) ? unit : best));
}

/** How warm it is early on, against where it ends: air is ahead of what it warms. */
function lead(values: readonly number[]): number {
  const early = values.slice(0, Math.ceil(values.length / 3));
  return early.reduce((sum, v) => sum + v, 0) / Math.max(1, early.length);
}

/** Which columns are temperatures, in what unit, and what each sees. */
export function heatColumns({ rows, heads, decimal, time, hottest }: Sample): HeatColumn[] {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const found = Array.from({ length: width }, (_, column) => {
    const numbers = rows
      .map((row) => readNumber(row[column], decimal))
      .filter((value) => !Number.isNaN(value));
    return { column, head: heads[column] ?? '', numbers: numbers.length, values: numbers.filter(isHeat) };
  }).filter(({ column, head, numbers, values }) => {
    const isNamed =
      unitWords.some(([words]) => words.test(head)) || /temp|\btc ?\d|\bch(?:annel)? ?\d/i.test(head);
    // A dead sensor is told of, not passed over: all its figures may be what stands for none.
    const isRead = values.length > 0.02 * rows.length || numbers > 0.5 * rows.length;
    return !time.includes(column) && !notHeat.test(head) && (isNamed || isRead);
  });
  const silent = found.filter(({ head }) => !unitWords.some(([words]) => words.test(head)));
  const bySense = unitBySense(
    silent.flatMap((f) => f.values).length > 0 ? longest(silent).values : [],
    hottest,
  );
  const saidSomewhere = found
    .map(({ head }) => unitWords.find(([words]) => words.test(head))?.[1])
    .find(Boolean);
  const named = found.map(({ column, head, values }): HeatColumn & { lead: number } => {
    const said = unitWords.find(([words]) => words.test(head))?.[1];
    return {
      column,
      name: nameOf(head) || `Column ${column + 1}`,
      unit: said ?? saidSomewhere ?? bySense,
      unitSaid: said !== undefined,
      sees: seesWords.find(([words]) => words.test(head))?.[1],
      lead: lead(values),
    };
  });
  return seeing(named, heads);
}

const longest = <T extends { values: readonly number[] }>(all: readonly T[]) =>
  all.reduce((a, b) => (b.values.length > a.values.length ? b : a));

/** Where no head says what a sensor sees, the one that warms first sees the air and the others the parts. */
function seeing(columns: readonly (HeatColumn & { lead: number })[], heads: readonly string[]): HeatColumn[] {
  const isSaid = ({ column }: HeatColumn) => seesWords.some(([words]) => words.test(heads[column] ?? ''));
  const open = columns.filter((c) => !isSaid(c));
  const hasAir = columns.some((c) => c.sees === 'air');
  const first = open.reduce<(typeof open)[number] | undefined>(
    (a, b) => (a && a.lead >= b.lead ? a : b),
    undefined,
  );
  return columns.map(({ lead: _lead, ...c }) => {
    if (isSaid(c)) return c;
    return { ...c, sees: !hasAir && c.column === first?.column ? 'air' : 'part' };
  });
}

/** The head without its unit: 'Boom [°C]' is Boom. */
function nameOf(head: string): string {
  return head
    .replace(/[[(]?\s*(?:°|º|deg\.?)\s*[CFK]\s*[\])]?|[[(][CFK][\])]|[_ ][CF]$/gi, '')
    .replace(/[\s_,:-]+$/, '')
    .trim();
}
