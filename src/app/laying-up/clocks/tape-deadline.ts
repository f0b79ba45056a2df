import type { BuildState } from '#shared/record/build-state.ts';
import { holding } from '#shared/record/journal.ts';
import type { StageState } from '#shared/record/route-state.ts';
import { isMixed, lastsOnFilm, type WetCup } from './cup-clock.ts';

/** When the tape must be all on: from the cup of this round that is used up first. */
export interface TapeDeadline {
  round: number;
  /** The cup it follows from. */
  cup: string;
  /** First contact in that cup, ms */
  startedAt: number;
  /** ms */
  at: number;
  /** Its resin stands in the cup still: each minute there brings the deadline nearer. */
  stands: boolean;
}

/** What a press answers it by. */
export const tapeClock = (round: number) => `tape:${round}`;

/** The stage that has to be through before the resin sets; a route without tape has only the wrapping. */
function lastWetStage({ stages }: BuildState, round: number): StageState | undefined {
  const ofRound = stages.filter((s) => s.round === round);
  return ofRound.find((s) => s.stage === 'shrinkTape') ?? ofRound.find((s) => s.stage === 'wrap');
}

/** Its tape is on, or it lies in an oven: what still stands in a cup of that round is left over. */
export function isPastResin(state: BuildState, round: number): boolean {
  const last = state.cups.filter((c) => c.round === round).at(-1)?.hardenerAt ?? Number.POSITIVE_INFINITY;
  return (
    lastWetStage(state, round)?.done === true || state.ovenLoads.some(({ entry }) => entry.happenedAt > last)
  );
}

function answeredAt(state: BuildState, round: number): number {
  const answers = holding(state.facts).flatMap(({ entry }) =>
    entry.kind === 'clockAnswered' && entry.clock === tapeClock(round) ? [entry.happenedAt] : [],
  );
  return Math.max(Number.NEGATIVE_INFINITY, ...answers);
}

/** Cups of the present round whose resin lies wet on the cloth, or still stands in them. */
export function wetCups(state: BuildState): WetCup[] {
  if (state.closedAt !== undefined || lastWetStage(state, state.rounds)?.done) return [];
  return state.cups.filter(isMixed).filter((c) => c.round === state.rounds && c.discardedAt === undefined);
}

/** A thumb's answer covers the cups that were wet then: one mixed after it has a deadline of its own. */
export function tapeDeadline(state: BuildState, now: number): TapeDeadline | undefined {
  const cups = wetCups(state);
  if (cups.length === 0 || !lastWetStage(state, state.rounds)) return undefined;
  const answered = answeredAt(state, state.rounds);
  const deadlines = cups
    .filter((c) => c.hardenerAt > answered)
    .map((wet) => ({
      round: state.rounds,
      cup: wet.cup,
      startedAt: wet.hardenerAt,
      at: wet.hardenerAt + 1000 * lastsOnFilm(state, wet, wet.emptyAt ?? now),
      stands: wet.emptyAt === undefined,
    }));
  return deadlines.sort((a, b) => a.at - b.at)[0];
}
