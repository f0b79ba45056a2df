import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import { Caption, type PhotoFact } from './caption.tsx';
import { Photo } from './photo.tsx';
import './thumbnails.css';

interface Picture {
  hash: string;
  /** What it is called where it has no words */
  title: string;
  caption?: string | undefined;
  /** Where words can be put to it */
  fact?: PhotoFact;
}

const wordsOf = ({ caption, title }: Picture) => caption ?? title;

/** Pictures side by side, their words under them; a tap shows one large. */
export function Pictures({ pictures }: { pictures: readonly Picture[] }) {
  const shown = useSignal<number | undefined>(undefined);
  const close = () => {
    shown.value = undefined;
  };
  if (pictures.length === 0) return null;
  const large = shown.value === undefined ? undefined : pictures[shown.value];
  return (
    <>
      <ul class="thumbnails" aria-label="Photos">
        {pictures.map((picture, i) => (
          <li key={`${i} ${picture.hash}`}>
            <button type="button" onClick={() => (shown.value = i)}>
              <Photo hash={picture.hash} alt={wordsOf(picture)} />
            </button>
            {picture.caption && <p class="thumbnails-words">{picture.caption}</p>}
          </li>
        ))}
      </ul>
      {large && (
        <Sheet title={wordsOf(large)} onClose={close} actions={<Secondary onPress={close}>Close</Secondary>}>
          <div class="thumbnails-large">
            <Photo hash={large.hash} alt={wordsOf(large)} />
          </div>
          {large.fact && <Caption photo={large.fact} onKept={close} />}
        </Sheet>
      )}
    </>
  );
}

/** The photos of a build. */
export function Thumbnails({ photos }: Pick<BuildState, 'photos'>) {
  return (
    <Pictures
      pictures={photos.map((fact, i) => ({
        hash: fact.entry.hash,
        title: `Photo ${i + 1}`,
        caption: fact.entry.caption,
        fact,
      }))}
    />
  );
}
