import { formatQuantity, splitQuantity } from '#shared/units/format.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import { settings } from './settings.ts';

/** An ounce is 28 g and an inch 25 mm: where whole grams or millimeters do, these want a decimal. */
function decimals(quantity: Quantity, digits: number | undefined): number | undefined {
  const coarse = quantity === 'mass' || quantity === 'length' || quantity === 'dial';
  return digits !== undefined && coarse && settings.value.units === 'inchPound' ? digits + 1 : digits;
}

/** A value in the builder's units, `digits` as wanted in metric: show(0.1161, 'mass') is '116.1 g'. */
export function show(si: number, quantity: Quantity, digits?: number): string {
  return formatQuantity(si, { quantity, system: settings.value.units, digits: decimals(quantity, digits) });
}

/** The same in two parts, for a big figure with a small unit. */
export function showSplit(si: number, quantity: Quantity, digits?: number): { figure: string; unit: string } {
  return splitQuantity(si, { quantity, system: settings.value.units, digits });
}
