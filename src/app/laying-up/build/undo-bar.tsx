import { Secondary } from '#app/parts/action.tsx';
import { now } from '#app/state/now.ts';
import { undo, undoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { act } from './act.ts';
import { allSteps, notTickedBefore } from './position.ts';
import { forgottenDrafts } from './ticks.ts';

function lastPress({ header }: BuildState) {
  const last = undoable.value;
  const isIts = last?.facts.some((f) => f.subject === header.id);
  return last && isIts && now.value < last.until ? last : undefined;
}

/** For ten seconds after a press: the way back, among the keys that lie there anyway. */
export function UndoKey({ state }: { state: BuildState }) {
  return lastPress(state) ? <Secondary onPress={undo}>Undo</Secondary> : null;
}

/** What the last press did, and the way to tick what was passed over. */
export function UndoWords({ state }: { state: BuildState }) {
  const last = lastPress(state);
  if (!last) return null;
  const step = allSteps(state).find((s) => s.key === last.step);
  const missed = step?.done ? notTickedBefore(state, step) : [];
  return (
    <>
      <p class="undo-said" role="status">
        {last.said}
      </p>
      {missed.length > 0 && (
        <Secondary
          onPress={() =>
            act(forgottenDrafts(state, missed), { said: `Ticked, times not seen: ${missed.length}` })
          }
        >
          All done to here
        </Secondary>
      )}
    </>
  );
}

/** Both in one, where no other keys lie. */
export function UndoBar({ state }: { state: BuildState }) {
  return (
    <>
      <UndoWords state={state} />
      <UndoKey state={state} />
    </>
  );
}
