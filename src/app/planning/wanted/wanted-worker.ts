import { type WantedInput, type WantedPlies, wantedPlies } from '#calc';

/** Without the checks at every place, which nobody looks at here and which are large. */
export type Wanted = Omit<WantedPlies, 'checks'>;
/** What cannot be searched comes back as the sentence of the computation. */
export type WantedAnswer = { wanted: Wanted } | { refused: string };

addEventListener('message', ({ data }: MessageEvent<WantedInput>) => {
  let answer: WantedAnswer;
  try {
    const { checks: _, ...wanted } = wantedPlies(data);
    answer = { wanted };
  } catch (error) {
    answer = { refused: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
