import { type Signal, signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Action, Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { record } from '#app/state/record.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { type Picture, takePicture } from './picture.ts';

interface Props {
  build: string;
  onClose: () => void;
}

function noteDraft(subject: string, text: string, picture: Picture | undefined): EntryDraft {
  if (!picture) return { kind: 'note', subject, text };
  return { kind: 'photo', subject, hash: picture.record.hash, ...(text !== '' && { caption: text }) };
}

/** Words not yet kept stay when the sheet is closed in a hurry. */
const drafts = new Map<string, Signal<string>>();

function draftFor(build: string): Signal<string> {
  const kept = drafts.get(build) ?? signal('');
  drafts.set(build, kept);
  return kept;
}

/** A few words, a picture, or a picture with its words. */
export function NoteSheet({ build, onClose }: Props) {
  const text = draftFor(build);
  const picture = useSignal<(Picture & { url: string }) | undefined>(undefined);
  const problem = useSignal('');
  const drop = () => {
    if (picture.value) URL.revokeObjectURL(picture.value.url);
  };
  useEffect(() => drop, []);
  const take = async (file: File | undefined) => {
    if (!file) return;
    const taken = await takePicture(file, Date.now());
    problem.value = taken
      ? ''
      : 'This file is not a picture that this phone can read. Take or choose another.';
    if (!taken) return;
    drop();
    picture.value = { ...taken, url: URL.createObjectURL(taken.blob) };
  };
  const words = text.value.trim();
  const write = async () => {
    const taken = picture.value;
    const photos = taken ? [{ record: taken.record, blob: taken.blob }] : [];
    if (!(await record(noteDraft(build, words, taken), { photos }))) return;
    drafts.delete(build);
    onClose();
  };
  const empty = words === '' && !picture.value;
  return (
    <Sheet
      title="Note or photo"
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onClose}>Close</Secondary>
          <Action onPress={write} not={empty ? 'No words, no picture yet' : undefined}>
            {picture.value ? 'Photo is kept' : 'Note is kept'}
          </Action>
        </>
      }
    >
      {picture.value && <img class="note-picture" src={picture.value.url} alt="As it will be kept" />}
      <label class="secondary note-take">
        {picture.value ? 'Take another instead' : 'Take a photo'}
        <input
          class="visually-hidden"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => take(event.currentTarget.files?.[0])}
        />
      </label>
      {problem.value && (
        <p class="field-problem" role="alert">
          {problem.value}
        </p>
      )}
      <TextField label="What is worth knowing" text={text} long />
    </Sheet>
  );
}
