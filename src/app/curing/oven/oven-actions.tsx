import { useSignal } from '@preact/signals';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { go } from '#app/router.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Inside } from './done-three.ts';
import { outOfOven, ovenOff, undoOff, undoOut } from './oven-acts.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { stillHot } from './oven-words.ts';
import { TemperatureChips } from './temperature-chips.tsx';

interface ActionsProps {
  state: OvenState;
  results: OvenResults;
  at: OvenNow;
  inside: readonly Inside[];
}

/** Out while it is hot takes a hold: the resin is soft there, and so is a hand. */
function OutOfOven({ state, results }: Pick<ActionsProps, 'state' | 'results'>) {
  const hot = stillHot(state, results);
  const out = () => outOfOven(state);
  if (!hot) return <Action onPress={out}>Out of the oven</Action>;
  return (
    <HoldAction onHeld={out}>
      Out of the oven, {hot} <small aria-hidden="true">press and hold</small>
    </HoldAction>
  );
}

/** Logging while it burns; then off, then out. */
export function OvenActions({ state, results, at, inside }: ActionsProps) {
  const isLogging = useSignal(false);
  if (at.phase === 'out') {
    const first = inside[0]?.state;
    return (
      <>
        <Secondary onPress={() => undoOut(state)}>Not out yet: take that back</Secondary>
        <Action onPress={() => go(first ? `/build/${first.header.id}` : '/')}>
          {first ? `Go on with ${buildName(first)}` : 'To the bench'}
        </Action>
      </>
    );
  }
  const toggle = () => {
    isLogging.value = !isLogging.value;
  };
  if (!at.burning && !isLogging.value) {
    return (
      <>
        <Beside>
          <Secondary onPress={() => undoOff(state)}>Still on: take ‘off’ back</Secondary>
          <Secondary onPress={toggle}>Log a temperature</Secondary>
        </Beside>
        <OutOfOven state={state} results={results} />
      </>
    );
  }
  return (
    <>
      {at.phase === 'held' && <Secondary onPress={() => ovenOff(state)}>Oven is off</Secondary>}
      {!at.burning && <Secondary onPress={toggle}>No more readings</Secondary>}
      <TemperatureChips load={state} />
    </>
  );
}
