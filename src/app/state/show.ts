import { formatQuantity, splitQuantity } from '#shared/units/format.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import { settings } from './settings.ts';

/** A value in the builder's units: show(0.1161, 'mass') is '116.1 g'. */
export function show(si: number, quantity: Quantity, digits?: number): string {
  return formatQuantity(si, { quantity, system: settings.value.units, digits });
}

/** The same in two parts, for a big figure with a small unit. */
export function showSplit(si: number, quantity: Quantity, digits?: number): { figure: string; unit: string } {
  return splitQuantity(si, { quantity, system: settings.value.units, digits });
}
