import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Roll } from '#calc';
import { type Quantity, unitFor } from '#shared/units/quantity.ts';
import { keptBy } from '../kept-by.ts';

/** Heights of the wall after each piece: in plies where all is cloth, else as thick as it is, m. */
export interface Layers {
  at: Float64Array;
  heights: Float64Array[];
  most: number;
  quantity: Quantity;
  /** 'Wall along the tube, 3 to 6 plies' */
  says: string;
}

export const inPlies = (roll: Roll): boolean => roll.pieces.every((p) => p.spec.kind === 'cloth');

/** What the heights are figured in: 'plies', 'mm' or 'thou'. */
export const heightUnit = (roll: Roll): string =>
  inPlies(roll) ? 'plies' : unitFor('thickness', settings.value.units);

const plainly = (n: number) => show(n, 'number', 1).replace(/\.0$/, '');

function make(roll: Roll): Layers {
  const plies = inPlies(roll);
  const heights: Float64Array[] = [];
  let under = new Float64Array(roll.at.length);
  for (const piece of roll.pieces) {
    const adds = plies ? piece.plies : piece.thickness;
    under = under.map((u, i) => u + (adds[i] ?? 0));
    heights.push(under);
  }
  const most = under.reduce((a, b) => Math.max(a, b), 0);
  const least = under.reduce((a, b) => Math.min(a, b), most);
  const from = plies ? plainly(least) : show(least, 'thickness');
  const to = plies ? plainly(most) : show(most, 'thickness');
  const range = from === to ? to : `${from} to ${to}`;
  return {
    at: roll.at,
    heights,
    most: most || 1,
    quantity: plies ? 'number' : 'thickness',
    says: `Wall along the tube, ${range}${plies ? ' plies' : ''}`,
  };
}

export const layersOf = (roll: Roll): Layers => keptBy(roll, 'layers', [], () => make(roll));
