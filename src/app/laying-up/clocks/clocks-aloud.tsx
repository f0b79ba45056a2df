import { wordsFor } from './clock-words.ts';
import { runningClocks } from './running.ts';
import { quietWords } from './spoken-words.ts';

/** The most urgent clock for who cannot see it: at a few marks on its way, and at once when it is over. */
export function ClocksAloud() {
  const first = runningClocks.value[0];
  const over = first?.phase === 'over';
  return (
    <>
      <p class="visually-hidden" aria-live="polite">
        {first ? quietWords(first) : ''}
      </p>
      <p class="visually-hidden" aria-live="assertive">
        {over ? `${first.name}: ${wordsFor(first).word.toLowerCase()}` : ''}
      </p>
    </>
  );
}
