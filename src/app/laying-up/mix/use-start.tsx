import { useSignal } from '@preact/signals';
import { GuardSheet } from '#app/laying-up/build/guard-sheet.tsx';
import { guardsBefore } from '#app/laying-up/build/guards.ts';
import { goInstead } from '#app/router.ts';
import { buildState } from '#app/state/journals.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { Guard } from '#shared/record/entry.ts';
import { startCup } from './mix-acts.ts';
import type { MixOfBuild } from './mix-of-build.ts';
import { eachOf, type MixPlan } from './mix-plan.ts';

export interface PlanProps {
  state: BuildState;
  mix: MixOfBuild;
}

export interface PlannedProps extends PlanProps {
  plan: MixPlan;
  frame: { back: { to: string; label: string }; kicker: string };
}

/** Starts a cup once the guard before it has been met or answered. */
export function useStart(state: BuildState, plan: MixPlan, total: number, ratio: number) {
  const stopping = useSignal<Guard | undefined>(undefined);
  const start = async () => {
    const fresh = buildState(state.header.id) ?? state;
    const [guard] = guardsBefore(fresh, 'startCup', fresh.rounds);
    stopping.value = guard;
    if (guard) return;
    const next = plan.cups > 0 ? plan.next : { number: plan.next.number, of: plan.next.number };
    if (await startCup(fresh, eachOf(total, ratio), next)) goInstead(`/mix/${state.header.id}`);
  };
  const sheet = stopping.value && (
    <GuardSheet
      key={stopping.value}
      state={state}
      guard={stopping.value}
      round={state.rounds}
      onDone={start}
      onClose={() => {
        stopping.value = undefined;
      }}
    />
  );
  return { start, sheet };
}
