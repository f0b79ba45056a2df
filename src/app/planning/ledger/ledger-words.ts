import { settings } from '#app/state/settings.ts';
import { show, showSplit } from '#app/state/show.ts';
import type { PartSum, StructureSum } from './reckon.ts';

export const grams = (kg: number): string => show(kg, 'mass', 0);

/** The same in two parts, for the figure that matters: a gram is a hair, an ounce is not. */
export const bigGrams = (kg: number) => showSplit(kg, 'mass', settings.value.units === 'metric' ? 0 : 1);

/** What differs by less is the scale, kg */
const slight = 0.0005;

/** 'Boom × 2' */
export const partTitle = ({ name, quantity }: PartSum['part']): string =>
  quantity === 1 ? name : `${name} × ${quantity}`;

/** What of the weighed ones was not planned, in words: '4 g film left inside, 12 g resin over plan'. */
export function wentWhere({ film, resin, other }: PartSum): string[] {
  return [
    ...(film > slight ? [`${grams(film)} film left inside`] : []),
    ...(resin > slight ? [`${grams(resin)} resin over plan`] : []),
    ...(other > slight ? [`${grams(other)} more cloth and the rest`] : []),
  ];
}

/** 'one of 2 weighed' */
export function madeWords({ part, weighed, toGo }: PartSum): string {
  if (toGo === 0) return weighed > part.quantity ? `${weighed} weighed, ${part.quantity} wanted` : 'weighed';
  return weighed === 0 ? 'by plan' : `${weighed} of ${part.quantity} weighed`;
}

/** The figure that matters: grams left of the budget, or over it. */
export function leftLabel({ left = 0, budget = 0 }: StructureSum): string {
  return left >= 0 ? `left of ${grams(budget)}` : `over the budget of ${grams(budget)}`;
}

export const isOver = (sum: PartSum): sum is PartSum & { over: number } => (sum.over ?? 0) > slight;
