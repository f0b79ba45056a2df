import { useSignal } from '@preact/signals';
import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Keypad } from '#app/parts/keypad.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { settings } from '#app/state/settings.ts';
import { showSplit } from '#app/state/show.ts';
import { oldWords } from '#app/stock/lots/old-words.ts';
import { hardenerForResin } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { decimalsForScaleStep, formatQuantity } from '#shared/units/format.ts';
import { CupEmptied, ThrowOut, UndoPress } from './cup-buttons.tsx';
import { judgePour, type Mixing, pourTask } from './cup-phase.ts';
import { canWords, cupWords } from './mix-words.ts';
import { PourActions } from './pour-actions.tsx';
import { PourRule } from './pour-rule.tsx';
import { overWords, targetWords } from './pour-words.ts';
import { onScale, readScale } from './scale-reading.ts';
import { ScaleSheet } from './scale-sheet.tsx';
import { useTyped } from './typed-draft.ts';

interface Props {
  state: BuildState;
  cup: CupState;
  mixing: Mixing;
  /** Other cups in their pot life. */
  inCup: readonly CupState[];
}

/** Where to stop pouring, and what the scale shows. */
export function PourView({ state, cup, mixing, inCup }: Props) {
  const { units: system, scaleStep: step, scaleShows } = settings.value;
  const use = { system, step };
  const task = pourTask(cup, mixing);
  const runningTotal = scaleShows === 'runningTotal';
  const before = runningTotal ? cup.resin + cup.hardener : 0;
  const text = useTyped(`${cup.cup}:${cup.pours.length}:${task.part}:${scaleShows}:${system}`);
  const scaleOpen = useSignal(false);
  const reading = readScale(text.value, { ...use, before, holds: cup.holds });
  const verdict = reading.kind === 'read' ? judgePour(cup, mixing, task, reading.mass) : undefined;
  const mass = (kg: number) => onScale(kg, use);
  const resin = task.part === 'resin' && reading.kind === 'read' ? reading.mass : undefined;
  const follows = resin && hardenerForResin({ resinPoured: resin, hardenerPerResin: mixing.ratio });
  const told = { cup, task, hardener: state.header.resin.hardener, mass, follows };
  const target = before + task.wanted;
  const { figure, unit } = showSplit(target, 'mass', decimalsForScaleStep(step, system));
  const wrong = reading.kind === 'wrong' ? reading.says : undefined;
  const problem = wrong ?? overWords(told, verdict);
  const inGrams =
    system === 'metric' ? '' : `= ${formatQuantity(target, { quantity: 'mass', system: 'metric' })}; `;
  const openScale = () => {
    scaleOpen.value = true;
  };
  return (
    <Screen
      keys
      kicker={
        task.part === 'resin'
          ? `${cupWords(cup)}${oldWords(state, 'resin')}`
          : `${cupWords(cup)} · ${canWords(state.header.resin)}${oldWords(state, 'hardener')}`
      }
      title={`Pour ${task.part} to`}
      actions={<PourActions {...{ state, cup, task, reading, verdict, before, mass, text }} />}
    >
      <div class="pour">
        <div class="pour-figure">
          <BigFigure figure={figure} unit={unit} />
          <button type="button" class="pour-scale" onClick={openScale}>
            <span>Scale reads</span> <strong>{text.value === '' ? '–' : `${text.value} ${unit}`}</strong>{' '}
            <span class="pour-scale-how">{runningTotal ? 'both together' : 'zeroed between'}</span>
          </button>
        </div>
        <PourRule
          {...{ cup, mixing, task, before }}
          reading={reading.kind === 'read' ? reading.reading : undefined}
          label={`Scale, stop at ${mass(target)}`}
        />
        <p class={problem ? 'pour-note pour-problem' : 'pour-note'} role={problem ? 'alert' : undefined}>
          {problem ?? `${inGrams}${targetWords(told, runningTotal)}`}
        </p>
        <Keypad text={text} label={`Scale reads, ${unit}`} />
      </div>
      <Beside>
        <Secondary onPress={openScale}>The scale</Secondary>
        <UndoPress state={state} cup={cup} />
      </Beside>
      <Beside>
        <LinkButton to={`/build/${state.header.id}`}>To the route</LinkButton>
        <ThrowOut state={state} cup={cup} />
      </Beside>
      {inCup.map((other) => (
        <CupEmptied key={other.cup} state={state} cup={other} />
      ))}
      {scaleOpen.value && (
        <ScaleSheet
          onClose={() => {
            scaleOpen.value = false;
          }}
        />
      )}
    </Screen>
  );
}
