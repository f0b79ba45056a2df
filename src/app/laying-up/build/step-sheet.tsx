import { Action, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import type { StepState } from '#shared/record/route-state.ts';
import type { Opens } from './step-action.ts';
import { doneAt } from './step-line.tsx';

interface Props {
  build: string;
  step: StepState;
  opens: Opens | undefined;
  onOpen: () => void;
  onTick: () => void;
  onTakeBack: () => void;
  onClose: () => void;
}

/** One step, when it takes more than a tap: it opens something, or it is ticked and should not be. */
export function StepSheet({ build, step, opens, onOpen, onTick, onTakeBack, onClose }: Props) {
  const { done } = step;
  const open = opens && <Secondary onPress={onOpen}>{opens.label}</Secondary>;
  if (done) {
    return (
      <Sheet
        title={step.step.text}
        onClose={onClose}
        actions={<Action onPress={onClose}>Leave it ticked</Action>}
      >
        <p>{done.timeNotSeen ? 'Ticked later: nobody saw when it was done.' : `Ticked ${doneAt(done)}.`}</p>
        {open}
        <LinkButton to={`/record/fix/${build}/${done.root}`}>Put its time right</LinkButton>
        <Secondary onPress={onTakeBack}>Take the tick back</Secondary>
      </Sheet>
    );
  }
  return (
    <Sheet
      title={step.step.text}
      onClose={onClose}
      actions={
        <>
          <div class="beside">
            <Secondary onPress={onClose}>Close</Secondary>
            <Secondary onPress={onTick}>Only tick it</Secondary>
          </div>
          {opens && <Action onPress={onOpen}>{opens.label}</Action>}
        </>
      }
    >
      {step.step.hint && <p>{step.step.hint}</p>}
    </Sheet>
  );
}
