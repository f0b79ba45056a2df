import { type Signal, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { go, goInstead } from '#app/router.ts';
import { buildState, openOvenLoads } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { act } from './act.ts';
import type { Asked } from './asked.ts';
import { guardsBefore } from './guards.ts';
import { routeAddress, stageAt, stageSlug } from './position.ts';
import { type StepAction, stepAction } from './step-action.ts';
import { factsOfStep, retractDrafts, stillWaiting, tickDrafts } from './ticks.ts';

/** A glove bounces: a second touch this soon after a tick is the same touch, ms */
const bounce = 350;

export interface Ticking {
  asked: Signal<Asked | undefined>;
  actionOf: (step: StepState) => StepAction;
  /** Opens what the step opens, or ticks it. */
  press: (step: StepState) => void;
  /** A touch on its line: like a press, but a ticked one can be taken back, and one that leads away asks. */
  touch: (step: StepState) => void;
  open: (step: StepState) => void;
  tick: (step: StepState) => Promise<void>;
  takeBack: (step: StepState) => Promise<void>;
}

export function useTicking(state: BuildState): Ticking {
  const asked = useSignal<Asked | undefined>(undefined);
  const busyUntil = useRef(0);
  const { id } = state.header;

  const actionOf = (step: StepState) =>
    stepAction(state, step, (load) => {
      const open = openOvenLoads.value.find((o) => o.header.id === load);
      return open && (open.offAt === undefined && open.outAt === undefined ? 'notOff' : 'off');
    });

  const tick = async (step: StepState) => {
    const now = buildState(id) ?? state;
    const guard = step.stage === 'shrinkTape' ? guardsBefore(now, 'tape', step.round)[0] : undefined;
    if (guard) {
      asked.value = { kind: 'guard', guard, step };
      return;
    }
    asked.value = undefined;
    busyUntil.current = Number.POSITIVE_INFINITY;
    try {
      const drafts = tickDrafts(now, step, () => theStore().newId());
      await act(drafts, { said: `Ticked: ${step.step.text}`, step: step.key });
    } finally {
      busyUntil.current = performance.now() + bounce;
    }
    // A stage chosen from the list is left when it is through; the route goes on by itself.
    const after = buildState(id);
    if (after && stageAt(after, stageSlug(step))?.done) goInstead(routeAddress(id));
  };

  const open = (step: StepState) => {
    const { opens } = actionOf(step);
    if (!opens) return;
    const films = step.step.role === 'filmsIn' ? 'in' : 'out';
    if (opens.kind === 'screen') go(opens.to);
    else asked.value = { kind: 'sheet', sheet: opens.sheet, round: step.round, films };
  };

  const press = (step: StepState) => (actionOf(step).met ? tick(step) : open(step));

  const touch = (step: StepState) => {
    if (performance.now() < busyUntil.current) return;
    const waits = stillWaiting(buildState(id) ?? state, step, Date.now()) !== undefined;
    if (step.done || waits || !actionOf(step).met) asked.value = { kind: 'step', step };
    else tick(step);
  };

  const takeBack = async (step: StepState) => {
    const drafts = retractDrafts(id, factsOfStep(state, step));
    if (await act(drafts, { said: `Not ticked: ${step.step.text}` })) asked.value = undefined;
  };

  return { asked, actionOf, press, touch, open, tick, takeBack };
}
