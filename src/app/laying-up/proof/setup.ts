import type { Support } from '#calc';
import type { Support as SupportRecord } from '#shared/record/load-plan.ts';

export type Held = 'rests' | 'clamp0' | 'clamp1';

/** How a tube lies in a test, and what hangs on it. */
export interface Setup {
  held: Held;
  /** Of the first rest, or how far a clamp at end 0 reaches, m from end 0 */
  from: number;
  /** Of the second rest, or from where on a clamp at end 1 holds, m from end 0 */
  to: number;
  hangAt: number;
  /** kg */
  mass: number;
  /** Where a dial stands, m from end 0 */
  dials: readonly number[];
}

/** More dials than this nobody reads at once. */
export const mostDials = 3;

const mm = (meters: number) => Math.round(meters * 1000) / 1000;

/** Rests lie a hand in from the ends; a clamp takes a hand and a half. */
export function firstSetup(length: number, held: Held, hangAt?: number): Setup {
  const [rest, clamp] = [Math.min(0.05, length / 20), Math.min(0.15, length / 8)];
  const end = held === 'rests' ? rest : clamp;
  const [from, to] = [mm(end), mm(length - end)];
  const usual = held === 'rests' ? length / 2 : held === 'clamp0' ? length - rest : rest;
  const at = mm(between(hangAt ?? usual, freeOf({ held, from, to }, length)));
  return { held, from, to, hangAt: at, mass: 5, dials: [at] };
}

type Holding = Pick<Setup, 'held' | 'from' | 'to'>;

/** Where a weight bends the tube, m from end 0: between the rests, or on what stands out of the clamp. */
export function freeOf({ held, from, to }: Holding, length: number): { min: number; max: number } {
  const least = Math.min(0.02, length / 50);
  if (held === 'rests') return { min: from + least, max: to - least };
  return held === 'clamp0' ? { min: from + least, max: length } : { min: 0, max: to - least };
}

const between = (at: number, { min, max }: { min: number; max: number }) => Math.min(max, Math.max(min, at));

/** After another way of holding it, or another place: weight and dials stay on what still bends. */
export function fitted(setup: Setup, length: number): Setup {
  const free = freeOf(setup, length);
  const hangAt = between(setup.hangAt, free);
  const dials = setup.dials.map((at) => (at === setup.hangAt ? hangAt : between(at, free)));
  return { ...setup, hangAt, dials: [...new Set(dials)] };
}

export function supportsOf({ held, from, to }: Holding): Support[] {
  if (held === 'clamp0') return [{ kind: 'clamp', at: from }];
  if (held === 'clamp1') return [{ kind: 'clamp', at: to }];
  return [
    { kind: 'rest', at: from },
    { kind: 'rest', at: to },
  ];
}

export function heldRecord({ held, from, to }: Holding): SupportRecord[] {
  if (held === 'rests') {
    return [
      { id: 'rest-1', holds: 'rests', at: from },
      { id: 'rest-2', holds: 'rests', at: to },
    ];
  }
  return [{ id: held, holds: 'builtIn', at: held === 'clamp0' ? from : to }];
}

/** The setup of a test that was entered; undefined where the entry does not say how it was held. */
export function heldFrom(record: readonly SupportRecord[] | undefined): Holding | undefined {
  const [first, second] = record ?? [];
  if (!first) return undefined;
  if (first.holds === 'rests' && second) return { held: 'rests', from: first.at, to: second.at };
  if (first.id === 'clamp1') return { held: 'clamp1', from: 0, to: first.at };
  return { held: 'clamp0', from: first.at, to: first.at };
}

/** Places worth a dial besides the weight's: quarters of a span, half and end of what stands out. */
export function dialPlaces(setup: Setup, length: number): number[] {
  const { held, from, to, hangAt } = setup;
  const end = Math.min(0.05, length / 20);
  const usual =
    held === 'rests'
      ? [0.25, 0.5, 0.75].map((share) => from + share * (to - from))
      : held === 'clamp0'
        ? [(from + length) / 2, length - end]
        : [end, to / 2];
  const near = (a: number, b: number) => Math.abs(a - b) < length / 25;
  const others = usual.map(mm).filter((at) => !near(at, hangAt));
  const own = setup.dials.filter((at) => at !== hangAt && !others.includes(at));
  return [hangAt, ...others, ...own].sort((a, b) => a - b);
}
