import { useSignal } from '@preact/signals';
import { SurroundingsSheet } from '#app/laying-up/build/surroundings-sheet.tsx';
import { Secondary } from '#app/parts/action.tsx';
import { theStore } from '#app/state/shop.ts';
import type { BuildState } from '#shared/record/build-state.ts';

/** Resin or shop have got warmer: what is read moves the clocks of the cups. */
export function ReadAgain({ state }: { state: BuildState }) {
  const open = useSignal(false);
  return (
    <>
      <Secondary
        onPress={() => {
          open.value = true;
        }}
      >
        Read resin and air again
      </Secondary>
      {open.value && (
        <SurroundingsSheet
          state={state}
          round={state.rounds}
          newId={() => theStore().newId()}
          onClose={() => {
            open.value = false;
          }}
        />
      )}
    </>
  );
}
