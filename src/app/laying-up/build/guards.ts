import type { BuildState } from '#shared/record/build-state.ts';
import type { StepRole } from '#shared/record/checklist.ts';
import type { EntryDraft, Guard, OverrideReason } from '#shared/record/entry.ts';
import type { StageState, StepState } from '#shared/record/route-state.ts';
import { filmCount, filmsSentence } from './films.ts';

/** What a builder is about to do that cannot be taken back. */
export type GuardedAct = 'startCup' | 'hardener' | 'tape';

const guardsOf: Record<GuardedAct, readonly Guard[]> = {
  startCup: ['dryRun'],
  hardener: ['release', 'rotation'],
  tape: ['films'],
};

/** Once hardener has touched resin every minute counts, and nothing may stand in the way. */
export function hardenerIn(state: BuildState, round: number): boolean {
  return state.cups.some((c) => c.round === round && c.hardenerAt !== undefined);
}

const notDone = (steps: readonly StepState[]) => steps.filter((s) => !s.done);
const withRole = (state: BuildState, role: StepRole) =>
  state.stages.flatMap((s) => s.steps).filter((s) => s.step.role === role);

/** The steps a guard looks for that are not ticked. */
export function missingFor(state: BuildState, guard: Guard): StepState[] {
  switch (guard) {
    case 'dryRun':
    case 'rotation':
      return notDone(withRole(state, guard));
    case 'release':
      return notDone(state.stages.filter((s) => s.stage === 'release').flatMap((s) => s.steps));
    case 'films':
      return [];
  }
}

function isMet(state: BuildState, guard: Guard, round: number): boolean {
  if (guard === 'films') return filmsSentence(filmCount(state, round)) === undefined;
  return missingFor(state, guard).length === 0;
}

/** Guards that stop this act now: neither met nor overridden in this round. */
export function guardsBefore(state: BuildState, act: GuardedAct, round: number): Guard[] {
  if (hardenerIn(state, round)) return [];
  const overridden = new Set(
    state.overrides.filter((o) => o.entry.round === round).map((o) => o.entry.guard),
  );
  return guardsOf[act].filter((guard) => !overridden.has(guard) && !isMet(state, guard, round));
}

/** With hardener in nothing blocks: films not accounted for are only said, until they are. */
export function filmsWarning(state: BuildState, round: number): string | undefined {
  const overridden = state.overrides.some((o) => o.entry.round === round && o.entry.guard === 'films');
  if (!hardenerIn(state, round) || overridden) return undefined;
  return filmsSentence(filmCount(state, round));
}

/** Where the route does what the guard asks for. */
export function stageFor(state: BuildState, guard: Guard, round: number): StageState | undefined {
  const missing = missingFor(state, guard)[0];
  if (missing) return state.stages.find((s) => s.steps.includes(missing));
  const role: StepRole = filmCount(state, round).in === undefined ? 'filmsIn' : 'filmsOut';
  return state.stages.find((s) => s.round === round && s.steps.some(({ step }) => step.role === role));
}

/** 'Done, only not ticked' ticks what was done as well; nobody saw when. */
export function overrideDrafts(
  state: BuildState,
  guard: Guard,
  round: number,
  reason: OverrideReason,
): EntryDraft[] {
  const subject = state.header.id;
  const ticks = reason === 'doneNotTicked' ? missingFor(state, guard) : [];
  return [
    { kind: 'override', subject, guard, round, reason },
    ...ticks.map(
      (s): EntryDraft => ({ kind: 'tick', subject, step: s.step.id, round: s.round, timeNotSeen: true }),
    ),
  ];
}

export interface GuardWords {
  what: string;
  why: string;
}

export function guardWords(state: BuildState, guard: Guard, round: number): GuardWords {
  const left = missingFor(state, guard).length;
  switch (guard) {
    case 'dryRun':
      return {
        what: 'No dry run yet',
        why: 'Once hardener meets resin nothing can be looked for. Make every move once with empty hands.',
      };
    case 'release':
      return {
        what: `Release is not through: ${left} ${left === 1 ? 'step' : 'steps'} left`,
        why: 'Resin that reaches bare mandrel holds the tube on it for good.',
      };
    case 'rotation':
      return {
        what: 'The stand is not turning yet',
        why: 'Until it gels, resin runs to the low side of a mandrel that stands still.',
      };
    case 'films':
      return {
        what: filmsSentence(filmCount(state, round)) ?? 'Films are not counted',
        why: 'A film rolled into the wall ruins the tube. Look for it before tape goes on.',
      };
  }
}

export const reasonWords: Record<OverrideReason, string> = {
  doneNotTicked: 'Done, only not ticked',
  notNeeded: 'Not needed this time',
  anotherWay: 'Done another way',
  goingOn: 'Going on without it',
};
