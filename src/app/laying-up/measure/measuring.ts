import { roleTick } from '#app/laying-up/build/ticks.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import { diameterFromCircumference } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { stationsFor, stationsOpen } from './stations.ts';

export type Measured = 'circumference' | 'outsideDiameter';

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

/** The tick of the step that asked for it. */
export const measuredTick = (state: BuildState): EntryDraft[] =>
  roleTick(state, 'measure', { newId: () => theStore().newId() });

/** The reading, and with the last of the usual stations the tick of the step that asked for them. */
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
    ...(stationsOpen(state).every((open) => open === station) &&
    stationsFor(state.header.tubeLength).length > 0
      ? measuredTick(state)
      : []),
  ];
}
