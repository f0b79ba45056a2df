import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { callingClocks, hearWarnings } from './alarms.ts';
import { answerClock } from './answer.ts';
import { ClockActions } from './clock-actions.tsx';
import { ClockFace, faceTitle, SmallFace } from './clock-face.tsx';
import { clockKey, type RunningClock } from './clock-list.ts';
import { tapeBeside } from './clock-strip.tsx';
import { toneFor } from './clock-words.ts';
import { runningClocks } from './running.ts';
import { SoundLine } from './sound-line.tsx';
import './clocks-screen.css';

/** A glove bounces, and one press must not answer the next clock too, ms */
const settles = 700;

/** A touch anywhere in the lower two thirds answers the clock in front, when it is due. */
function useTouchAnswers(clock: RunningClock | undefined): void {
  const inFront = useRef(clock);
  inFront.current = clock;
  const shownSince = useRef(0);
  const key = clock && `${clockKey(clock)}/${clock.phase}`;
  useEffect(() => {
    shownSince.current = performance.now();
  }, [key]);
  useEffect(() => {
    const touched = (event: MouseEvent) => {
      const due = inFront.current;
      // The faces of the others lie in reach too, and a blind touch on one of them means the clock that rings.
      const onControl =
        event.target instanceof Element && event.target.closest('a, button:not(.clock-small)');
      if (!due || onControl || event.clientY < innerHeight / 3) return;
      if (performance.now() - shownSince.current < settles) return;
      if (due.phase === 'over') answerClock(due);
      else if (due.phase === 'warning') hearWarnings();
    };
    document.addEventListener('click', touched);
    return () => document.removeEventListener('click', touched);
  }, []);
}

function NoClock() {
  return (
    <Screen
      title="No clock is running"
      back={{ to: '/', label: 'Bench' }}
      actions={
        <>
          <LinkButton to="/">Back to the bench</LinkButton>
          <Action onPress={() => go('/timer')}>Start a timer</Action>
        </>
      }
    >
      <p>A cup starts its clock when hardener goes in. Steps that wait start theirs when they are ticked.</p>
    </Screen>
  );
}

function Heading({ clock }: { clock: RunningClock }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const title = faceTitle(clock);
  useEffect(() => {
    document.title = 'Clocks · Tubewright';
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {title}
    </h1>
  );
}

/** Every clock, to be read across the shop; the most urgent fills the screen. */
export function ClocksScreen() {
  const clocks = runningClocks.value;
  const chosen = useSignal<string | undefined>(undefined);
  const calling = callingClocks.value[0];
  const first = calling ?? clocks.find((c) => clockKey(c) === chosen.value) ?? clocks[0];
  useTouchAnswers(first);
  // Who comes here has heard it.
  useEffect(hearWarnings, []);
  if (!first) return <NoClock />;
  const tape = tapeBeside(first, clocks);
  const others = clocks.filter((c) => c !== first && c !== tape);
  return (
    <div class={`screen clocks clocks-${toneFor(first)}`}>
      <main class="screen-main">
        {first.of && <p class="screen-kicker">{first.of}</p>}
        <Heading clock={first} />
        <ClockFace clock={first} tape={tape} />
        <SoundLine />
        {others.map((c) => (
          <SmallFace
            key={clockKey(c)}
            clock={c}
            onPress={() => {
              chosen.value = clockKey(c);
            }}
          />
        ))}
      </main>
      <section class="screen-actions" aria-label="Actions">
        <ClockActions key={clockKey(first)} clock={first} />
      </section>
    </div>
  );
}
