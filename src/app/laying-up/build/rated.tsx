import { Thumbnails } from '#app/made/record/thumbnails.tsx';
import { Secondary } from '#app/parts/action.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import { ratingsOf } from '#shared/record/entry.ts';
import type { StageState } from '#shared/record/route-state.ts';

/** '2 of 4 rated' */
export function ratedWords({ ratings }: BuildState): string {
  if (ratings.size === 0) return 'Rate surface, release, dry spots';
  return `As it came off: ${ratings.size} of ${ratingsOf.length} rated`;
}

interface Props {
  state: BuildState;
  stage: StageState;
  onRate: () => void;
}

/** From the mandrel to the last look, the tube is in the hand. */
export function Rated({ state, stage, onRate }: Props) {
  if (!['demold', 'weigh', 'trim', 'measure'].includes(stage.stage)) return null;
  return (
    <>
      <Secondary onPress={onRate}>{ratedWords(state)}</Secondary>
      <Thumbnails photos={state.photos} />
    </>
  );
}
