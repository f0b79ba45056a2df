import { WipeKey } from '#app/laying-up/wipe/wipe-key.tsx';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { UndoLast } from '#app/parts/undo-last.tsx';
import { back, go } from '#app/router.ts';
import { addTime, answerClock, doneWith } from './answer.ts';
import { callingClocks, hearWarnings } from './calling.ts';
import type { ClockKind, RunningClock } from './clock-list.ts';
import { toneFor } from './clock-words.ts';

const more = 300;

const seen: Record<ClockKind, string> = {
  potLife: 'Cup is empty',
  tape: 'The tape is all on',
  dry: 'It is dry',
  soak: 'It is soaked through',
  hold: 'The hold is over',
  reading: 'Log the reading',
  free: 'I have seen it',
};

const isWait = ({ kind }: RunningClock) => kind === 'dry' || kind === 'soak' || kind === 'free';

/** Beside the main action: another five minutes, or quiet. */
function Second({ clock }: { clock: RunningClock }) {
  if (isWait(clock)) return <Secondary onPress={() => addTime(clock, more)}>Add 5 minutes</Secondary>;
  if (clock.kind === 'reading') {
    return <Secondary onPress={() => answerClock(clock)}>Put off 10 min</Secondary>;
  }
  if (clock.kind === 'potLife' && clock.phase === 'over') {
    return <Secondary onPress={() => answerClock(clock)}>Not empty: quiet it</Secondary>;
  }
  return null;
}

interface Props {
  clock: RunningClock;
  /** Back to the clocks side by side, where there are any. */
  onAll: (() => void) | undefined;
}

/** What a thumb can do about the clock in front. A clock that still runs ends only by being held. */
export function ClockActions({ clock, onAll }: Props) {
  const warned = clock.phase === 'warning' && callingClocks.value.includes(clock);
  const early = clock.phase !== 'over' && clock.kind !== 'potLife' && clock.kind !== 'tape';
  return (
    <>
      <UndoLast />
      <Beside>
        {onAll ? (
          <Secondary onPress={onAll}>All clocks</Secondary>
        ) : (
          <Secondary onPress={() => back('/')}>Back</Secondary>
        )}
        <WipeKey kind="secondary" />
        {warned && <Secondary onPress={hearWarnings}>Heard</Secondary>}
        <Second clock={clock} />
      </Beside>
      {early ? (
        <HoldAction onHeld={() => answerClock(clock)}>Hold to end it now</HoldAction>
      ) : (
        <Action
          onPress={() => (clock.kind === 'reading' ? go(clock.to) : doneWith(clock))}
          tone={toneFor(clock) === 'stop' && clock.kind === 'potLife' ? 'stop' : 'main'}
        >
          {seen[clock.kind]}
        </Action>
      )}
    </>
  );
}

/** Side by side, only resin asks for a thumb before its time is up. */
export function SharedActions({ clocks }: { clocks: readonly RunningClock[] }) {
  const resin = clocks.find((c) => c.kind === 'potLife' || c.kind === 'tape');
  return (
    <>
      <UndoLast />
      <Beside>
        <Secondary onPress={() => back('/')}>Back</Secondary>
        <WipeKey kind="secondary" />
      </Beside>
      {resin && (
        <Action onPress={() => doneWith(resin)}>
          {resin.kind === 'tape' ? seen.tape : `${resin.name} is empty`}
        </Action>
      )}
    </>
  );
}
