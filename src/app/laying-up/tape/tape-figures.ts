import { hoopPressure, type OutsideAt, tapeAdvance, tapeLayers, tapePull, windTape } from '#calc';
import type { Tape } from '#shared/record/tape.ts';

/** For locked ends, a torn start and a turn too many (common practice, no source), share of the length. */
export const spare = 0.1;
/** What shrink tapes pull when hot, N/m (common practice, no source). */
const usualPull = { least: 200, most: 1000 };

export interface Winding {
  overlapFraction: number;
  passes: number;
}

export interface Wound {
  advance: number;
  turns: number;
  /** m on the tube, and to have ready */
  net: number;
  ready: number;
  layers: { least: number; most: number };
}

export function wound(outside: readonly OutsideAt[], tape: Tape, winding: Winding): Wound {
  const { width, thickness } = tape;
  const { turns, length } = windTape({ outside, width, thickness, ...winding });
  return {
    advance: tapeAdvance({ width, ...winding }),
    turns,
    net: length,
    ready: length * (1 + spare),
    layers: tapeLayers(winding),
  };
}

/** Whole rolls, and what is left over of them, m. */
export function rollsFor(ready: number, rollLength: number): { rolls: number; left: number } {
  const rolls = Math.ceil(ready / rollLength - 1e-9);
  return { rolls, left: rolls * rollLength - ready };
}

export type Pull =
  /** Below its window: winding tension only. */
  | { by: 'winding' }
  /** N/m */
  | { by: 'measured' | 'typical'; least: number; most: number };

/** What a tape pulls in air so hot: by its own figures, else what such tapes usually do. */
export function pullAt(tape: Tape, temperature: number): Pull {
  if (temperature < tape.shrinksFrom) return { by: 'winding' };
  const points = tape.shrinkForce ?? [];
  const first = points[0];
  if (!first) return { by: 'typical', ...usualPull };
  const begins = { temperature: tape.shrinksFrom, force: 0 };
  const all = first.temperature > tape.shrinksFrom ? [begins, ...points] : points;
  const pull = tapePull({ points: all, temperature });
  return { by: tape.typical ? 'typical' : 'measured', least: pull, most: pull };
}

export interface Squeeze {
  /** m from end 0 */
  at: number;
  diameter: number;
  /** Pa */
  least: number;
  most: number;
}

/** At the thin and at the thick place of the tube; one place where it is even. */
export function squeezes(
  outside: readonly OutsideAt[],
  pull: Exclude<Pull, { by: 'winding' }>,
  layers: Wound['layers'],
): Squeeze[] {
  const bySize = [...outside].sort((a, b) => a.diameter - b.diameter);
  const [thin, thick] = [bySize[0], bySize.at(-1)];
  if (!thin || !thick) return [];
  const places = thick.diameter - thin.diameter < 1e-5 ? [thin] : [thin, thick];
  return places.map(({ at, diameter }) => {
    const of = (tensionPerWidth: number, n: number) =>
      hoopPressure({ tensionPerWidth, radius: diameter / 2, layers: n });
    return { at, diameter, least: of(pull.least, layers.least), most: of(pull.most, layers.most) };
  });
}
