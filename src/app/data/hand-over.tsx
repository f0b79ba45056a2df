import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { canSave, saveFile } from '#app/platform/save-file.ts';
import { canShare, shareFile } from '#app/platform/share.ts';
import { formatBytes } from './file-words.ts';

interface Props {
  /** What the file is, as the button says it: 'backup', 'table of builds'. */
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
  const handed = (how: string) => {
    made.value = undefined;
    says.value = how;
    return onHanded?.();
  };
  const save = (file: File) => {
    saveFile(file);
    return handed(`${file.name} is in the downloads.`);
  };
  const begin = async () => {
    says.value = '';
    const file = await make();
    if (canShare(file)) made.value = file;
    else if (canSave) await save(file);
    else says.value = 'This browser neither shares nor saves files: open the app in a browser tab.';
  };
  const share = async (file: File) => {
    const how = await shareFile(file);
    if (how === 'shared') return handed(`The ${what} was handed over.`);
    says.value =
      how === 'cancelled' ? 'Not handed over yet.' : 'The phone would not share it: save it instead.';
  };
  const file = made.value;
  return (
    <>
      {says.value && (
        <p class="small" role="status">
          {says.value}
        </p>
      )}
      {file && canSave && <Secondary onPress={() => save(file)}>Save it in the downloads</Secondary>}
      {file ? (
        <Action key="share" onPress={() => share(file)}>
          Send or keep the {what}, {formatBytes(file.size)}
        </Action>
      ) : (
        <Action key="make" onPress={begin}>
          Save the {what}
        </Action>
      )}
    </>
  );
}
