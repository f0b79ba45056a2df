import { settings } from '#app/state/settings.ts';
import { inUnits } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';

/** The whole degree at or under a temperature, in the builder's own unit, K */
export function wholeDegrees(kelvin: number): number {
  const system = settings.value.units;
  const { value, unit } = inUnits(kelvin, { quantity: 'temperature', system });
  const parsed = parseQuantity(`${Math.floor(value + 1e-6)} ${unit}`, { quantity: 'temperature', system });
  return parsed.ok ? parsed.si : kelvin;
}
