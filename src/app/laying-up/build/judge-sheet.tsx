import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { act } from './act.ts';
import { RateSheet } from './rate-sheet.tsx';
import { ratedWords } from './rated.tsx';
import type { SheetProps } from './sheet-props.ts';
import { outcomeWords } from './stage-words.ts';
import { roleTick } from './ticks.ts';

type Outcome = keyof typeof outcomeWords;

const outcomes = [
  ['good', 'Good', 'goes into service as planned'],
  ['rework', 'Rework', 'more has to be done before it serves'],
  ['scrap', 'Scrap', 'will not serve'],
] as const satisfies readonly (readonly [Outcome, string, string])[];

interface Props extends SheetProps {
  /** Close the build with it: nothing more will be done to this tube. */
  closing?: boolean;
}

export function JudgeSheet({ state, newId, onClose, closing }: Props) {
  const last = state.disposition?.entry;
  const outcome = useSignal<Outcome | undefined>(last?.outcome);
  const note = useSignal(last?.text ?? '');
  const rating = useSignal(false);
  const write = async () => {
    if (!outcome.value) return;
    const subject = state.header.id;
    const text = note.value.trim();
    const drafts = [
      { kind: 'disposition', subject, outcome: outcome.value, ...(text !== '' && { text }) } as const,
      ...roleTick(state, 'judge', { newId }),
      ...(closing ? [{ kind: 'closed', subject } as const] : []),
    ];
    const said = `Judged: ${outcomeWords[outcome.value].toLowerCase()}`;
    if (await act(drafts, { said })) onClose();
  };
  const word = outcome.value && outcomeWords[outcome.value].toLowerCase();
  return (
    <Sheet
      title="How did it come out?"
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onClose}>Close</Secondary>
          <Action onPress={write} not={word ? undefined : 'Choose one of the three'}>
            {closing ? `Tube no. ${state.header.number} is done: ${word}` : `Judged ${word}`}
          </Action>
        </>
      }
    >
      {outcomes.map(([value, label, about]) => (
        <Secondary key={value} pressed={outcome.value === value} onPress={() => (outcome.value = value)}>
          <span>
            <span class="outcome">{label}</span> <span class="outcome-about">{about}</span>
          </span>
        </Secondary>
      ))}
      <Secondary onPress={() => (rating.value = true)}>{ratedWords(state)}</Secondary>
      <TextField label="Why, if it helps the next one" text={note} long />
      {rating.value && <RateSheet state={state} onClose={() => (rating.value = false)} />}
    </Sheet>
  );
}
