import { useSignal } from '@preact/signals';
import { Action } from '#app/parts/action.tsx';
import { canSave, saveFile } from '#app/platform/save-file.ts';
import { canShare } from '#app/platform/share.ts';
import { HandFile, noWayOut, savedWords } from './hand-file.tsx';

interface Props {
  /** What the file is, as the button says it: 'table of builds'. */
  what: string;
  make: () => Promise<File>;
  onHanded?: () => unknown;
}

/**
 * A file out of the app. Where there is a share sheet it is made first and shared by a tap of its own, since a phone
 * lets a page share only right after one.
 */
export function HandOver({ what, make, onHanded }: Props) {
  const made = useSignal<File | undefined>(undefined);
  const says = useSignal('');
  const how = (words: string, handed: boolean) => {
    says.value = words;
    if (!handed) return;
    made.value = undefined;
    return onHanded?.();
  };
  const begin = async () => {
    says.value = '';
    const file = await make();
    if (canShare(file)) made.value = file;
    else if (canSave) {
      saveFile(file);
      await how(savedWords(file), true);
    } else says.value = noWayOut;
  };
  const file = made.value;
  return (
    <>
      {says.value && (
        <p class="small" role="status">
          {says.value}
        </p>
      )}
      {file ? (
        <HandFile what={what} file={file} onHow={how} />
      ) : (
        <Action key="make" onPress={begin}>
          Save the {what}
        </Action>
      )}
    </>
  );
}
