import { type ChecklistStage, repeating, type StageName, type Step } from './checklist.ts';
import type { EntryOf } from './entry.ts';
import type { Fact } from './journal.ts';

export interface StepState {
  /** Names this step of this round; one checklist step can stand in several rounds. */
  key: string;
  step: Step;
  stage: StageName;
  round: number;
  done?: { at: number; root: string; timeNotSeen: boolean; zone: number };
}

export interface StageState {
  key: string;
  stage: StageName;
  round: number;
  steps: StepState[];
  done: boolean;
}

export const stepKey = (step: string, round: number) => `${step}#${round}`;

/** The stages in working order: mix to cure stand once for every round. */
export function unrollRoute(
  route: readonly ChecklistStage[],
  rounds: number,
): { stage: ChecklistStage; round: number }[] {
  const first = route.findIndex((s) => repeating.includes(s.stage));
  if (first < 0) return route.map((stage) => ({ stage, round: 1 }));
  const before = route.slice(0, first);
  const middle = route.filter((s) => repeating.includes(s.stage));
  const after = route.slice(first).filter((s) => !repeating.includes(s.stage));
  const repeated = Array.from({ length: rounds }, (_, i) =>
    middle.map((stage) => ({ stage, round: i + 1 })),
  ).flat();
  return [
    ...before.map((stage) => ({ stage, round: 1 })),
    ...repeated,
    ...after.map((stage) => ({ stage, round: 1 })),
  ];
}

export function foldRoute(
  route: readonly ChecklistStage[],
  rounds: number,
  ticks: readonly Fact<EntryOf<'tick'>>[],
): StageState[] {
  const done = new Map<string, StepState['done']>();
  for (const { entry, root } of ticks) {
    const key = stepKey(entry.step, entry.round);
    if (!done.has(key)) {
      done.set(key, {
        at: entry.happenedAt,
        root,
        timeNotSeen: entry.timeNotSeen === true,
        zone: entry.zone,
      });
    }
  }
  return unrollRoute(route, rounds).map(({ stage, round }) => {
    const steps = stage.steps.map((step): StepState => {
      const key = stepKey(step.id, round);
      const tick = done.get(key);
      return { key, step, stage: stage.stage, round, ...(tick && { done: tick }) };
    });
    return {
      key: stepKey(stage.stage, round),
      stage: stage.stage,
      round,
      steps,
      done: steps.every((s) => s.done),
    };
  });
}
