import { Action } from '#app/parts/action.tsx';

interface Props {
  again: boolean;
  isBusy: boolean;
  onFile: (file: File) => void;
}

/** A file field that looks and lies like an action. */
export function ChooseLoggerFile({ again, isBusy, onFile }: Props) {
  if (isBusy) {
    return (
      <Action onPress={() => {}} not="Reading the file">
        Choose the logger’s file
      </Action>
    );
  }
  return (
    <label class={again ? 'secondary choose-logger' : 'action action-main choose-logger'}>
      {again ? 'Choose another file' : 'Choose the logger’s file'}
      <input
        class="visually-hidden"
        type="file"
        accept=".csv,.txt,.tsv,.log,.dat,text/csv,text/plain,text/tab-separated-values"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) onFile(file);
          // So that the same file, put right, can be chosen again.
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}
