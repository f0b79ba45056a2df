import { Action, Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { go } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type Guard, type OverrideReason, overrideReasons } from '#shared/record/entry.ts';
import { guardWords, overrideDrafts, reasonWords, stageFor } from './guards.ts';
import { routeAddress } from './position.ts';

interface Props {
  state: BuildState;
  guard: Guard;
  round: number;
  /** The reason is on disk: go on. */
  onDone: () => void;
  onClose: () => void;
}

/** Stops once, says what is missing and why it matters, and lets the builder go on for one of four reasons. */
export function GuardSheet({ state, guard, round, onDone, onClose }: Props) {
  const { what, why } = guardWords(state, guard, round);
  const override = async (reason: OverrideReason) => {
    if (await record(overrideDrafts(state, guard, round, reason))) onDone();
  };
  const goBack = () => {
    onClose();
    go(routeAddress(state.header.id, stageFor(state, guard, round)));
  };
  return (
    <Sheet title={what} onClose={onClose} actions={<Action onPress={goBack}>Go back and do it</Action>}>
      <p>{why}</p>
      <p class="quiet small">Or go on, and keep the reason in the record:</p>
      {overrideReasons.map((reason) => (
        <Secondary key={reason} onPress={() => override(reason)}>
          {reasonWords[reason]}
        </Secondary>
      ))}
    </Sheet>
  );
}
