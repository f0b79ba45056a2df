import { mixOf, planOf } from '#app/laying-up/mix/mix-of-build.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';

/** Cups of a round that were not thrown out. */
export const cupsOf = (state: BuildState, round: number): CupState[] =>
  state.cups.filter((c) => c.round === round && c.discardedAt === undefined);

/** The cup to go to next: one on the scale, or the one after. None when all is mixed, or the round is past. */
export interface NextCup {
  number: number;
  begun: boolean;
}

export function nextCup(state: BuildState, round: number): NextCup | undefined {
  if (round !== state.rounds) return undefined;
  const { weighing, cups } = mixOf(state);
  if (weighing) return { number: weighing.cup.number, begun: true };
  const planned = planOf(state);
  if (!planned.ok) return { number: cups.length + 1, begun: false };
  return planned.plan.left > 0 ? { number: planned.plan.next.number, begun: false } : undefined;
}

/** Where that is done: a cup still said to be full must not come up in place of the next one. */
export function mixAddress(state: BuildState): string {
  const next = nextCup(state, state.rounds);
  const follows = next && !next.begun && cupsOf(state, state.rounds).length > 0;
  return `/mix/${state.header.id}${follows ? '/cups' : ''}`;
}
