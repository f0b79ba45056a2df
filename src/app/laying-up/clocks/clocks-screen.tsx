import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { answerClock } from './answer.ts';
import { callingClocks, hearWarnings } from './calling.ts';
import { ClockActions, SharedActions } from './clock-actions.tsx';
import { FaceAbout, FaceFigure, FaceWord, faceTitle, SmallFace } from './clock-face.tsx';
import { clockKey, type RunningClock } from './clock-list.ts';
import { tapeBeside } from './clock-strip.tsx';
import { ClockTiles } from './clock-tiles.tsx';
import { toneFor } from './clock-words.ts';
import { meansNow } from './means.ts';
import { Reach } from './reach.tsx';
import { urgentLacks } from './reach-words.ts';
import { runningClocks } from './running.ts';
import { SoundLine } from './sound-line.tsx';
import { TestAlarm } from './test-alarm.tsx';
import './clocks-screen.css';

/** A glove bounces, and one press must not answer the next clock too, ms */
const settles = 700;

/** What the hand that holds the phone touches, px from the edge */
const rim = 12;

const atRim = ({ clientX, clientY }: MouseEvent) =>
  clientX < rim || clientX > innerWidth - rim || clientY > innerHeight - rim;

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
      if (!due || onControl || event.clientY < innerHeight / 3 || atRim(event)) return;
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
      <TestAlarm />
      <Reach />
    </Screen>
  );
}

function Heading({ title }: { title: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
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

interface FrontProps {
  clock: RunningClock;
  clocks: readonly RunningClock[];
  onChoose: (clock: RunningClock | undefined) => void;
}

/** One clock fills the screen: the one that asks for a thumb, or was tapped. */
function Front({ clock, clocks, onChoose }: FrontProps) {
  const tape = tapeBeside(clock, clocks);
  const others = clocks.filter((c) => c !== clock && c !== tape);
  const calls = callingClocks.value.includes(clock);
  return (
    <div class={`screen clocks clocks-front clocks-${toneFor(clock)}`}>
      <main class="screen-main">
        <div class="clocks-head">
          {clock.of && <p class="screen-kicker">{clock.of}</p>}
          <Heading title={faceTitle(clock)} />
          <FaceWord clock={clock} />
        </div>
        <FaceFigure clock={clock} />
        <div class="clocks-about">
          <FaceAbout clock={clock} tape={tape} />
          <SoundLine all />
          {others.map((c) => (
            <SmallFace key={clockKey(c)} clock={c} onPress={() => onChoose(c)} />
          ))}
          <TestAlarm />
        </div>
      </main>
      <section class="screen-actions" aria-label="Actions">
        <ClockActions
          key={clockKey(clock)}
          clock={clock}
          onAll={others.length > 0 && !calls ? () => onChoose(undefined) : undefined}
        />
      </section>
    </div>
  );
}

/** Two lines of it, px */
const soundLineHeight = 48;

/** Clocks side by side while none of them calls. */
function Shared({ clocks, onChoose }: Omit<FrontProps, 'clock'>) {
  const tapes = clocks.map((c) => tapeBeside(c, clocks));
  const faces = clocks.filter((c) => !tapes.includes(c));
  const above = urgentLacks(meansNow()).length > 0 ? soundLineHeight : 0;
  return (
    <div class="screen clocks clocks-shared">
      <main class="screen-main">
        <div class="visually-hidden">
          <Heading title={`${faces.length} clocks`} />
        </div>
        <SoundLine all />
        <ClockTiles clocks={faces} above={above} onChoose={onChoose} />
        {faces.length > 2 &&
          faces.map((c) => <SmallFace key={clockKey(c)} clock={c} onPress={() => onChoose(c)} />)}
        <TestAlarm />
      </main>
      <section class="screen-actions" aria-label="Actions">
        <SharedActions clocks={faces} />
      </section>
    </div>
  );
}

/** Every clock, to be read across the shop: side by side, until one of them asks for a thumb and fills the screen. */
export function ClocksScreen() {
  const clocks = runningClocks.value;
  const chosen = useSignal<string | undefined>(undefined);
  const calling = callingClocks.value[0];
  const tapped = clocks.find((c) => clockKey(c) === chosen.value);
  const [first] = clocks;
  const beside = first && tapeBeside(first, clocks);
  const alone = clocks.length - (beside ? 1 : 0) === 1;
  const inFront = calling ?? tapped ?? (alone ? first : undefined);
  useTouchAnswers(inFront);
  // Who comes here has heard it.
  useEffect(hearWarnings, []);
  const choose = (clock: RunningClock | undefined) => {
    chosen.value = clock && clockKey(clock);
  };
  if (!first) return <NoClock />;
  if (!inFront) return <Shared clocks={clocks} onChoose={choose} />;
  return <Front clock={inFront} clocks={clocks} onChoose={choose} />;
}
