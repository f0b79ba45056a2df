import { roleTick } from '#app/build/ticks.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import { diameterFromCircumference } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';

export type Measured = 'circumference' | 'outsideDiameter';

/** Both ends, a hand in from the edge, and three between: enough to see a taper or a thick end. */
export function stationsFor(tubeLength: number | undefined): number[] {
  if (tubeLength === undefined) return [];
  return [0.05, 0.25, 0.5, 0.75, 0.95].map((share) => Math.round(share * tubeLength * 1000) / 1000);
}

/** Twice the mandrel and more is a wall nobody lays by hand. */
const mostTimesMandrel = 2;

/** Why a reading cannot be a tube on this mandrel; undefined when it can. */
export function whyNot(what: Measured, value: number, inner: number | undefined): string | undefined {
  if (inner === undefined) return undefined;
  const across = what === 'circumference' ? diameterFromCircumference({ circumference: value }) : value;
  const mandrel = what === 'circumference' ? inner * Math.PI : inner;
  const word = what === 'circumference' ? 'around' : 'across';
  if (across <= inner) {
    return `The mandrel and its release are ${show(mandrel, 'diameter')} ${word}: the tube must be more.${what === 'circumference' ? ' Was it read across?' : ''}`;
  }
  if (across > mostTimesMandrel * inner) {
    return `Twice the mandrel, ${show(mandrel, 'diameter')} ${word}: was it measured ${what === 'circumference' ? 'across' : 'around'}?`;
  }
  return undefined;
}

/** The reading, and the tick of the step that asked for it when it is the first. */
export function measurementDrafts(
  state: BuildState,
  what: Measured,
  station: number,
  value: number,
  typed: string,
): EntryDraft[] {
  const subject = state.header.id;
  return [
    { kind: 'measurement', subject, what, station, value, typed },
    ...roleTick(state, 'measure', { newId: () => theStore().newId() }),
  ];
}
