import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import { Photo } from './photo.tsx';
import './thumbnails.css';

interface Picture {
  hash: string;
  words: string;
}

/** Pictures side by side; a tap shows one large. */
export function Pictures({ pictures }: { pictures: readonly Picture[] }) {
  const shown = useSignal<Picture | undefined>(undefined);
  const close = () => {
    shown.value = undefined;
  };
  if (pictures.length === 0) return null;
  return (
    <>
      <ul class="thumbnails" aria-label="Photos">
        {pictures.map((picture, i) => (
          <li key={`${i} ${picture.hash}`}>
            <button type="button" onClick={() => (shown.value = picture)}>
              <Photo hash={picture.hash} alt={picture.words} />
            </button>
          </li>
        ))}
      </ul>
      {shown.value && (
        <Sheet
          title={shown.value.words}
          onClose={close}
          actions={<Secondary onPress={close}>Close</Secondary>}
        >
          <div class="thumbnails-large">
            <Photo hash={shown.value.hash} alt={shown.value.words} />
          </div>
        </Sheet>
      )}
    </>
  );
}

/** The photos of a build. */
export function Thumbnails({ photos }: Pick<BuildState, 'photos'>) {
  return (
    <Pictures
      pictures={photos.map(({ entry }, i) => ({
        hash: entry.hash,
        words: entry.caption ?? `Photo ${i + 1}`,
      }))}
    />
  );
}
