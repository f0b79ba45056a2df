import { show } from '#app/state/show.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import type { GivenBy } from './shape-edits.ts';

export const quantityOf: Record<GivenBy, Quantity> = { plies: 'number', width: 'length', wall: 'thickness' };

export const givenWords: Record<GivenBy, string> = { plies: 'Plies', wall: 'Wall', width: 'Cloth width' };

/** '3 plies', '1 ply', '3.25 plies' */
export function sayPlies(plies: number): string {
  const figure = show(plies, 'number', 2).replace(/\.?0+$/, '');
  return `${figure} ${figure === '1' ? 'ply' : 'plies'}`;
}

/** '6 plies', '472 mm', '0.94 mm' */
export function sayValue(by: GivenBy, value: number): string {
  if (by === 'plies') return sayPlies(value);
  return by === 'width' ? show(value, 'length') : show(value, 'thickness');
}
