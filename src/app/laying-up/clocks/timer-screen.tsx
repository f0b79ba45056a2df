import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Keypad } from '#app/parts/keypad.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { goInstead } from '#app/router.ts';
import { startTimer } from './answer.ts';
import { Reach } from './reach.tsx';
import './timer-screen.css';

const chips = [1, 2, 3, 5, 10, 15, 20, 30, 45, 60];
const longest = 24 * 60;

/** Why so many minutes cannot be timed. */
export function timerProblem(text: string): string | undefined {
  if (text === '') return 'Type the minutes';
  const minutes = Number(text);
  if (!(minutes > 0)) return 'More than 0 minutes';
  return minutes > longest ? 'At most 24 hours: 1440 minutes' : undefined;
}

/** How long? One tap on a number of minutes starts it. */
export function TimerScreen() {
  const label = useSignal('');
  const other = useSignal(false);
  const typed = useSignal('');
  const start = async (minutes: number) => {
    const name = label.value.trim() || `Timer, ${minutes} min`;
    if (await startTimer(minutes * 60, name)) goInstead('/');
  };
  return (
    <Screen
      keys={other.value}
      title="How long?"
      kicker="Bench timer"
      back={{ to: '/', label: 'Bench' }}
      actions={
        other.value ? (
          <Action onPress={() => start(Number(typed.value))} not={timerProblem(typed.value)}>
            {`Start ${typed.value} min`}
          </Action>
        ) : (
          <div class="timer-chips" role="group" aria-label="Start it with so many minutes">
            {chips.map((minutes) => (
              <Secondary key={minutes} onPress={() => start(minutes)}>
                {minutes} min
              </Secondary>
            ))}
            <Secondary onPress={() => (other.value = true)}>Another length</Secondary>
          </div>
        )
      }
    >
      {other.value ? (
        <>
          <BigFigure figure={typed.value || '0'} unit="min" />
          <Keypad text={typed} label="Minutes" />
        </>
      ) : (
        <>
          <TextField label="What for (may stay empty)" text={label} />
          <Reach />
        </>
      )}
    </Screen>
  );
}
