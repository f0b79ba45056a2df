import { useEffect, useRef } from 'preact/hooks';
import { AlarmFlash } from '#app/laying-up/clocks/alarm-flash.tsx';
import { clockKey, type RunningClock } from '#app/laying-up/clocks/clock-list.ts';
import { figureFor, toneFor, wordsFor } from '#app/laying-up/clocks/clock-words.ts';
import { runningClocks } from '#app/laying-up/clocks/running.ts';
import { secondsToWipe } from './wiping.ts';
import './wipe-lock.css';

/** More would push the count off a small phone. */
const shownAtMost = 3;

function Line({ clock }: { clock: RunningClock }) {
  return (
    <li class={`wipe-clock wipe-clock-${toneFor(clock)}`}>
      <span>
        {clock.name}
        {clock.phase !== 'running' && <b> {wordsFor(clock).word}</b>}
      </span>
      <b>{figureFor(clock).figure}</b>
    </li>
  );
}

function Locked({ seconds }: { seconds: number }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  return (
    <dialog
      ref={dialog}
      class="wipe"
      aria-label="Wipe the glass"
      onCancel={(event) => event.preventDefault()}
      // A phone's back gesture may close it all the same, and a hand that wipes makes one.
      onClose={() => dialog.current?.isConnected && dialog.current.showModal()}
    >
      <p class="wipe-word">WIPE THE GLASS</p>
      <p class="wipe-figure">{seconds}</p>
      <p class="wipe-says">
        Touches do nothing until this has counted down. Nothing is erased, and clocks run on.
      </p>
      <ul>
        {runningClocks.value.slice(0, shownAtMost).map((clock) => (
          <Line key={clockKey(clock)} clock={clock} />
        ))}
      </ul>
      <AlarmFlash />
    </dialog>
  );
}

/** While a sticky screen is wiped, no touch on it counts. */
export function WipeLock() {
  const seconds = secondsToWipe.value;
  return seconds === undefined ? null : <Locked seconds={seconds} />;
}
