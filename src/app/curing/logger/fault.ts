import type { LoggerRepairs } from '#shared/record/logger-file.ts';

export const faultKinds = [
  'noTime',
  'wildStamps',
  'clockBack',
  'clockAhead',
  'hourRepeated',
  'hourMissing',
  'repeats',
  'gap',
  'dead',
  'noReading',
  'flat',
  'spike',
  'noise',
  'outside',
] as const;
export type FaultKind = (typeof faultKinds)[number];

/** Something in a file that is not what an oven does. */
export interface Fault {
  kind: FaultKind;
  /** Rows it touches, or places where it happens. */
  count: number;
  /** Where it is first, as a row of readings counted from 0. */
  row: number;
  /** When that was, by the file with its repairs, ms */
  at: number;
  /** s that it takes, or that the clock jumps; K for noise */
  size?: number;
  column?: number;
  /** What the file has there instead of a temperature, K */
  value?: number;
  /** What can be done about it; without it nothing is. */
  repair?: Partial<Pick<LoggerRepairs, 'shifts' | 'cuts' | 'repeats' | 'smooth' | 'from' | 'until'>>;
  /** Whether that is done unless the builder says no. */
  advised: boolean;
}

/** Below and above this no sensor in an oven for tubes reads: it says that it has none, K. */
export const plausible = { lowest: 213.15, highest: 973.15 } as const;

/** All repairs of these faults together. */
export function repairsOf(faults: readonly Fault[]): LoggerRepairs {
  const all = faults.flatMap((f) => f.repair ?? []);
  const last = <K extends 'smooth' | 'from' | 'until'>(key: K) => all.flatMap((r) => r[key] ?? []).at(-1);
  const [smooth, from, until] = [last('smooth'), last('from'), last('until')];
  return {
    shifts: all.flatMap((r) => r.shifts ?? []).sort((a, b) => a.row - b.row),
    cuts: all.flatMap((r) => r.cuts ?? []),
    ...plausible,
    repeats: all.some((r) => r.repeats === 'spread') ? 'spread' : 'first',
    ...(smooth !== undefined && { smooth }),
    ...(from !== undefined && { from }),
    ...(until !== undefined && { until }),
  };
}
