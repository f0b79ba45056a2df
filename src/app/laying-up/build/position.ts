import type { BuildState } from '#shared/record/build-state.ts';
import { repeating } from '#shared/record/checklist.ts';
import type { StageState, StepState } from '#shared/record/route-state.ts';
import { filmCount } from './films.ts';

export const allSteps = (state: BuildState): StepState[] => state.stages.flatMap((s) => s.steps);

/** The last part of a stage's address: 'wetOut-1'. */
export const stageSlug = ({ stage, round }: { stage: string; round: number }) => `${stage}-${round}`;

export function routeAddress(build: string, stage?: StageState): string {
  return stage ? `/build/${build}/${stageSlug(stage)}` : `/build/${build}`;
}

export function stageAt(state: BuildState, slug: string | undefined): StageState | undefined {
  return state.stages.find((s) => stageSlug(s) === slug);
}

/** The stage that was last worked in, by the time of its ticks. */
function lastWorkedIn(state: BuildState): number {
  let at = -1;
  let latest = Number.NEGATIVE_INFINITY;
  for (const [i, stage] of state.stages.entries()) {
    for (const { done } of stage.steps) {
      if (!done || done.timeNotSeen || done.at < latest) continue;
      latest = done.at;
      at = i;
    }
  }
  return at;
}

/**
 * The stage the builder stands at: the first with something left, from the one last worked in. A tick forgotten
 * further up does not pull the screen back there; only when nothing else is left.
 */
export function presentStage(state: BuildState): StageState | undefined {
  const open = (s: StageState) => !s.done;
  return state.stages.slice(Math.max(0, lastWorkedIn(state))).find(open) ?? state.stages.find(open);
}

export const presentStep = (stage: StageState): StepState | undefined => stage.steps.find((s) => !s.done);

/** A round counts once resin is in it: a cup, or a step from mix to cure that is ticked. */
export function roundBegun({ stages, cups, rounds }: BuildState): boolean {
  const wet = stages.filter((s) => s.round === rounds && repeating.includes(s.stage));
  return cups.some((c) => c.round === rounds) || wet.some((s) => s.steps.some((step) => step.done));
}

export interface Missed {
  /** Not ticked, though something after them is, or the stage looked at comes after them. */
  steps: StepState[];
  /** The step before which they all stand. */
  before: StepState;
}

/** Films counted out short are not done and only forgotten: one press for all must not tick them. */
function countedShort(state: BuildState, { step, round }: StepState): boolean {
  const { in: laid, out, even } = filmCount(state, round);
  return step.role === 'filmsOut' && laid !== undefined && out !== undefined && !even;
}

export function notTickedBefore(state: BuildState, step: StepState): StepState[] {
  const steps = allSteps(state);
  return steps
    .slice(
      0,
      steps.findIndex((s) => s.key === step.key),
    )
    .filter((s) => !s.done && !countedShort(state, s));
}

/** Forgotten ticks, seen from a stage: everything open before its start, or before the last step done anywhere. */
export function missedFrom(state: BuildState, stage: StageState): Missed | undefined {
  const steps = allSteps(state);
  const first = stage.steps[0];
  const start = first ? steps.findIndex((s) => s.key === first.key) : 0;
  const lastDone = steps.reduce((last, s, i) => (s.done ? i : last), 0);
  const before = steps[Math.max(start, lastDone)];
  const missed = before ? notTickedBefore(state, before) : [];
  return before && missed.length > 0 ? { steps: missed, before } : undefined;
}
