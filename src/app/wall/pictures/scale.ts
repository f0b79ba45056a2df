import { ticks } from 'd3-array';
import { settings } from '#app/state/settings.ts';
import { formatNumber, inUnits } from '#shared/units/format.ts';
import type { Quantity } from '#shared/units/quantity.ts';

/** From a figure in SI to px. */
export type Scale = (si: number) => number;

export function linear(from: number, to: number, start: number, end: number): Scale {
  const by = to > from ? (end - start) / (to - from) : 0;
  return (si) => start + (si - from) * by;
}

export interface Tick {
  si: number;
  label: string;
}

/** Even figures in the builder's own units between two in SI, about so many. */
export function ticksIn(quantity: Quantity, from: number, to: number, count: number): Tick[] {
  const system = settings.value.units;
  const value = (si: number) => inUnits(si, { quantity, system }).value;
  const [a, b] = [value(from), value(to)];
  if (!(b > a)) return [];
  return ticks(a, b, count).map((v) => ({
    si: from + ((v - a) / (b - a)) * (to - from),
    label: formatNumber(v, 3, true),
  }));
}

/** px a letter of 12 px type takes at most, measured on digits and capitals of the app's face. */
const letter = 7.2;

export const textWidth = (text: string, size = 12): number => (text.length * letter * size) / 12;
