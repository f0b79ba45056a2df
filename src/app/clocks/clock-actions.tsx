import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { back } from '#app/router.ts';
import { callingClocks, hearWarnings } from './alarms.ts';
import { addTime, answerClock, emptyCup } from './answer.ts';
import type { ClockKind, RunningClock } from './clock-list.ts';
import { toneFor } from './clock-words.ts';

const more = 300;

const seen: Record<ClockKind, string> = {
  potLife: 'Cup is empty',
  tape: 'The tape is all on',
  dry: 'It is dry',
  soak: 'It is soaked through',
  hold: 'The hold is over',
  free: 'I have seen it',
};

const isWait = ({ kind }: RunningClock) => kind === 'dry' || kind === 'soak' || kind === 'free';

/** Beside the main action: another five minutes, or quiet. */
function Second({ clock }: { clock: RunningClock }) {
  if (isWait(clock)) return <Secondary onPress={() => addTime(clock, more)}>Add 5 minutes</Secondary>;
  if (clock.kind === 'potLife' && clock.phase === 'over') {
    return <Secondary onPress={() => answerClock(clock)}>Not empty: quiet it</Secondary>;
  }
  return null;
}

/** What a thumb can do about the clock in front. A clock that still runs ends only by being held. */
export function ClockActions({ clock }: { clock: RunningClock }) {
  const warned = clock.phase === 'warning' && callingClocks.value.includes(clock);
  const early = clock.phase !== 'over' && clock.kind !== 'potLife' && clock.kind !== 'tape';
  const main = () => (clock.kind === 'potLife' ? emptyCup(clock) : answerClock(clock));
  return (
    <>
      <Beside>
        <Secondary onPress={() => back('/')}>Back</Secondary>
        {warned && <Secondary onPress={hearWarnings}>Heard</Secondary>}
        <Second clock={clock} />
      </Beside>
      {early ? (
        <HoldAction onHeld={() => answerClock(clock)}>Hold to end it now</HoldAction>
      ) : (
        <Action onPress={main} tone={toneFor(clock) === 'stop' && clock.kind === 'potLife' ? 'stop' : 'main'}>
          {seen[clock.kind]}
        </Action>
      )}
    </>
  );
}
