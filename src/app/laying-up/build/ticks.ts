import type { BuildState } from '#shared/record/build-state.ts';
import type { StepRole } from '#shared/record/checklist.ts';
import { type ClockState, readClock } from '#shared/record/clock-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { type Fact, holding } from '#shared/record/journal.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { formatCountdown, formatDuration } from '#shared/units/time.ts';
import { allSteps } from './position.ts';

const isWait = (c: ClockState) => c.purpose === 'dry' || c.purpose === 'soak';

/** The latest wait that this step started. */
export function waitOf(state: BuildState, { step, round }: StepState): ClockState | undefined {
  return state.clocks.filter((c) => isWait(c) && c.step === step.id && c.round === round).at(-1);
}

function startWait(state: BuildState, { step, round, stage }: StepState, newId: () => string): EntryDraft[] {
  if (step.waits === undefined) return [];
  return [
    {
      kind: 'clockStarted',
      subject: state.header.id,
      clock: newId(),
      purpose: stage === 'wetOut' ? 'soak' : 'dry',
      label: step.text,
      lasts: step.waits,
      warns: 0,
      step: step.id,
      round,
    },
  ];
}

/** The wait of the step before, which this one goes on from. */
function waitBefore(state: BuildState, step: StepState): { before: StepState; wait: ClockState } | undefined {
  const steps = allSteps(state);
  const before = steps[steps.findIndex((s) => s.key === step.key) - 1];
  const wait = before && waitOf(state, before);
  return wait && wait.endedAt === undefined ? { before, wait } : undefined;
}

/** A wait of this stage that runs still: the step after it is not to be ticked by a second press. */
export function stillWaiting(state: BuildState, step: StepState, now: number): ClockState | undefined {
  const found = waitBefore(state, step);
  if (!found || found.before.stage !== step.stage) return undefined;
  return readClock(found.wait, now).left > 0 ? found.wait : undefined;
}

/** 'Soaked enough: 1:40 left of 3 min' */
export function enoughWords(wait: ClockState, now: number): string {
  const { left } = readClock(wait, now);
  const word = wait.purpose === 'soak' ? 'Soaked' : 'Dry';
  return `${word} enough: ${formatCountdown(left)} left of ${formatDuration(wait.lasts)}`;
}

/** Going on after a wait answers its clock: it must not ring for a coat that is long under the next. */
function endWaitBefore(state: BuildState, step: StepState): EntryDraft[] {
  const found = waitBefore(state, step);
  return found ? [{ kind: 'clockAnswered', subject: state.header.id, clock: found.wait.clock }] : [];
}

/** One tap: the tick, the clock it starts, the wait it ends, and the gel it says was seen. */
export function tickDrafts(state: BuildState, step: StepState, newId: () => string): EntryDraft[] {
  const subject = state.header.id;
  const gelSeen = step.step.role === 'rotationOff';
  return [
    { kind: 'tick', subject, step: step.step.id, round: step.round },
    ...startWait(state, step, newId),
    ...endWaitBefore(state, step),
    ...(gelSeen ? [{ kind: 'check', subject, what: 'gel', outcome: 'gelled' } as const] : []),
  ];
}

/** Forgotten ticks: they were done, and nobody saw when. */
export function forgottenDrafts(state: BuildState, steps: readonly StepState[]): EntryDraft[] {
  return steps.map((s) => ({
    kind: 'tick',
    subject: state.header.id,
    step: s.step.id,
    round: s.round,
    timeNotSeen: true,
  }));
}

/**
 * The tick of the first step with this role that is open, for the screen that does what the step asks.
 * Empty when there is none: put it in the transaction that records the doing.
 */
export function roleTick(
  state: BuildState,
  role: StepRole,
  { round, newId }: { round?: number; newId: () => string },
): EntryDraft[] {
  const step = allSteps(state).find(
    (s) => s.step.role === role && !s.done && (round === undefined || s.round === round),
  );
  return step ? tickDrafts(state, step, newId) : [];
}

export const retractDrafts = (subject: string, roots: readonly string[]): EntryDraft[] =>
  roots.map((corrects) => ({ kind: 'retracted', subject, corrects }));

/** Facts that hold of one step: its tick, and the clock it started. */
export function factsOfStep(state: BuildState, { step, round }: StepState): string[] {
  const belongs = ({ entry: e }: Fact) =>
    (e.kind === 'tick' || e.kind === 'clockStarted') &&
    'step' in e &&
    e.step === step.id &&
    'round' in e &&
    e.round === round;
  return holding(state.facts)
    .filter(belongs)
    .map((f) => f.root);
}
