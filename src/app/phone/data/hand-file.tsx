import { Action, Secondary } from '#app/parts/action.tsx';
import { canSave, saveFile } from '#app/platform/save-file.ts';
import { canShare, shareFile } from '#app/platform/share.ts';
import { formatBytes } from './file-words.ts';

interface Props {
  /** What the file is, as the button says it: 'backup', 'table of builds'. */
  what: string;
  file: File;
  /** What came of it, to be said above the buttons; `handed` when it is out of the app. */
  onHow: (says: string, handed: boolean) => unknown;
}

/** Why a file cannot leave the app at all. */
export const noWayOut = 'This browser neither shares nor saves files: open the app in a browser tab.';

export const savedWords = (file: File): string => `${file.name} is in the downloads.`;

/** A file that is made, and the ways out of the app that this phone has. */
export function HandFile({ what, file, onHow }: Props) {
  const save = () => {
    saveFile(file);
    return onHow(savedWords(file), true);
  };
  const share = async () => {
    const how = await shareFile(file);
    if (how === 'shared') return onHow(`The ${what} was handed over.`, true);
    const says =
      how === 'cancelled' ? 'Not handed over yet.' : 'The phone would not share it: save it instead.';
    return onHow(says, false);
  };
  const size = formatBytes(file.size);
  if (!canShare(file)) {
    return (
      <Action key="save" onPress={save}>
        Save the {what}, {size}
      </Action>
    );
  }
  return (
    <>
      {canSave && <Secondary onPress={save}>Save it in the downloads</Secondary>}
      <Action key="share" onPress={share}>
        Send or keep the {what}, {size}
      </Action>
    </>
  );
}
