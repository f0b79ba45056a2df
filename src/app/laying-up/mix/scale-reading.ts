import { explainFailure } from '#shared/units/explain.ts';
import { decimalsForScaleStep, formatQuantity } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import type { UnitSystem } from '#shared/units/quantity.ts';

export interface ScaleUse {
  system: UnitSystem;
  /** Smallest step the scale shows, kg */
  step: number;
}

export interface ReadingContext extends ScaleUse {
  /** What the scale reads before this pour, kg: nothing when it is zeroed between the parts. */
  before: number;
  /** Most the cup may hold, kg */
  holds: number;
}

export type ScaleReading =
  | { kind: 'nothing' }
  | { kind: 'wrong'; says: string }
  /** `mass` is this pour alone, kg */
  | { kind: 'read'; reading: number; mass: number; typed: string };

/** kg; what is left of subtracting one reading from another */
const hair = 1e-9;

/** No cup is ever filled to twice its limit: such a figure is a slip of the thumb. */
const absurdly = 2;

/** A mass as the scale would show it. */
export function onScale(kg: number, { system, step }: ScaleUse): string {
  return formatQuantity(kg, { quantity: 'mass', system, digits: decimalsForScaleStep(step, system) });
}

/** Reads what was typed off the scale, or says in one sentence what is wrong with it. */
export function readScale(text: string, context: ReadingContext): ScaleReading {
  const { system, before, holds } = context;
  if (text.trim() === '') return { kind: 'nothing' };
  const parsed = parseQuantity(text, { quantity: 'mass', system, positive: true });
  if (!parsed.ok) return { kind: 'wrong', says: explainFailure(parsed, { quantity: 'mass', system }) };
  if (parsed.si > absurdly * holds + before) {
    const limit = onScale(holds, context);
    return { kind: 'wrong', says: `A cup may hold ${limit}, and this is far more: check the figure.` };
  }
  const mass = parsed.si - before;
  if (mass <= hair) {
    const there = onScale(before, context);
    return {
      kind: 'wrong',
      says: `${there} was in the cup already: type all that the scale shows, or say that it was zeroed.`,
    };
  }
  return { kind: 'read', reading: parsed.si, mass, typed: parsed.typed };
}
