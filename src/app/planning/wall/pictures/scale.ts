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

/** em that the letters of the app's face take in bold, rounded up. */
const broad = 0.92;
const usual = 0.64;
const narrow = 0.36;

const letterWidth = (letter: string): number =>
  /[mwMW%+−]/.test(letter) ? broad : /[\s.,:°'"ijlftrI/·]/.test(letter) ? narrow : usual;

/** px a text takes at most in a type of so many px. */
export function textWidth(text: string, size = 12): number {
  let sum = 0;
  for (const letter of text) sum += letterWidth(letter);
  return sum * size;
}

/** Figures up a side need so much room, px */
const lineRoom = 16;

/** Figures up the side of a picture, without 0, and none so near to the next that they would lie on each other. */
export function ticksUp(quantity: Quantity, to: number, y: Scale, count = 4): Tick[] {
  let last = y(0);
  return ticksIn(quantity, 0, to, count).filter((t) => {
    if (Math.abs(y(t.si) - last) < lineRoom || t.si <= 0) return false;
    last = y(t.si);
    return true;
  });
}

const evenSteps = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8];

const isEven = (step: number): boolean => {
  const leads = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
  return evenSteps.some((even) => Math.abs(leads - even) < 1e-6);
};

/** Even figures from 0 to the very end: in equal parts where that comes out even, else with the end besides. */
export function ticksToEnd(quantity: Quantity, to: number, count: number): Tick[] {
  const { value } = inUnits(to, { quantity, system: settings.value.units });
  const parts = [count, count - 1, count + 1, count + 2].find((n) => n > 1 && isEven(value / n));
  if (parts === undefined) {
    return [...ticksIn(quantity, 0, to, count), { si: to, label: formatNumber(value, 1, true) }];
  }
  return Array.from({ length: parts + 1 }, (_, i) => ({
    si: (to * i) / parts,
    label: formatNumber((value * i) / parts, 3, true),
  }));
}
