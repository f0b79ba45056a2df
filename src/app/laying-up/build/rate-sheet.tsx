import { useMemo } from 'preact/hooks';
import { Caption } from '#app/made/record/caption.tsx';
import { Thumbnails } from '#app/made/record/thumbnails.tsx';
import { ratingNames, ratingWords } from '#app/made/results/rating-words.ts';
import { Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import { type RatingOf, ratingsOf } from '#shared/record/entry.ts';
import { act } from './act.ts';
import type { SheetProps } from './sheet-props.ts';
import { TakePhoto } from './take-photo.tsx';
import { UndoBar } from './undo-bar.tsx';
import './rate-sheet.css';

/** One tap, one entry: nothing waits for the others. */
function Rating({ state, what }: { state: BuildState; what: RatingOf }) {
  const now = state.ratings.get(what)?.entry.value;
  const rate = (value: number, word: string) => {
    if (value === now) return;
    const draft = { kind: 'rating', subject: state.header.id, what, value } as const;
    return act([draft], { said: `${ratingNames[what]}: ${word}` });
  };
  return (
    <fieldset class="rating">
      <legend>{ratingNames[what]}</legend>
      <div class="rating-row">
        {ratingWords[what].map((word, value) => (
          <button key={word} type="button" aria-pressed={value === now} onClick={() => rate(value, word)}>
            {word}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Words to the photo just taken, while the tube is still in the hand. */
function LastPhoto({ state, since }: { state: BuildState; since: number }) {
  const last = state.photos.at(-1);
  if (!last || last.entry.caption !== undefined || last.entry.recordedAt < since) return null;
  return <Caption key={last.root} photo={last} onKept={() => {}} />;
}

/** How the tube looks and how it came off, while it is in the hand. */
export function RateSheet({ state, onClose }: Pick<SheetProps, 'state' | 'onClose'>) {
  const opened = useMemo(() => Date.now(), []);
  return (
    <Sheet
      title="As it came off"
      onClose={onClose}
      actions={
        <>
          <UndoBar state={state} />
          <div class="beside">
            <TakePhoto state={state} />
            <Secondary onPress={onClose}>Close</Secondary>
          </div>
        </>
      }
    >
      {ratingsOf.map((what) => (
        <Rating key={what} state={state} what={what} />
      ))}
      <Thumbnails photos={state.photos} />
      <LastPhoto state={state} since={opened} />
    </Sheet>
  );
}
