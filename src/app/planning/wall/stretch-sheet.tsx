import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { show } from '#app/state/show.ts';
import type { WallDraft } from './wall-draft.ts';
import { longest, shortest, stretchTo } from './wall-edits.ts';

const inch = 0.0254;

/** The whole wall for another length of tube. */
export function StretchSheet({ draft, onClose }: { draft: WallDraft; onClose: () => void }) {
  const to = useSignal(draft.state.value.length);
  return (
    <Sheet
      title="Stretch the whole wall"
      onClose={onClose}
      actions={
        <Action
          onPress={() => {
            draft.change(stretchTo(draft.state.value, to.value));
            onClose();
          }}
        >
          Stretched to {show(to.value, 'length', 0)}
        </Action>
      }
    >
      <p>Every station moves along with the length. The mandrel stays as it is.</p>
      <StepField
        label="To a tube length of"
        quantity="length"
        value={to.value}
        step={stepIn(0.05, 2 * inch)}
        min={shortest}
        max={longest}
        onSet={(m) => (to.value = m)}
      />
      <Secondary onPress={onClose}>Leave it as it is</Secondary>
    </Sheet>
  );
}
