import { Action, Secondary } from '#app/parts/action.tsx';
import { go } from '#app/router.ts';
import { mergeIn, type Restoring, stopRestoring, takeFile } from './restoring.ts';
import './data.css';

/** A file field that looks and lies like an action. */
function ChooseFile({ again }: { again: boolean }) {
  return (
    <label class={again ? 'secondary choose-file' : 'action action-main choose-file'}>
      {again ? 'Choose another file' : 'Choose a backup file'}
      <input
        class="visually-hidden"
        type="file"
        accept=".txt,.json,text/plain,application/json"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) takeFile(file);
          // So that the same file, put right, can be chosen again.
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}

/** What a thumb can do at each step of a restore. */
export function RestoreActions({ at }: { at: Restoring }) {
  switch (at.step) {
    case 'reading':
    case 'merging':
      return (
        <>
          <Secondary onPress={stopRestoring}>Stop</Secondary>
          <Action onPress={() => {}} not="Keep this page open">
            Merge it in
          </Action>
        </>
      );
    case 'done':
      return <Action onPress={() => go('/record')}>See the record</Action>;
    case 'checked':
    case 'stopped':
      return (
        <>
          <ChooseFile again />
          <Action onPress={() => mergeIn(at.name, at.checked)}>
            {at.step === 'checked' ? 'Merge it in' : 'Go on merging it in'}
          </Action>
        </>
      );
    default:
      return <ChooseFile again={false} />;
  }
}
