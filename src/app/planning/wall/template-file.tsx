import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { canSave, saveFile } from '#app/platform/save-file.ts';
import { canShare, shareFile } from '#app/platform/share.ts';

interface Props {
  /** On the key. */
  label: string;
  make: () => Promise<File>;
  onSaid: (says: string) => void;
}

/** A file for a cutter or a drawing program: into the downloads, or through the share sheet where there are none. */
export function TemplateFile({ label, make, onSaid }: Props) {
  const made = useSignal<File | undefined>(undefined);
  const begin = async () => {
    const file = await make();
    if (canSave) {
      saveFile(file);
      onSaid(`${file.name} is in the downloads.`);
    } else if (canShare(file)) made.value = file;
    else onSaid('This browser neither shares nor saves files: open the app in a browser tab.');
  };
  const share = async (file: File) => {
    // A phone lets a page share only right after a tap: that of this key.
    if ((await shareFile(file)) !== 'shared') return;
    made.value = undefined;
    onSaid(`${file.name} was handed over.`);
  };
  const file = made.value;
  return file ? (
    <Secondary onPress={() => share(file)}>Send {file.name}</Secondary>
  ) : (
    <Secondary onPress={begin}>{label}</Secondary>
  );
}
