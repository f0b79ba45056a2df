import { useSignal } from '@preact/signals';
import { Ask } from '#app/parts/ask.tsx';
import { Choice } from '#app/parts/field.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { show } from '#app/state/show.ts';
import { PictureHead } from './picture-head.tsx';
import { turn } from './pictures/angles.ts';
import { CrossSection } from './pictures/cross-section.tsx';
import { WallAlong } from './pictures/wall-along.tsx';
import { aroundWords, seamWords } from './seam-words.ts';
import type { Drawn, WallDraft } from './wall-draft.ts';
import { setPressedAt } from './wall-edits.ts';

const inch = 0.0254;

/** A place along the tube, by a long slide for the thumb, by steps, or typed. */
export function PlaceAlong({
  length,
  at,
  onSet,
}: {
  length: number;
  at: number;
  onSet: (at: number) => void;
}) {
  return (
    <>
      <input
        class="along-slide"
        type="range"
        aria-label="Station"
        aria-valuetext={show(at, 'length', 0)}
        min={0}
        max={length}
        step={0.001}
        value={at}
        onInput={(event) => onSet(Number(event.currentTarget.value))}
      />
      <StepField
        label="Cut at"
        quantity="length"
        value={at}
        step={stepIn(0.05, 2 * inch)}
        min={0}
        max={length}
        digits={stepIn(0, 1)}
        onSet={onSet}
      />
    </>
  );
}

function LoadFields({ draft }: { draft: WallDraft }) {
  const state = draft.state.value;
  const { pressedAt } = state.wall;
  const set = (angle: number | undefined) => draft.change(setPressedAt(state, angle), 'load');
  return (
    <>
      <Choice
        label="Side that the main load presses"
        value={pressedAt === undefined ? 'none' : 'set'}
        options={[
          { value: 'none', label: 'Not set' },
          { value: 'set', label: 'Set' },
        ]}
        onChange={(to) => set(to === 'none' ? undefined : 0)}
      />
      {pressedAt !== undefined && (
        <StepField
          label="Pressed at"
          quantity="angle"
          value={pressedAt}
          step={turn / 24}
          min={0}
          max={turn}
          hint="round the tube from the top, seen from end 0"
          onSet={set}
        />
      )}
    </>
  );
}

/** Round the tube at a station: plies, seams, and how they lie to the main load. */
export function RoundSection({ draft, drawn }: { draft: WallDraft; drawn: Drawn }) {
  const { plan, roll } = drawn;
  const chosen = useSignal(roll.length / 4);
  const at = Math.min(chosen.value, roll.length);
  const { pressedAt } = draft.state.value.wall;
  const set = (place: number) => {
    chosen.value = place;
  };
  return (
    <>
      <PictureHead
        to={`/plan/${draft.doc}/wall/picture/cut`}
        ask={<Ask term="step" asks="Where does the wall step?" />}
      >
        Cut across at {show(at, 'length', 0)}
      </PictureHead>
      <CrossSection roll={roll} at={at} pressedAt={pressedAt} />
      <p>{aroundWords(roll, at)}</p>
      <WallAlong roll={roll} at={at} height={72} />
      <PlaceAlong length={roll.length} at={at} onSet={set} />
      <LoadFields draft={draft} />
      {pressedAt !== undefined && (
        <ul class="seam-words">
          {seamWords(roll, plan.wall.pieces, at, pressedAt).map((word) => (
            <li key={word.says}>
              <strong>{word.good ? 'Good' : 'Look'}</strong> {word.says}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
