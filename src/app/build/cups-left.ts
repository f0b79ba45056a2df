import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';

/** Cups of a round that were not thrown out. */
export const cupsOf = (state: BuildState, round: number): CupState[] =>
  state.cups.filter((c) => c.round === round && c.discardedAt === undefined);

/** The cup to go to next: one begun and not yet mixed, or the one after. None when all of them are mixed. */
export interface NextCup {
  number: number;
  begun: boolean;
}

export function nextCup(state: BuildState, round: number): NextCup | undefined {
  const cups = cupsOf(state, round);
  const begun = cups.find((c) => c.hardenerAt === undefined);
  if (begun) return { number: begun.number, begun: true };
  const mixed = new Set(cups.map((c) => c.number));
  const of = Math.max(1, ...cups.map((c) => c.of));
  for (let number = 1; number <= of; number++) if (!mixed.has(number)) return { number, begun: false };
  return undefined;
}
