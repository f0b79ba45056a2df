import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { act } from './act.ts';
import { allHard, type Feel, type Sample, sampleDraft, samplesOf, softSentence } from './samples.ts';
import type { SheetProps } from './sheet-props.ts';
import { roleTick } from './ticks.ts';

const options = [
  { value: 'hard', label: 'Hard' },
  { value: 'tacky', label: 'Tacky' },
  { value: 'soft', label: 'Soft' },
] as const satisfies readonly { value: Feel; label: string }[];

/** Every cup's kept sample under a fingernail: only it tells whether that cup was right. */
export function SamplesSheet({ state, round, newId, onClose }: SheetProps) {
  const samples = useSignal<Sample[]>(samplesOf(state, round));
  const choose = (chosen: Sample, feel: Feel) => {
    samples.value = samples.value.map((s) => (s === chosen ? { ...s, feel } : s));
  };
  const open = samples.value.find((s) => s.feel === undefined);
  const soft = softSentence(samples.value);
  const write = async () => {
    const subject = state.header.id;
    const felt = samples.value.flatMap((s) => (s.feel ? [sampleDraft(subject, s, s.feel)] : []));
    const tick = allHard(samples.value) ? roleTick(state, 'samples', { round, newId }) : [];
    const said = tick.length > 0 ? 'Every sample is hard' : 'Samples written down';
    if (await act([...felt, ...tick], { said })) onClose();
  };
  return (
    <Sheet
      title="Cup samples"
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onClose}>Close</Secondary>
          <Action onPress={write} not={open && `${open.name}: not felt yet`}>
            {soft ? 'Write it down as it is' : 'Every sample is hard'}
          </Action>
        </>
      }
    >
      <p>Press a fingernail into each. Hard: it leaves nothing.</p>
      {samples.value.map((s) => (
        <div class="bench-choice" key={s.name}>
          <Choice label={s.name} value={s.feel} options={options} onChange={(feel) => choose(s, feel)} />
        </div>
      ))}
      {soft && (
        <Warning kind="stop" title="Not all hard">
          {soft}
        </Warning>
      )}
    </Sheet>
  );
}
