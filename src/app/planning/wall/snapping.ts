import type { UnitSystem } from '#shared/units/quantity.ts';
import type { GivenBy } from './shape-edits.ts';

const inch = 0.0254;
const alongSteps: Record<UnitSystem, readonly number[]> = {
  metric: [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1],
  inchPound: [inch / 16, inch / 8, inch / 4, inch / 2, inch, 2 * inch, 4 * inch],
};

/** Along the tube a thumb snaps to the first even figure that is not finer than a px. */
export function alongStep(perPx: number, system: UnitSystem): number {
  const steps = alongSteps[system];
  return steps.find((s) => s >= perPx) ?? steps.at(-1) ?? perPx;
}

const upSteps: Record<GivenBy, Record<UnitSystem, number>> = {
  plies: { metric: 1, inchPound: 1 },
  width: { metric: 0.005, inchPound: inch / 4 },
  wall: { metric: 0.00005, inchPound: inch / 500 },
};

/** What one press, and one notch of a thumb, changes plies, width or wall by. */
export const upStep = (by: GivenBy, system: UnitSystem): number => upSteps[by][system];

/** The nearest whole step, kept inside; the very ends can be reached though they are no whole step. */
export function snap(value: number, step: number, min: number, max: number): number {
  const snapped = Math.round(value / step) * step;
  if (value <= min || snapped < min) return min;
  return value >= max || snapped > max ? max : snapped;
}
