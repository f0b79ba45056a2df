import { show } from '#app/state/show.ts';
import type { Fitting, LoadCase, LoadRecord, Support } from '#shared/record/load-plan.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import { reachOf } from './of-plan.ts';

export const place = (m: number): string => show(m, 'length', 0);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** '0 to 2400 mm' */
export const stretch = (from: number, to: number): string =>
  `${place(from).replace(/\s\D+$/, '')} to ${place(to)}`;

/** 'Built in at 0 mm' */
export function supportWords(support: Support): string {
  switch (support.holds) {
    case 'builtIn':
      return `Built in at ${place(support.at)}`;
    case 'rests':
      return `Rests at ${place(support.at)}`;
    case 'sleeve':
      return `Sleeve from ${stretch(support.at, support.at + support.length)}`;
  }
}

/** What a support holds besides going aside; undefined where that goes without saying. */
export function holdsWords(support: Support): string | undefined {
  if (support.holds === 'builtIn') return 'holds it from turning and sliding too';
  const also = [support.holdsTwist && 'twisting', support.holdsAxial && 'sliding'].filter(Boolean);
  return also.length > 0 ? `holds it from ${also.join(' and ')} too` : undefined;
}

export const figureOf = (si: number, quantity: Quantity): string => show(Math.abs(si), quantity);

/** '60 N/m', or '60 N/m to 20 N/m' where it changes */
function runningWords(values: readonly number[]): string {
  const said = values.map((v) => show(v, 'lineLoad'));
  return said.every((s) => s === said[0]) ? (said[0] ?? '') : `${said[0]} to ${said.at(-1)}`;
}

/** The figure of a load alone: '50 N', '60 N/m'. */
export function loadFigure(load: LoadRecord): string {
  switch (load.kind) {
    case 'point':
    case 'axial':
      return figureOf(load.force, 'force');
    case 'torque':
      return figureOf(load.torque, 'moment');
    case 'spreadTorque':
      return figureOf(load.torque * (load.to - load.from), 'moment');
    case 'spread':
      return runningWords([load.atFrom, load.atTo]);
    case 'table':
      return runningWords(load.stations.map(({ value }) => value));
  }
}

const kindWords: Record<LoadRecord['kind'], string> = {
  point: 'Force',
  spread: 'Spread load',
  table: 'Spread load',
  torque: 'Twist',
  spreadTorque: 'Spread twist',
  axial: 'Pull',
};

/** What a load is called: loads have no names of their own. */
export function kindOf(load: LoadRecord): string {
  if (load.kind === 'axial' && load.force < 0) return 'Press';
  return kindWords[load.kind];
}

export function reachWords(load: LoadRecord): string {
  const { from, to } = reachOf(load);
  return from === to ? `at ${place(from)}` : `from ${stretch(from, to)}`;
}

/** 'Force at 3000 mm', 'Press along it at 0 mm' */
export function loadTitle(load: LoadRecord): string {
  const along = load.kind === 'axial' ? ' along it' : '';
  const against = load.kind === 'point' && load.force < 0 ? ', the other way' : '';
  return `${kindOf(load)}${along} ${reachWords(load)}${against}`;
}

/** 'The force of 50 N at 3000 mm' */
export const theLoad = (load: LoadRecord): string =>
  `The ${kindOf(load).toLowerCase()} of ${loadFigure(load)} ${reachWords(load)}`;

export const fittingWords = (fitting: Fitting): string =>
  fitting.kind === 'clamp'
    ? `Clamp at ${place(fitting.at)}, ${show(fitting.width, 'length', 0)} wide`
    : `Bond at ${place(fitting.at)}, ${show(fitting.length, 'length', 0)} long`;

export const factorWords = (factor: number): string => show(factor, 'number', 2).replace(/\.?0+$/, '');

/** 'load factor 1.5' */
export const caseFactor = ({ loadFactor }: LoadCase): string =>
  loadFactor === undefined ? 'no load factor yet' : `load factor ${factorWords(loadFactor)}`;

const squeezed = (text: string) => text.replace(/[\s·]/g, '');

/** Whether two ways of writing a figure are one: '40 N m' and '40 N·m'. */
export const sameWords = (one: string, other: string): boolean => squeezed(one) === squeezed(other);
