import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { findDoc } from '#app/state/documents.ts';
import { demoldClearance, looseTemperature } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { Mandrel } from '#shared/record/mandrel.ts';
import { mandrelExpansions } from '#shared/reference/mandrel-expansions.ts';
import { type HoopGrowth, hoopGrowth } from './hoop-growth.ts';
import type { SetAt } from './part-heat.ts';

export type Material = Mandrel['material'];

/** Colder than this no shop gets a mandrel by itself (common practice, no source), K */
export const coldShop = 278.15;

/** Share of the diameter that a slip in typical shrinkage and growth can make (common practice, no source). */
const barely = 1e-4;

export interface Fit {
  material: Material;
  /** m */
  diameter: number;
  mandrelExpansion: number;
  growth: HoopGrowth;
  set: SetAt;
  /** K; null where cooling never frees it */
  loose: number | null;
}

/** What is missing before anything can be said. */
export type Missing = 'material' | 'expansion' | 'fiber' | 'diameter';

/** What the plan's mandrel on the shelf is made of. */
export function materialOf({ header }: BuildState): Material | undefined {
  return findDoc('mandrel', planOfBuild(header)?.mandrel)?.body.material;
}

export function fitOf(build: BuildState, set: SetAt, material: Material | undefined): Fit | Missing {
  if (material === undefined) return 'material';
  const mandrelExpansion = mandrelExpansions[material];
  if (mandrelExpansion === undefined) return 'expansion';
  const growth = hoopGrowth(build.header);
  if (!growth) return 'fiber';
  const diameter = growth.diameter ?? build.header.mandrelDiameter;
  if (diameter === undefined) return 'diameter';
  const loose = looseTemperature({
    mandrelExpansion,
    laminateHoopExpansion: growth.hoop,
    setTemperature: set.temperature,
    cureShrinkage: growth.shrinkage,
  });
  return { material, diameter, mandrelExpansion, growth, set, loose };
}

/** m on the diameter at a temperature; positive is loose */
export function clearanceAt({ diameter, mandrelExpansion, growth, set }: Fit, temperature: number): number {
  return demoldClearance({
    diameter,
    mandrelExpansion,
    laminateHoopExpansion: growth.hoop,
    setTemperature: set.temperature,
    temperature,
    cureShrinkage: growth.shrinkage,
  });
}

export type Verdict =
  /** `barely`: less room than typical figures can tell from none */
  | { is: 'loose'; clearance: number; barely: boolean }
  | { is: 'wait'; below: number }
  /** Below what, when there is such a temperature at all. */
  | { is: 'grips'; below: number | null };

export function verdictAt(fit: Fit, temperature: number): Verdict {
  const clearance = clearanceAt(fit, temperature);
  if (clearance > 0) return { is: 'loose', clearance, barely: clearance < barely * fit.diameter };
  if (fit.loose !== null && fit.loose >= coldShop) return { is: 'wait', below: fit.loose };
  return { is: 'grips', below: fit.loose };
}
