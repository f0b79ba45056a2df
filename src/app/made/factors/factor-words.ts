import type { Factor, FactorKind } from '#app/made/learned/factors.ts';
import { fromTo } from '#app/made/results/from-to.ts';
import { showPly } from '#app/made/results/show-ply.ts';
import { findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { Quantity } from '#shared/units/quantity.ts';

interface KindWords {
  title: string;
  quantity: Quantity;
  digits?: number;
  formula: string;
  /** What has to be weighed, measured or ticked for a build to count. */
  asks: string;
  source: string;
}

export const kindWords: Record<FactorKind, KindWords> = {
  lossPerCup: {
    title: 'Lost in each cup',
    quantity: 'mass',
    formula: '(leftover + wipings) / cups',
    asks: 'Counts a build whose leftover in cups was weighed; wipings too, where they were.',
    source: 'common practice, no source',
  },
  totalLoss: {
    title: 'Total loss a cup',
    quantity: 'mass',
    formula: '(mixed − resin in the tube) / cups',
    asks: 'Counts a build whose cups were poured on the scale and whose tube was weighed. What the tape squeezed out is in it.',
    source: 'common practice, no source',
  },
  squeezeOut: {
    title: 'Squeezed out by the tape',
    quantity: 'fraction',
    digits: 0,
    formula: '1 − resin in the tube / (mixed − lost in cups)',
    asks: 'Counts a build whose losses and tube were weighed, by tape and by how warm the shop was.',
    source: 'common practice, no source',
  },
  resinShare: {
    title: 'Resin in the laminate',
    quantity: 'fraction',
    digits: 0,
    formula: '(tube − film − core − cloth) / (tube − film − core)',
    asks: 'Counts a weighed tube, by cloth, release and tape.',
    source: 'ASTM D3171, constituent content by weight',
  },
  fiberVolume: {
    title: 'Fiber volume',
    quantity: 'fraction',
    digits: 0,
    formula: '(mf/rf) / (mf/rf + mr/rr)',
    asks: 'Counts a weighed tube, by cloth, release and tape; void-free.',
    source: 'Agarwal and Broutman; ASTM D3171',
  },
  plyThickness: {
    title: 'A cured ply',
    quantity: 'thickness',
    formula: 'mean wall / plies',
    asks: 'Counts a tube that was measured round at a station and more, by cloth.',
    source: 'ASTM D3171, method II',
  },
  stiffness: {
    title: 'Stiffness against plan',
    quantity: 'fraction',
    digits: 0,
    formula: 'Σ expected² / Σ (expected × measured)',
    asks: 'Counts a tube that was bent under a weight, by cloth: its modulus along over the one planned.',
    source: 'beam theory, Gere and Timoshenko',
  },
  ring: {
    title: 'Stiffness around, against plan',
    quantity: 'fraction',
    digits: 0,
    formula: 'force / (length × narrower) / ring stiffness planned',
    asks: 'Counts a tube that was squeezed between two flats, by cloth.',
    source: 'Roark, Formulas for Stress and Strain, circular rings',
  },
  workingRate: {
    title: 'Working rate',
    quantity: 'massRate',
    formula: 'mixed / time from the first cup poured out to the end of wet-out',
    asks: 'Counts a build whose cups and wet-out were ticked while it was done, not later.',
    source: 'common practice, no source',
  },
  arealWeight: {
    title: 'What the cloth weighs',
    quantity: 'arealWeight',
    digits: 1,
    formula: 'cut cloth weighed / its planned area',
    asks: 'Counts a build whose cut cloth was weighed and whose area the plan knows, by lot.',
    source: 'ASTM D3776, mass per unit area, in principle',
  },
  overshoot: {
    title: 'Oven over its hold',
    quantity: 'temperatureDifference',
    digits: 0,
    formula: 'highest air − hold asked for',
    asks: 'Counts an oven load whose air was read.',
    source: 'common practice, no source',
  },
};

export const shownAs = (kind: FactorKind, value: number): string =>
  kind === 'plyThickness' ? showPly(value) : show(value, kindWords[kind].quantity, kindWords[kind].digits);

const things = ({ kind, spread: { count } }: Factor) =>
  `${count} ${kind === 'overshoot' ? 'oven load' : 'build'}${count === 1 ? '' : 's'}`;

/** '7 builds', and when they are too few to go by. */
export function countWords(factor: Factor): string {
  return factor.spread.count < 3 ? `${things(factor)}: too few to go by` : things(factor);
}

/** 'half of them 11.3 to 12.6 g'; of a few, all of them */
export function spreadWords({ kind, spread: { count, lower, upper }, sources }: Factor): string {
  if (count === 1) return 'one alone has no spread';
  const values = sources.map((s) => s.value);
  if (count < 4) {
    return fromTo(shownAs(kind, Math.min(...values)), shownAs(kind, Math.max(...values)));
  }
  return `half of them ${fromTo(shownAs(kind, lower), shownAs(kind, upper))}`;
}

/** How warm a shop was, in steps that change how resin runs, K (common practice, no source) */
const steps = [291.15, 295.15, 299.15];

export function shopHeatWords(kelvin: number | undefined): string {
  if (kelvin === undefined) return 'shop not read';
  const above = steps.findIndex((s) => kelvin < s);
  const heat = (k: number | undefined) => (k === undefined ? '' : show(k, 'temperature', 0));
  if (above === 0) return `shop under ${heat(steps[0])}`;
  if (above < 0) return `shop ${heat(steps.at(-1))} or more`;
  return `shop ${heat(steps[above - 1])} to ${heat(steps[above])}`;
}

export const words = {
  lot: (id: string) => findDoc('lot', id)?.body.name,
  shopHeat: shopHeatWords,
};
