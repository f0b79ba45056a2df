import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import { holding } from '#shared/record/journal.ts';

/** A reading says nothing of the shop when it is older than this, ms (common practice, no source). */
const staysTrue = 12 * 3600_000;

type Read = EntryOf<'surroundings'>;

export function surroundingsOf(state: BuildState): Read[] {
  return holding(state.facts).flatMap(({ entry }) => (entry.kind === 'surroundings' ? [entry] : []));
}

export interface ShopNow {
  /** K */
  resin: number;
  air: number;
  /** Nobody entered either of late: they are the data sheet's. */
  assumed: boolean;
}

/** Resin and air as last entered for this build; one stands for the other where it was not read. */
export function shopNow(state: BuildState, now: number): ShopNow {
  const recent = surroundingsOf(state).filter((e) => e.happenedAt <= now && now - e.happenedAt < staysTrue);
  const last = (field: 'resin' | 'air') => recent.filter((e) => e[field] !== undefined).at(-1)?.[field];
  const [resin, air] = [last('resin'), last('air')];
  const sheet = state.header.resin.potLife.temperature;
  return {
    resin: resin ?? air ?? sheet,
    air: air ?? resin ?? sheet,
    assumed: resin === undefined && air === undefined,
  };
}
