import { explainQuantity, type QuantityInput } from '#app/parts/quantity-input.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { inUnits } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import type { UnitSystem } from '#shared/units/quantity.ts';

/** What would be written in the field: the figure as typed, with a unit. */
interface Answer {
  text: string;
  says: string;
}

export interface UnitQuestion {
  asks: string;
  /** The figure in the other unit, where that fits. */
  other?: Answer;
  /** The figure as it was typed, where an oven can do it. */
  same?: Answer;
}

/** Between what a schedule's temperature is expected, K */
export interface Expected {
  low: number;
  high: number;
}

/** Cooler than this nobody ramps to, K */
const coolest = celsius(30);
/** Hotter than expected by more than this is asked about, K */
const farOver = 25;
/** Where the resin says nothing: hand layup seldom goes hotter, K (common practice, no source) */
const usualMost = celsius(130);

/** Between what a ramp to a temperature makes sense with this resin. */
export function expectedFor(resin: ResinSystem | undefined): Expected {
  const points = resin?.curePoints.map((p) => p.temperature) ?? [];
  const sheet = points.length > 0 ? points.reduce((a, b) => Math.max(a, b)) + farOver : undefined;
  return { low: coolest, high: resin?.highestTemperature ?? sheet ?? usualMost };
}

const unitOf = (system: UnitSystem) => inUnits(300, { quantity: 'temperature', system }).unit;
const inside = (si: number, { low, high }: Expected) => si >= low && si <= high;

/** A bare figure that makes sense only in the other unit, or in none. What was typed stays until it is answered. */
export function askUnit({ text, ...input }: QuantityInput, expected: Expected): UnitQuestion | undefined {
  const typed = text.value.trim();
  const system = settings.value.units;
  const swapped = system === 'metric' ? 'inchPound' : 'metric';
  const own = parseQuantity(typed, { quantity: 'temperature', system });
  const other = parseQuantity(typed, { quantity: 'temperature', system: swapped });
  // A written unit reads the same in both systems, so that it never asks.
  if (!own.ok || !other.ok || own.si === other.si || inside(own.si, expected)) return undefined;
  const answer = (of: UnitSystem): Answer => {
    const written = `${typed} ${unitOf(of)}`;
    return { text: written, says: written.replace(' ', '\u00a0') };
  };
  const possible = explainQuantity(typed, { ...input, quantity: 'temperature' }) === undefined;
  const same = possible && { same: answer(system) };
  if (inside(other.si, expected)) {
    const meant = answer(swapped);
    return {
      asks: `Do you mean ${meant.says} = ${show(other.si, 'temperature')}?`,
      other: meant,
      ...same,
    };
  }
  if (!possible || own.si <= expected.high + farOver) return undefined;
  return {
    asks: `${answer(system).says} is far above the ${show(expected.high, 'temperature', 0)} that is expected with this resin. Is that what you mean? If not, type it again.`,
    ...same,
  };
}
