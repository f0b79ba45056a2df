import { repairedTimes } from './derive.ts';
import { type Fault, repairsOf } from './fault.ts';
import { clockFaults, usualStep } from './fault-clock.ts';
import { sensorFaults } from './fault-sensor.ts';
import type { RawFile } from './read-columns.ts';

/** Kept before it was lit and after it was out, ms: how the part came in, and how it cooled. */
const margin = { before: 30 * 60_000, after: 60 * 60_000 } as const;

export interface Span {
  /** When the oven was lit, and when the load came out, ms */
  lit: number;
  out?: number | undefined;
}

function outside(times: Float64Array, { lit, out }: Span): Fault[] {
  const from = lit - margin.before;
  const until = out === undefined ? Number.POSITIVE_INFINITY : out + margin.after;
  const early = times.filter((t) => t < from).length;
  const late = times.filter((t) => t > until).length;
  const inside = times.filter((t) => t >= from && t <= until).length;
  if (early + late === 0 || inside === 0) return [];
  const row = times.findIndex((t) => t < from || t > until);
  const repair = { from, ...(out !== undefined && { until }) };
  return [{ kind: 'outside', count: early + late, row, at: times[row] ?? Number.NaN, repair, advised: true }];
}

/** The builder's word on a fault, where it is not as advised. */
export type Choices = Readonly<Record<string, boolean>>;

export const faultKey = ({ kind, column }: Pick<Fault, 'kind' | 'column'>): string =>
  `${kind} ${column ?? ''}`;

export const isRepaired = (fault: Fault, choices: Choices): boolean =>
  fault.repair !== undefined && (choices[faultKey(fault)] ?? fault.advised);

/** Everything in a file that is not what an oven does, the clock first. */
export function faultsOf(raw: RawFile, span: Span, zone: number, choices: Choices = {}): Fault[] {
  const clock = clockFaults(raw.at, zone);
  const times = repairedTimes(raw.at, repairsOf(clock.filter((f) => isRepaired(f, choices))));
  return [...clock, ...sensorFaults({ ...raw, at: times }, usualStep(times)), ...outside(times, span)];
}
