import { useSignal } from '@preact/signals';
import type { BuildState } from '#shared/record/build-state.ts';
import { act } from './act.ts';
import { takePicture } from './picture.ts';

/** The camera, and what it took is kept at once. Words to it come after, here or in the record. */
export function TakePhoto({ state }: { state: BuildState }) {
  const problem = useSignal('');
  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    const taken = await takePicture(file, Date.now());
    problem.value = taken ? '' : 'Not a picture that this phone can read. Take another.';
    if (!taken) return;
    const draft = { kind: 'photo', subject: state.header.id, hash: taken.record.hash } as const;
    await act([draft], { said: 'Photo is kept', photos: [taken] });
    // The same file chosen again has to count as a change.
    input.value = '';
  };
  return (
    <label class="secondary take-photo">
      {problem.value ? <span role="alert">{problem.value}</span> : 'Take a photo'}
      <input
        class="visually-hidden"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => take(event.currentTarget)}
      />
    </label>
  );
}
