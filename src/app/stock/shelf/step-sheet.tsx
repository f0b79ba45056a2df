import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { QuantityField, SelectField, TextField } from '#app/parts/field.tsx';
import { allGood, useQuantity } from '#app/parts/quantity-input.ts';
import { Sheet } from '#app/parts/sheet.tsx';
import type { Step, StepRole } from '#shared/record/checklist.ts';
import { roleOptions } from './checklist-words.ts';

interface Props {
  step: Step;
  fresh: boolean;
  onClose: () => void;
  onDone: (step: Step) => void;
}

const longestText = 300;

/** What does this step say, and what does it wait for? */
export function StepSheet({ step, fresh, onClose, onDone }: Props) {
  const text = useSignal(step.text);
  const hint = useSignal(step.hint ?? '');
  const role = useSignal<StepRole | ''>(step.role ?? '');
  const waits = useQuantity(step.waits, {
    quantity: 'duration',
    positive: true,
    max: 14 * 86_400,
    optional: true,
  });
  const pressed = useSignal(false);
  const words = text.value.trim();
  const problem =
    words.length > longestText
      ? 'That is more than fits a line at the bench: put the rest in the hint.'
      : words
        ? undefined
        : 'Write what is done, like Wax coat on.';
  const done = () => {
    pressed.value = true;
    if (problem || !allGood([waits])) return;
    const { hint: _, role: __, waits: ___, ...kept } = step;
    const seconds = waits.si.value;
    onDone({
      ...kept,
      text: words,
      ...(hint.value.trim() && { hint: hint.value.trim() }),
      ...(role.value && { role: role.value }),
      ...(seconds !== undefined && { waits: seconds }),
    });
  };
  return (
    <Sheet
      title={fresh ? 'New step' : 'Change the step'}
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onClose}>{fresh ? 'No new step' : 'Leave it as it was'}</Secondary>
          <Action onPress={done}>{fresh ? 'Add the step' : 'The step says this'}</Action>
        </>
      }
    >
      <TextField label="What is done" text={text} problem={pressed.value ? problem : undefined} long />
      <TextField label="Hint" text={hint} hint="Small, while it is the step to do. May stay empty" long />
      <QuantityField
        label="Then wait"
        input={waits}
        hint="Ticking it starts a clock of this length: 30 min. May stay empty"
      />
      <SelectField
        label="Besides the tick"
        value={role.value}
        options={roleOptions}
        onChange={(value) => {
          role.value = value;
        }}
      />
    </Sheet>
  );
}
