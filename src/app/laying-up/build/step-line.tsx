import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { now } from '#app/state/now.ts';
import { type ClockState, readClock } from '#shared/record/clock-state.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { formatClockTime, formatCountdown, formatDay } from '#shared/units/time.ts';

/** When a step was done, as its time was lived there. */
export function doneAt({ at, zone, timeNotSeen }: NonNullable<StepState['done']>): string {
  if (timeNotSeen) return 'time not seen';
  const day = formatDay(at, zone, now.value);
  return day === 'Today' ? formatClockTime(at, zone) : `${day} ${formatClockTime(at, zone)}`;
}

function Wait({ clock }: { clock: ClockState }) {
  const { phase, left, gone, endsAt } = readClock(clock, now.value);
  if (phase === 'ended') return null;
  return (
    <div class="step-wait">
      {phase === 'over' ? (
        <p>
          <strong>Wait is over</strong> since {formatClockTime(endsAt)}
        </p>
      ) : (
        <p>
          <strong>{formatCountdown(left)}</strong> left, until {formatClockTime(endsAt)}
        </p>
      )}
      <svg class="step-wait-bar" width="100%" height="8" aria-hidden="true">
        <rect class="step-wait-gone" width={`${100 * gone}%`} height="8" />
        <rect class="step-wait-frame" x="0.5" y="0.5" width="99.5%" height="7" />
      </svg>
    </div>
  );
}

interface Props {
  step: StepState;
  isNow: boolean;
  wait: ClockState | undefined;
  /** What is known of it: a count, readings. */
  about?: ComponentChildren;
  onPress: () => void;
}

/** One line of the checklist: inked with its time, thick blue for now, thin for later. */
export function StepLine({ step: { step, done }, isNow, wait, about, onPress }: Props) {
  const line = useRef<HTMLLIElement>(null);
  useEffect(() => {
    // A frame later: a new screen scrolls to its top first.
    const frame = requestAnimationFrame(() => {
      if (isNow) line.current?.scrollIntoView({ block: 'nearest' });
    });
    return () => cancelAnimationFrame(frame);
  }, [isNow]);
  const state = done ? 'done' : isNow ? 'now' : 'later';
  return (
    <li ref={line} class={`step step-${state}`} aria-current={isNow ? 'step' : undefined}>
      <button type="button" class="step-press" role="checkbox" aria-checked={Boolean(done)} onClick={onPress}>
        <svg class="step-box" width="34" height="34" viewBox="0 0 34 34" aria-hidden="true">
          <rect class="step-square" x="1.5" y="1.5" width="31" height="31" />
          {done && <path class="step-check" d="M9 17.5 15 23.5 26 11" />}
        </svg>
        <span class="step-text">
          {step.text} {done && <span class="step-time">{doneAt(done)}</span>}
        </span>
      </button>
      {isNow && step.hint && <p class="step-hint">{step.hint}</p>}
      {about && <p class="step-about">{about}</p>}
      {wait && <Wait clock={wait} />}
    </li>
  );
}
