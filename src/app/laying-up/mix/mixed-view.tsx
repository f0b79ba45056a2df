import { isMixed, lastsInCup } from '#app/laying-up/clocks/cup-clock.ts';
import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Figures } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { ClockWhy } from './clock-why.tsx';
import { CupEmptied, ThrowOut, UndoPress } from './cup-buttons.tsx';
import { cupError, type Mixing } from './cup-phase.ts';
import { cupIsEmpty, startCup } from './mix-acts.ts';
import { planOf, scaleDoubt } from './mix-of-build.ts';
import { canWords, cupWords, inCups, offWords, percentWords } from './mix-words.ts';
import { onScale } from './scale-reading.ts';
import { isStirred, StirTimer, stirringSince } from './stir-timer.tsx';

interface Props {
  state: BuildState;
  cup: CupState;
  mixing: Mixing;
  /** Other cups in their pot life. */
  others: readonly CupState[];
}

function OffRatio({ cup, mixing }: Pick<Props, 'cup' | 'mixing'>) {
  const error = cupError(cup, mixing);
  if (error === undefined || Math.abs(error) <= mixing.tolerance + 1e-9) return null;
  return (
    <Warning
      kind="stop"
      title={`This cup is ${offWords(error)}; ${percentWords(mixing.tolerance)} is allowed`}
    >
      It may never get hard, at any heat. Throw it out while that is cheap, or watch its sample.
    </Warning>
  );
}

/** Mixing goes on with the next cup at once, unless its size has to be looked at first. */
function NextCup({ state, mixing }: Pick<Props, 'state' | 'mixing'>) {
  const planned = planOf(state);
  const to = `/mix/${state.header.id}/cups`;
  if (!planned.ok || planned.plan.cups === 0) {
    return <LinkButton to={`/build/${state.header.id}`}>To the route</LinkButton>;
  }
  const { each, next } = planned.plan;
  const { scaleStep: step, units: system } = settings.value;
  const doubtful = scaleDoubt(each.total, step, mixing) !== undefined;
  const start = () => (doubtful ? go(to) : startCup(state, each, next));
  return <Secondary onPress={start}>Mix next cup: {onScale(each.total, { step, system })}</Secondary>;
}

function offFigure(error: number, tolerance: number) {
  const allowed = `${percentWords(tolerance)} is allowed`;
  if (percentWords(error) === percentWords(0)) {
    return { value: percentWords(0), label: `off its ratio; ${allowed}` };
  }
  const side = error > 0 ? 'rich' : 'lean';
  return { value: percentWords(error), label: `${side} in hardener; ${allowed}` };
}

/** Resin past its usable life no longer wets cloth: the screen must not ask for it there. */
const isOver = (state: BuildState, cup: CupState, at: number) =>
  isMixed(cup) && at > cup.hardenerAt + 1000 * lastsInCup(state, cup);

/** Stir, keep a sample, get it out of the cup. */
export function MixedView({ state, cup, mixing, others }: Props) {
  const { scaleStep: step, units: system } = settings.value;
  const planned = planOf(state);
  const left = planned.ok ? planned.plan.cups : 0;
  const error = cupError(cup, mixing);
  const stirred = isStirred(cup, now.value);
  const over = isOver(state, cup, now.value);
  return (
    <Screen
      back={{ to: `/build/${state.header.id}`, label: 'Route' }}
      kicker={`${cupWords(cup)} · ${canWords(state.header.resin)}`}
      title={over ? 'Its time is up' : stirred ? 'Pour it out flat' : 'Stir 2 to 3 minutes'}
      actions={
        <>
          <Beside>
            <NextCup state={state} mixing={mixing} />
            <ThrowOut state={state} cup={cup} />
          </Beside>
          <Action onPress={() => cupIsEmpty(state, cup)}>
            Cup {cup.number} is empty: it is on the cloth
          </Action>
        </>
      }
    >
      <OffRatio cup={cup} mixing={mixing} />
      {over ? (
        <p>
          If it still stands in the cup, keep it off the cloth and throw it out. If it went on in time, say
          that the cup is empty.
        </p>
      ) : stirred ? (
        <p>A deep cup heats itself: it must not stand.</p>
      ) : (
        <>
          <StirTimer since={stirringSince(cup)} />
          <p>Scrape the sides, the bottom and the stick.</p>
        </>
      )}
      <p>
        <strong>Keep a sample of it, labeled cup {cup.number}.</strong>
      </p>
      <Figures
        items={[
          { value: onScale(cup.resin + cup.hardener, { step, system }), label: 'in this cup' },
          ...(error === undefined ? [] : [offFigure(error, mixing.tolerance)]),
        ]}
      />
      <ClockWhy state={state} cup={cup} />
      {others.map((other) => (
        <CupEmptied key={other.cup} state={state} cup={other} />
      ))}
      <Beside>
        {left > 0 && (
          <LinkButton to={`/mix/${state.header.id}/cups`}>
            {left === 1 ? 'Change the next cup' : `Change the ${inCups(left)} to come`}
          </LinkButton>
        )}
        <UndoPress state={state} cup={cup} />
      </Beside>
    </Screen>
  );
}
