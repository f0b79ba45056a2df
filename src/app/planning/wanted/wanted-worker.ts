import { answerBeside } from '#app/platform/beside.ts';
import { type WantedInput, type WantedPlies, wantedPlies } from '#calc';

/** Without the checks at every place, which nobody looks at here and which are large. */
export type Wanted = Omit<WantedPlies, 'checks'>;

answerBeside((input: WantedInput): Wanted => {
  const { checks: _, ...wanted } = wantedPlies(input);
  return wanted;
});
