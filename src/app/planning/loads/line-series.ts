import { show } from '#app/state/show.ts';
import type { BeamSolution } from '#calc';
import type { Quantity } from '#shared/units/quantity.ts';
import { place } from './load-words.ts';

export type LineKind = 'moment' | 'shear' | 'torque' | 'axial' | 'aside' | 'twist';

interface LineWords {
  label: string;
  quantity: Quantity;
  digits?: number;
  /** Among the words of the trade */
  term?: string;
}

export const lineKinds: Record<LineKind, LineWords> = {
  moment: { label: 'Moment', quantity: 'moment', term: 'moment' },
  shear: { label: 'Shear', quantity: 'force', term: 'shear' },
  torque: { label: 'Torque', quantity: 'moment', term: 'torque' },
  axial: { label: 'Axial', quantity: 'force' },
  aside: { label: 'Aside', quantity: 'length', digits: 0 },
  twist: { label: 'Twist', quantity: 'angle' },
};

export function seriesOf(solution: BeamSolution, kind: LineKind): Float64Array {
  return kind === 'aside' ? solution.deflection : solution[kind];
}

/** Of several alike the one nearest to end 0. */
export function greatest(at: ArrayLike<number>, series: ArrayLike<number>): { at: number; value: number } {
  let best = 0;
  for (let i = 1; i < series.length; i += 1) {
    if (Math.abs(series[i] ?? 0) > Math.abs(series[best] ?? 0) * (1 + 1e-9)) best = i;
  }
  return { at: at[best] ?? 0, value: series[best] ?? 0 };
}

/** What is left over of rounding is said as nothing. */
function settled(value: number, most: number): number {
  return Math.abs(value) < 1e-9 * most ? 0 : value;
}

/** A figure at a place; both where it jumps there: '40 N, then −60 N'. */
export function sayAt(solution: BeamSolution, kind: LineKind, at: number): string {
  const series = seriesOf(solution, kind);
  const { quantity, digits } = lineKinds[kind];
  const most = Math.abs(greatest(solution.at, series).value);
  const said: string[] = [];
  for (let i = 0; i < solution.at.length; i += 1) {
    if (Math.abs((solution.at[i] ?? 0) - at) > 1e-9) continue;
    said.push(show(settled(series[i] ?? 0, most), quantity, digits));
  }
  const [before = '–', after] = said;
  return after === undefined || after === before ? before : `${before}, then ${after}`;
}

/** All six at a place. */
export function lineValues(solution: BeamSolution, at: number): { label: string; says: string }[] {
  return (Object.keys(lineKinds) as LineKind[]).map((kind) => ({
    label: lineKinds[kind].label,
    says: sayAt(solution, kind, at),
  }));
}

/** What each support gives back; what it gives nothing of is left out. */
export function reactionRows({ reactions }: BeamSolution): string[][] {
  const most = (pick: (r: (typeof reactions)[number]) => number) =>
    Math.max(...reactions.map((r) => Math.abs(pick(r))));
  const [force, moment, torque, axial] = [
    most((r) => r.force),
    most((r) => r.moment),
    most((r) => r.torque),
    most((r) => r.axial),
  ];
  return reactions.map((r) => {
    const said = [
      settled(r.force, force) !== 0 && show(r.force, 'force'),
      settled(r.moment, moment) !== 0 && show(r.moment, 'moment'),
      settled(r.torque, torque) !== 0 && `twist ${show(r.torque, 'moment')}`,
      settled(r.axial, axial) !== 0 && `along ${show(r.axial, 'force')}`,
    ].filter((s) => s !== false);
    return [place(r.at), said.join(', ') || 'nothing'];
  });
}
