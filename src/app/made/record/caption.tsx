import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { record } from '#app/state/record.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import type { Fact } from '#shared/record/journal.ts';

export type PhotoFact = Fact<EntryOf<'photo'>>;

/** Words to a photo are a correction of its line: what stood there before stays in the time line. */
function captionDraft({ entry, root }: PhotoFact, words: string) {
  const { subject, hash, happenedAt } = entry;
  return {
    kind: 'photo',
    subject,
    hash,
    happenedAt,
    corrects: root,
    ...(words !== '' && { caption: words }),
  } as const;
}

interface Props {
  photo: PhotoFact;
  onKept: () => void;
}

/** What is to be seen on it. Asked after it is kept: a photo never waits for words. */
export function Caption({ photo, onKept }: Props) {
  const before = photo.entry.caption ?? '';
  const text = useSignal(before);
  const words = text.value.trim();
  const keep = async () => {
    if (await record(captionDraft(photo, words))) onKept();
  };
  return (
    <>
      <TextField label="Words to it" text={text} hint="What is to be seen, and where on the tube" />
      {words !== before && (
        <Secondary onPress={keep}>{words === '' ? 'No words to it' : 'Words are kept'}</Secondary>
      )}
    </>
  );
}
