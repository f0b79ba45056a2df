import { Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { cupIsEmpty, lastPress, throwOut } from './mix-acts.ts';

interface Props {
  state: BuildState;
  cup: CupState;
}

/** Another cup in its pot life, emptied while this one is in hand. */
export function CupEmptied({ state, cup }: Props) {
  return <Secondary onPress={() => cupIsEmpty(state, cup)}>Cup {cup.number} is empty</Secondary>;
}

/** Takes the last press on this cup back, by a new entry. */
export function UndoPress({ state, cup }: Props) {
  const { label, undo } = lastPress(state, cup);
  return <Secondary onPress={undo}>{label}</Secondary>;
}

/** Its resin goes to waste and is mixed again, so it takes a press that is meant. */
export function ThrowOut({ state, cup }: Props) {
  return (
    <HoldAction small onHeld={() => throwOut(state, cup)}>
      Throw cup {cup.number} out <small aria-hidden="true">press and hold</small>
    </HoldAction>
  );
}
