import { useSignal } from '@preact/signals';
import { GuardSheet } from '#app/laying-up/build/guard-sheet.tsx';
import { guardsBefore } from '#app/laying-up/build/guards.ts';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { buildState } from '#app/state/journals.ts';
import { settings } from '#app/state/settings.ts';
import { showSplit } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import type { Guard } from '#shared/record/entry.ts';
import { decimalsForScaleStep } from '#shared/units/format.ts';
import { CupEmptied, ThrowOut, UndoPress } from './cup-buttons.tsx';
import { cupLife, massOf } from './cup-life.ts';
import { CupLifeLines } from './cup-life-lines.tsx';
import { type Mixing, pourTask } from './cup-phase.ts';
import { hardenerGoesIn } from './mix-acts.ts';
import { cupWords, hardenerWords } from './mix-words.ts';
import { targetWords } from './pour-words.ts';
import { ReadAgain } from './read-again.tsx';
import { onScale } from './scale-reading.ts';

interface Props {
  state: BuildState;
  cup: CupState;
  mixing: Mixing;
  inCup: readonly CupState[];
}

/** The moment the clock starts: one big press as hardener touches resin. */
export function ContactView({ state, cup, mixing, inCup }: Props) {
  const stopping = useSignal<Guard | undefined>(undefined);
  const { units: system, scaleStep: step, scaleShows } = settings.value;
  const { resin } = state.header;
  const task = pourTask(cup, mixing);
  const runningTotal = scaleShows === 'runningTotal';
  const target = task.wanted + (runningTotal ? cup.resin : 0);
  const mass = (kg: number) => onScale(kg, { system, step });
  const press = () => {
    const [guard] = guardsBefore(state, 'hardener', state.rounds);
    if (!guard) return hardenerGoesIn(state, cup);
    stopping.value = guard;
  };
  // The clock may start only at first contact, so going on after a stop takes a press of its own.
  const goOn = () => {
    const fresh = buildState(state.header.id) ?? state;
    stopping.value = guardsBefore(fresh, 'hardener', fresh.rounds)[0];
  };
  return (
    <Screen
      back={{ to: `/build/${state.header.id}`, label: 'Route' }}
      kicker={cupWords(cup)}
      title={hardenerWords(resin)}
      actions={
        <>
          <Beside>
            <UndoPress state={state} cup={cup} />
            <ThrowOut state={state} cup={cup} />
          </Beside>
          <div class="contact-press">
            <Action onPress={press}>Hardener going in</Action>
          </div>
        </>
      }
    >
      <BigFigure label="Then pour to" {...showSplit(target, 'mass', decimalsForScaleStep(step, system))} />
      <p>
        <strong>{targetWords({ cup, task, hardener: resin.hardener, mass }, runningTotal)}</strong>
      </p>
      <p>Press as the first hardener touches the resin; the weight follows. From then on this cup lasts:</p>
      <CupLifeLines resin={resin} life={cupLife(state, massOf(state, cup), Date.now())} />
      <ReadAgain state={state} />
      {inCup.map((other) => (
        <CupEmptied key={other.cup} state={state} cup={other} />
      ))}
      <LinkButton to={`/build/${state.header.id}`}>To the route</LinkButton>
      {stopping.value && (
        <GuardSheet
          key={stopping.value}
          state={state}
          guard={stopping.value}
          round={state.rounds}
          onDone={goOn}
          onClose={() => {
            stopping.value = undefined;
          }}
        />
      )}
    </Screen>
  );
}
