import { explainFailure } from '#shared/units/explain.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import type { UnitSystem } from '#shared/units/quantity.ts';

/** No oven for tubes goes hotter, and no shop is colder, K: 300 C and -40 C */
const hottest = 573.15;
const coldest = 233.15;
/** So far from what is expected a figure is looked at twice, K */
const farOff = 25;
/** So near to it in the other unit, it was most likely read in that, K */
const nearBy = 12;

export interface Figure {
  /** K */
  si: number;
  typed: string;
}

export type TypedReading =
  | { kind: 'nothing' }
  | { kind: 'wrong'; says: string }
  | { kind: 'read'; reading: Figure }
  /** It fits what is expected in the other unit; `asTyped` is missing where nothing gets that hot. */
  | { kind: 'otherUnit'; other: Figure; asTyped?: Figure };

const otherSystem = (system: UnitSystem): UnitSystem => (system === 'metric' ? 'inchPound' : 'metric');

/** Reads what was typed off a thermometer, or says in one sentence what is wrong with it. */
export function readTemperature(text: string, system: UnitSystem, expected: number): TypedReading {
  if (text.trim() === '') return { kind: 'nothing' };
  const bounds = { quantity: 'temperature', min: coldest, max: hottest } as const;
  const own = parseQuantity(text, { ...bounds, system });
  const other = parseQuantity(text, { ...bounds, system: otherSystem(system) });
  const far = !own.ok || Math.abs(own.si - expected) > farOff;
  // A written unit reads the same in both systems, so that it never asks.
  const isBare = other.ok && (!own.ok || own.si !== other.si);
  if (far && isBare && Math.abs(other.si - expected) <= nearBy) {
    const { si, typed } = other;
    return { kind: 'otherUnit', other: { si, typed }, ...(own.ok && { asTyped: own }) };
  }
  if (!own.ok) return { kind: 'wrong', says: explainFailure(own, { ...bounds, system }) };
  return { kind: 'read', reading: { si: own.si, typed: own.typed } };
}

/** Whether a reading may be from this time: not to come, and not before the last of its sensor without asking. */
export function judgeTime(
  at: number,
  { now, last }: { now: number; last?: number | undefined },
): 'good' | 'toCome' | 'earlier' {
  if (at > now) return 'toCome';
  return last !== undefined && at < last ? 'earlier' : 'good';
}
