import { Beside, Secondary } from '#app/parts/action.tsx';
import { now } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { act, undo, undoable } from './act.ts';
import { allSteps, notTickedBefore } from './position.ts';
import { forgottenDrafts } from './ticks.ts';

/** For ten seconds after a press: the way back, and the way to tick what was passed over. */
export function UndoBar({ state }: { state: BuildState }) {
  const last = undoable.value;
  if (!last || last.build !== state.header.id || now.value >= last.until) return null;
  const step = allSteps(state).find((s) => s.key === last.step);
  const missed = step?.done ? notTickedBefore(state, step) : [];
  return (
    <>
      <p class="undo-said" role="status">
        {last.said}
      </p>
      <Beside>
        <Secondary onPress={undo}>Undo</Secondary>
        {missed.length > 0 && (
          <Secondary
            onPress={() =>
              act(state, forgottenDrafts(state, missed), { said: `Ticked, times not seen: ${missed.length}` })
            }
          >
            All done to here
          </Secondary>
        )}
      </Beside>
    </>
  );
}
