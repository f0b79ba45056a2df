import { formatClockTime } from '#shared/units/time.ts';
import type { RunningClock } from './clock-list.ts';
import { isStale } from './clock-list.ts';
import { ClockRule } from './clock-rule.tsx';
import {
  beganAt,
  clockWentBack,
  figureFor,
  overSentence,
  shortFigure,
  standsWords,
  toneFor,
  whyWords,
  wordsFor,
} from './clock-words.ts';
import { faceSize, farFigure, roomForOne } from './face-size.ts';
import { FarDigits } from './far-figure.tsx';
import { ToneShape } from './tone-shape.tsx';
import { useScreenSize } from './use-screen-size.ts';

/** What the big figure counts: 'Cup 2, minutes left' */
export function faceTitle(clock: RunningClock): string {
  if (clock.phase === 'over') return overSentence(clock);
  return `${clock.name}, ${clock.left > 3600 ? 'hours' : 'minutes'} left`;
}

/** The state by its word, its shape and its edge, whatever the eye makes of its color. */
export function FaceWord({ clock }: { clock: RunningClock }) {
  return (
    <span class="clock-face-word">
      <ToneShape tone={toneFor(clock)} />
      <span>{wordsFor(clock).word}</span>
    </span>
  );
}

/** The digits of one clock that has the screen to itself. */
export function FaceFigure({ clock }: { clock: RunningClock }) {
  const screen = useScreenSize().value;
  const size = faceSize(farFigure(clock.left), roomForOne(screen));
  if (isStale(clock)) return <p class="clock-face-long">{figureFor(clock).figure}</p>;
  return <FarDigits left={clock.left} size={size} />;
}

interface Props {
  clock: RunningClock;
  /** Its tape deadline, when it has one that is not a clock of its own here. */
  tape: RunningClock | undefined;
}

/** What stands under the digits for who comes near. */
export function FaceAbout({ clock, tape }: Props) {
  const { todo } = wordsFor(clock);
  const deadline = clock.kind === 'tape' ? clock : tape;
  return (
    <>
      {clock.phase !== 'over' && <ClockRule clock={clock} size="tall" />}
      <p class="clock-face-todo">
        {clockWentBack(clock)
          ? 'This phone’s clock was set back after it was started: do not trust it.'
          : todo}
      </p>
      {clock.why && <p class="clock-face-about">{whyWords(clock.why)}</p>}
      <p class="clock-face-about">
        {beganAt(clock)}
        {deadline && (
          <>
            , tape all on by <b>{formatClockTime(deadline.endsAt)}</b>
            {deadline.stands && `, ${standsWords}: pour it out`}
          </>
        )}
        {!deadline && (
          <>
            , {clock.phase === 'over' ? 'ended' : 'ends'} <b>{formatClockTime(clock.endsAt)}</b>
          </>
        )}
      </p>
    </>
  );
}

/** Another clock under the first; a tap brings it to the front. */
export function SmallFace({ clock, onPress }: { clock: RunningClock; onPress: () => void }) {
  const over = clock.phase === 'over';
  return (
    <button
      type="button"
      class={`clock-small clock-small-${toneFor(clock)}`}
      data-over={over}
      onClick={onPress}
    >
      <span class="clock-small-name">
        <b>{clock.name}</b>
        {clock.of && <span>{clock.of}</span>}
      </span>
      <span class="clock-small-figure">
        <b>{over ? wordsFor(clock).word : figureFor(clock).figure}</b>
        <span>{over ? shortFigure(clock) : wordsFor(clock).word}</span>
      </span>
    </button>
  );
}
